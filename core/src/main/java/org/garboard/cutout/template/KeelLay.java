package org.garboard.cutout.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.cutout.skin.Skin;
import org.garboard.solid.Parting;

/**
 * Skin on both sides of a keel line, or of other edges fore and aft, laid flat: u along the skin in the plane
 * y = constant of a frame's origin, v along the skin square to how it runs there. Exact for a V of plane sides, and for
 * sides that are cylinders, where the middle runs straight.
 */
final class KeelLay implements FirstLay {
    private static final int STEPS = 4;
    private static final double SAME = 1e-9;

    private final AxisFrame frame;
    private final List<Parting.Line> creases;

    /** @param creases edges fore and aft, v over u of a frame that lies much as the skin runs */
    KeelLay(AxisFrame seen, List<Parting.Line> creases) {
        Vector3D origin = seen.origin();
        double[] face = new double[Skin.SIZE];
        seen.skin().at(origin.getX(), origin.getY(), face);
        this.frame = AxisFrame.levelAthwart(seen.skin(), origin.getX(), origin.getY(), Math.atan(face[1]), 0);
        this.creases = List.copyOf(creases);
    }

    @Override
    public Optional<FlatPoint> of(Vector3D place) {
        Vector3D from = place.subtract(frame.origin());
        double u = from.dot(frame.along());
        double v = from.dot(frame.across());
        FlatPoint flat = new FlatPoint(run(0, 0, u, 0), across(u, v));
        return Double.isNaN(flat.u() + flat.v()) ? Optional.empty() : Optional.of(flat);
    }

    /** From the middle plane outward, edge by edge, each smooth stretch by itself. */
    private double across(double u, double v) {
        List<Double> stops = new ArrayList<>(List.of(0.0));
        creases.stream().map(line -> line.v(u)).filter(at -> at * v > 0 && Math.abs(at) < Math.abs(v) - SAME && Math.abs(at) > SAME)
            .sorted((a, b) -> Double.compare(Math.abs(a), Math.abs(b))).forEach(stops::add);
        stops.add(v);
        double sum = 0;
        for (int i = 1; i < stops.size(); i++) {
            sum += run(u, stops.get(i - 1), u, stops.get(i));
        }
        return sum;
    }

    /** Length of the skin over a straight run, signed like it: chords of two divisions, taken to none by Richardson's rule. */
    private double run(double fromU, double fromV, double toU, double toV) {
        double du = (toU - fromU) / (2 * STEPS);
        double dv = (toV - fromV) / (2 * STEPS);
        double plan = Math.hypot(du, dv);
        if (plan == 0) {
            return 0;
        }
        double fine = 0;
        double coarse = 0;
        double before = frame.outside(fromU, fromV);
        double beforeThat = before;
        for (int i = 1; i <= 2 * STEPS; i++) {
            double here = frame.outside(fromU + i * du, fromV + i * dv);
            fine += Math.hypot(plan, here - before);
            if (i % 2 == 0) {
                coarse += Math.hypot(2 * plan, here - beforeThat);
                beforeThat = here;
            }
            before = here;
        }
        return Math.signum(du + dv) * (4 * fine - coarse) / 3;
    }
}
