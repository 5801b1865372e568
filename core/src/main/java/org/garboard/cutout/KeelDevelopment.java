package org.garboard.cutout;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.skin.AxisFrame;

/**
 * Skin on both sides of the keel line laid flat: u along the keel line, v along the skin square to it.
 *
 * <p>Exact for a V of plane sides or of sides that are cylinders along the keel; elsewhere lengths
 * change, and {@link #stretch} says by how much.
 */
final class KeelDevelopment {
    private static final int STEPS = 32;
    private static final int MOST_ROUNDS = 40;
    private static final double CLOSE = 1e-7;

    private final AxisFrame frame;

    KeelDevelopment(AxisFrame frame) {
        this.frame = frame;
    }

    FlatPoint of(double along, double across) {
        return new FlatPoint(length(along, 0, 0, 0), length(along, along, 0, across));
    }

    /** Where a flat point lies on the skin, along and across the frame. */
    FlatPoint plan(FlatPoint flat) {
        double along = flat.u();
        double across = flat.v();
        for (int i = 0; i < MOST_ROUNDS; i++) {
            FlatPoint laid = of(along, across);
            double missU = flat.u() - laid.u();
            double missV = flat.v() - laid.v();
            along += missU;
            across += missV;
            if (!(Math.abs(missU) + Math.abs(missV) > CLOSE)) {
                break;
            }
        }
        return new FlatPoint(along, across);
    }

    /** Length of the skin along a straight run in plan, signed like the run; chords of a fine division. */
    private double length(double along, double fromAlong, double fromAcross, double across) {
        double total = 0;
        double before = frame.outside(fromAlong, fromAcross);
        double stepAlong = (along - fromAlong) / STEPS;
        double stepAcross = (across - fromAcross) / STEPS;
        double plan = Math.hypot(stepAlong, stepAcross);
        for (int i = 1; i <= STEPS; i++) {
            double here = frame.outside(fromAlong + i * stepAlong, fromAcross + i * stepAcross);
            total += Math.hypot(plan, here - before);
            before = here;
        }
        return stepAlong + stepAcross < 0 ? -total : total;
    }

    /** Largest difference between a chord on the skin and the same chord laid flat, each side by itself [m]. */
    static double stretch(List<Vector3D> skin, List<FlatPoint> flat) {
        double worst = 0;
        for (List<Integer> side : sides(flat)) {
            for (int a : side) {
                for (int b : side) {
                    double there = Math.hypot(flat.get(a).u() - flat.get(b).u(), flat.get(a).v() - flat.get(b).v());
                    worst = Math.max(worst, Math.abs(there - skin.get(a).distance(skin.get(b))));
                }
            }
        }
        return worst;
    }

    private static List<List<Integer>> sides(List<FlatPoint> flat) {
        List<Integer> starboard = new ArrayList<>();
        List<Integer> port = new ArrayList<>();
        for (int i = 0; i < flat.size(); i++) {
            if (flat.get(i).v() >= 0) {
                starboard.add(i);
            }
            if (flat.get(i).v() <= 0) {
                port.add(i);
            }
        }
        return List.of(starboard, port);
    }
}
