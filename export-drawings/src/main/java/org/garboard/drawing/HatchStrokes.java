package org.garboard.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The strokes of a hatch, clipped to its region (even-odd, so holes stay clear).
 *
 * <p>Strokes lie on whole multiples of the spacing from the paper's origin, as a CAD program
 * lays the pattern, so that neighbouring regions of one hatch run on.
 */
public final class HatchStrokes {

    private HatchStrokes() {
    }

    /** Each stroke once, from the lowest up. */
    public static List<Line> of(Hatch hatch) {
        double radians = Math.toRadians(hatch.angleDeg());
        double ux = Math.cos(radians);
        double uy = Math.sin(radians);
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Point point : hatch.rings().get(0)) {
            double across = -uy * point.x() + ux * point.y();
            least = Math.min(least, across);
            most = Math.max(most, across);
        }
        List<Line> strokes = new ArrayList<>();
        for (long n = (long) Math.ceil(least / hatch.spacing()); n * hatch.spacing() <= most; n++) {
            double across = n * hatch.spacing();
            double[] along = crossings(hatch, ux, uy, across);
            for (int i = 0; i + 1 < along.length; i += 2) {
                if (along[i + 1] - along[i] > 0.01) {
                    strokes.add(new Line(hatch.layer(), at(ux, uy, along[i], across), at(ux, uy, along[i + 1], across)));
                }
            }
        }
        return strokes;
    }

    private static Point at(double ux, double uy, double along, double across) {
        return new Point(ux * along - uy * across, uy * along + ux * across);
    }

    /** Where a stroke's line crosses the rings, along it, rising. An end on the line counts on one side only. */
    private static double[] crossings(Hatch hatch, double ux, double uy, double across) {
        List<Double> found = new ArrayList<>();
        for (List<Point> ring : hatch.rings()) {
            for (int i = 0; i < ring.size(); i++) {
                Point a = ring.get(i);
                Point b = ring.get((i + 1) % ring.size());
                double da = -uy * a.x() + ux * a.y() - across;
                double db = -uy * b.x() + ux * b.y() - across;
                if (da < 0 != db < 0) {
                    double t = da / (da - db);
                    found.add(ux * (a.x() + t * (b.x() - a.x())) + uy * (a.y() + t * (b.y() - a.y())));
                }
            }
        }
        double[] along = found.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(along);
        return along;
    }
}
