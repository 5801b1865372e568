package org.garboard.drawing.sheets;

import java.util.List;
import java.util.Optional;
import org.garboard.drawing.Point;

/** How far a part in a section reaches along a line upright in its frame, from its lowest to its highest place [mm on paper]. */
record Span(double low, double high) {

    /** Of the part's loops at a distance from the axis. */
    static Optional<Span> at(double x, List<List<Point>> loops) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (List<Point> loop : loops) {
            for (int i = 0; i < loop.size(); i++) {
                Point a = loop.get(i);
                Point b = loop.get((i + 1) % loop.size());
                if ((a.x() - x) * (b.x() - x) < 0) {
                    double height = a.y() + (x - a.x()) / (b.x() - a.x()) * (b.y() - a.y());
                    low = Math.min(low, height);
                    high = Math.max(high, height);
                }
            }
        }
        return high > low ? Optional.of(new Span(low, high)) : Optional.empty();
    }
}
