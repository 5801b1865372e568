package org.garboard.flow.underway;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.flow.layer.LayerLaw;
import org.garboard.flow.water.Water;

/**
 * Where the layer is of one thickness, to starboard; the points lie on neighbouring paths, from the keel outboard.
 *
 * @param thickness to the layer's edge [m]
 * @param points in plan, hull frame [m], at least two
 */
public record LayerContour(double thickness, List<Vector2D> points) {
    /** Thicknesses that are shown [m]; our choice. */
    private static final double[] ROUND = {0.002, 0.005, 0.010, 0.015, 0.020, 0.030, 0.040, 0.060, 0.080, 0.100, 0.150, 0.200, 0.300};
    private static final int MOST = 5;
    private static final int HALVINGS = 60;
    /** A contour through the last of a path would lie on the hull's end. */
    private static final double CLEAR = 0.98;

    public LayerContour {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a contour of " + points.size() + " point(s); two are the least");
        }
    }

    /**
     * The thickest round ones that the paths reach, thinnest first.
     *
     * @param paths side by side, from the keel outboard
     * @param speed of the outer flow [m/s]
     */
    static List<LayerContour> along(List<FlowPath> paths, LayerLaw law, double speed, Water water) {
        double longest = CLEAR * paths.stream().mapToDouble(FlowPath::length).max().orElse(0);
        List<LayerContour> all = new ArrayList<>();
        for (int i = ROUND.length - 1; i >= 0 && all.size() < MOST; i--) {
            Optional<Double> run = runTo(ROUND[i], longest, law, speed, water);
            if (run.isPresent()) {
                List<Vector2D> points = new ArrayList<>();
                paths.forEach(path -> path.after(run.get()).ifPresent(points::add));
                if (points.size() > 1) {
                    all.add(0, new LayerContour(ROUND[i], points));
                }
            }
        }
        return all;
    }

    /** After which run the layer is so thick; empty where it is not within the longest, or the law does not reach so near its start. */
    private static Optional<Double> runTo(double thickness, double longest, LayerLaw law, double speed, Water water) {
        double low = LayerLaw.LEAST_REYNOLDS * water.viscosity() / speed * (1 + 1e-9);
        double high = longest;
        if (!(high > low) || thick(low, law, speed, water) > thickness || !(thick(high, law, speed, water) >= thickness)) {
            return Optional.empty();
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (thick(middle, law, speed, water) < thickness) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Optional.of(0.5 * (low + high));
    }

    private static double thick(double run, LayerLaw law, double speed, Water water) {
        return law.after(run, speed, water) instanceof LayerLaw.Known known ? known.layer().thickness() : Double.NaN;
    }
}
