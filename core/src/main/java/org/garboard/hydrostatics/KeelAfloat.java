package org.garboard.hydrostatics;

import java.util.Arrays;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.garboard.appendage.Keel;
import org.garboard.geometry.GaussRule;

/**
 * The wet part of a keel below the skin.
 *
 * @param volume both sides [m3]
 * @param lcb x of its centroid [m]; NaN where no part of it is wet
 * @param vcb height of its centroid above base [m]; NaN likewise
 * @param wetted its sides, bottom and ends, both sides [m2]
 * @param covered wet lid of the hull under which it hangs, which is not wetted after all [m2]
 * @param waterplane where the water cuts the keel itself, the rabbet being dry there [m2]
 */
public record KeelAfloat(double volume, double lcb, double vcb, double wetted, double covered, double waterplane) {
    private static final GaussRule RULE = GaussRule.of(8);
    private static final int LOOKS = 32;
    private static final int HALVINGS = 60;
    /** Thinner than that the keel has run out [m]. */
    private static final double NONE = 1e-9;
    private static final int VOLUME = 0;
    private static final int MOMENT = 1;
    private static final int HEIGHT_MOMENT = 2;
    private static final int SKIN = 3;
    private static final int COVERED = 4;
    private static final int CUT = 5;
    private static final int SUMS = 6;

    public static KeelAfloat of(Keel keel, WaterSurface water) {
        double[] bounds = bounds(keel, water);
        double[] sums = new LengthwiseSum((x, out) -> sum(keel, water, x, out), SUMS).over(bounds);
        double[] ends = new double[SUMS];
        sum(keel, water, keel.from(), ends);
        double endArea = ends[VOLUME];
        sum(keel, water, keel.to(), ends);
        endArea += ends[VOLUME];
        return new KeelAfloat(sums[VOLUME], sums[MOMENT] / sums[VOLUME], sums[HEIGHT_MOMENT] / sums[VOLUME], sums[SKIN] + endArea,
            sums[COVERED], sums[CUT]);
    }

    /** Knees, and where the water crosses bottom or rabbet, or the keel runs out. */
    private static double[] bounds(Keel keel, WaterSurface water) {
        TreeSet<Double> bounds = new TreeSet<>();
        for (int i = 0; i < keel.bottom().size(); i++) {
            bounds.add(keel.bottom().get(i).x());
        }
        Double[] knees = bounds.toArray(Double[]::new);
        for (int i = 1; i < knees.length; i++) {
            for (int k = 0; k < LOOKS; k++) {
                double from = knees[i - 1] + (knees[i] - knees[i - 1]) * k / LOOKS;
                double to = knees[i - 1] + (knees[i] - knees[i - 1]) * (k + 1) / LOOKS;
                crossing(x -> water.at(x) - keel.section(x).z(), from, to, bounds);
                crossing(x -> water.at(x) - keel.rabbet().z(x), from, to, bounds);
                crossing(x -> keel.rabbet().z(x) - keel.section(x).z(), from, to, bounds);
            }
        }
        return bounds.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void crossing(DoubleUnaryOperator height, double from, double to, TreeSet<Double> bounds) {
        boolean rises = height.applyAsDouble(from) < 0;
        if (rises == height.applyAsDouble(to) < 0) {
            return;
        }
        double low = from;
        double high = to;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (height.applyAsDouble(middle) < 0 == rises) {
                low = middle;
            } else {
                high = middle;
            }
        }
        bounds.add(0.5 * (low + high));
    }

    /** Of one section, both sides: area and its moments, skin for each metre of length, lid, breadth in the water's surface. */
    private static void sum(Keel keel, WaterSurface water, double x, double[] out) {
        Keel.Knee foot = keel.section(x);
        double top = keel.rabbet().z(x);
        double deep = top - foot.z();
        double wet = Math.min(water.at(x), top) - foot.z();
        Arrays.fill(out, 0);
        if (!(deep > NONE && wet > 0)) {
            return;
        }
        Keel.Knee change = keel.change(x);
        double topSiding = keel.rabbet().y(x);
        double share = wet / deep;
        for (int i = 0; i < RULE.size(); i++) {
            double up = share * RULE.at(i);
            double breadth = 2 * (foot.halfSiding() + up * (topSiding - foot.halfSiding()));
            out[VOLUME] += wet * RULE.weight(i) * breadth;
            out[HEIGHT_MOMENT] += wet * RULE.weight(i) * breadth * (foot.z() + up * deep);
            out[SKIN] += 2 * share * RULE.weight(i) * side(keel, x, up, foot, change, deep, topSiding);
        }
        out[MOMENT] = x * out[VOLUME];
        out[SKIN] += 2 * foot.halfSiding() * Math.hypot(1, change.z());
        boolean covered = water.at(x) >= top;
        out[COVERED] = covered ? 2 * topSiding * Math.hypot(1, keel.rabbet().rise(x)) : 0;
        out[CUT] = covered ? 0 : 2 * (foot.halfSiding() + share * (topSiding - foot.halfSiding())) / Math.cos(water.trim().radians());
    }

    /** Area of one side for a unit of x and of the share up it: the size of the product of the two tangents. */
    private static double side(Keel keel, double x, double up, Keel.Knee foot, Keel.Knee change, double deep, double topSiding) {
        double alongY = change.halfSiding() + up * (keel.rabbet().spread(x) - change.halfSiding());
        double alongZ = change.z() + up * (keel.rabbet().rise(x) - change.z());
        double acrossY = topSiding - foot.halfSiding();
        double nx = alongY * deep - alongZ * acrossY;
        return Math.sqrt(nx * nx + deep * deep + acrossY * acrossY);
    }
}
