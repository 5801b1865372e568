package org.garboard.cutout.transom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.cutout.transom.TransomBracket.Neighbour;
import org.garboard.geometry.Quad;

/** What ends on the bottom close ahead of the transom, by how far it lies to the side of the body. */
record Beside(double transom, double y, double width) {
    /** So far ahead of the transom what is on the bottom still stirs the water that comes to it [m]: as transom mounts are sited. */
    private static final double AHEAD = 0.5;
    /** What lies farther to the side is not told [m]; our choice. */
    private static final double FAR = 0.6;

    List<Neighbour> of(BottomFeatures features) {
        List<Neighbour> beside = new ArrayList<>();
        for (LaidFeature feature : features.laid()) {
            double gap = gap(feature);
            if (gap <= FAR) {
                beside.add(new Neighbour(feature.name(), feature.kind(), gap));
            }
        }
        beside.sort(Comparator.comparingDouble(Neighbour::gap));
        return beside;
    }

    private double gap(LaidFeature feature) {
        double least = Double.POSITIVE_INFINITY;
        for (Quad quad : feature.cover()) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            double aft = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < Quad.CORNERS; i++) {
                aft = Math.max(aft, quad.x(i));
            }
            for (int i = 0; i < Quad.CORNERS; i++) {
                // of a strake its after end counts, not where it begins
                if (quad.x(i) > transom - AHEAD || quad.x(i) == aft) {
                    low = Math.min(low, quad.y(i));
                    high = Math.max(high, quad.y(i));
                }
            }
            if (aft > transom - AHEAD) {
                least = Math.min(least, feature.sides() == Sides.PORT ? away(-high, -low) : away(low, high));
                if (feature.sides() == Sides.BOTH) {
                    least = Math.min(least, away(-high, -low));
                }
            }
        }
        return least;
    }

    private double away(double low, double high) {
        return Math.max(0, Math.max(low - (y + width / 2), y - width / 2 - high));
    }
}
