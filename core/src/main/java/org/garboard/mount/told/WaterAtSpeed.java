package org.garboard.mount.told;

import java.util.ArrayList;
import java.util.List;
import org.garboard.flow.attitude.AtSpeed;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.layer.Layer;
import org.garboard.flow.layer.LayerLaw;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.units.FixedDecimal;

/**
 * The water along the bottom at one speed, over the whole band of load and trim: what a search of the bottom reads off at every
 * place. The layer is tabled by the length of its run. Owns its arrays.
 */
public final class WaterAtSpeed {
    /** Length of run between two entries of the table [m]. */
    private static final double STEP = 0.1;

    private final String name;
    private final double knots;
    private final List<Attitude> all;
    private final String refusal;
    private final double beam;
    private final double[][] thickness;
    private final double[][] clear;

    private WaterAtSpeed(String name, double knots, List<Attitude> all, String refusal, double beam, double[][] thickness, double[][] clear) {
        this.name = name;
        this.knots = knots;
        this.all = all;
        this.refusal = refusal;
        this.beam = beam;
        this.thickness = thickness;
        this.clear = clear;
    }

    public static WaterAtSpeed of(Hull hull, Water water, AtSpeed at) {
        List<Attitude> all = new ArrayList<>(List.of(at.middle()));
        at.ends().forEach(end -> all.add(end.attitude()));
        String refusal = "";
        double[][] thickness = new double[all.size()][];
        double[][] clear = new double[all.size()][];
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i) instanceof Attitude.NotKnown unknown) {
                refusal = unknown.reason();
            } else if (all.get(i) instanceof Attitude.Stepped) {
                refusal = "a stepped bottom under way is not yet judged place by place";
            } else {
                tabulate(hull, water, outer(all.get(i)), i, thickness, clear);
            }
        }
        return new WaterAtSpeed(at.speed().name(), at.speed().knots(), all, refusal, 2 * hull.bottomEdge().y(hull.bottomEnd()), thickness, clear);
    }

    private static double outer(Attitude attitude) {
        return attitude instanceof Attitude.Planes planes ? planes.run().bottomSpeed() : attitude.speed();
    }

    private static void tabulate(Hull hull, Water water, double speed, int i, double[][] thickness, double[][] clear) {
        int count = 2 + (int) Math.ceil((hull.afterEnd() - hull.forwardEnd()) / STEP);
        thickness[i] = new double[count];
        clear[i] = new double[count];
        for (int k = 1; k < count; k++) {
            LayerLaw.Answer answer = LayerLaw.USUAL.after(k * STEP, speed, water);
            Layer layer = answer instanceof LayerLaw.Known known ? known.layer() : null;
            thickness[i][k] = layer == null ? Double.NaN : layer.thickness();
            clear[i][k] = layer == null ? Double.NaN : layer.clearHeight();
        }
    }

    public double knots() {
        return knots;
    }

    /** "cruise, 25 kn". */
    public String words() {
        return name + ", " + FixedDecimal.format(knots, knots == Math.rint(knots) ? 0 : 1) + " kn";
    }

    /** Why nothing is known at this speed; empty where it is. */
    public String refusal() {
        return refusal;
    }

    int count() {
        return all.size();
    }

    /** Trim of the base line, positive bow-up [rad]. */
    double trim(int i) {
        return all.get(i).knownTrim().orElseThrow().radians();
    }

    /** How far a place lies abaft of where the water meets the bottom, the least over the band [beams]; infinite afloat. */
    double behindStagnation(double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        for (Attitude attitude : all) {
            if (attitude instanceof Attitude.Planes planes) {
                double line = planes.line().x(y);
                least = Math.min(least, Double.isNaN(line) ? Double.NEGATIVE_INFINITY : (x - line) / beam);
            }
        }
        return least;
    }

    /** Thickness of the layer at a place, the largest over the band [m]; 0 where no water runs along it. */
    double thickness(double x, double y) {
        return most(thickness, x, y);
    }

    /** Height that a face needs there to be clear of it, the largest over the band [m]. */
    double clearHeight(double x, double y) {
        return most(clear, x, y);
    }

    private double most(double[][] table, double x, double y) {
        double most = 0;
        for (int i = 0; i < table.length; i++) {
            Attitude attitude = all.get(i);
            double start = attitude instanceof Attitude.Planes planes ? planes.line().x(y) : ((Attitude.Floats) attitude).afloat().hull().from();
            double place = (x - start) / STEP;
            if (place > 0) {
                int k = Math.min(table[i].length - 2, (int) place);
                // the first piece is below the law's range: its end stands for it
                double from = k == 0 ? table[i][1] : table[i][k];
                most = Math.max(most, from + Math.min(1, place - k) * (table[i][k + 1] - from));
            }
        }
        return most;
    }
}
