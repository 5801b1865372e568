package org.garboard.siting;

import java.util.ArrayList;
import java.util.List;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.geometry.Quad;

/**
 * Strakes and fittings of one side, or of both laid over each other, and how far a footprint keeps from them.
 * Distances are taken in plan, which is never more than along the skin.
 */
final class Obstacles {
    static final Obstacles NONE = new Obstacles(List.of(), List.of());

    private final Quad[] covers;
    private final LaidFeature[] features;
    private final double propellers;

    private Obstacles(List<LaidFeature> from, List<LaidFeature> told) {
        List<Quad> all = new ArrayList<>();
        List<LaidFeature> owners = new ArrayList<>();
        for (LaidFeature feature : from) {
            for (Quad cover : feature.cover()) {
                all.add(cover);
                owners.add(feature);
            }
        }
        this.covers = all.toArray(Quad[]::new);
        this.features = owners.toArray(LaidFeature[]::new);
        this.propellers = told.stream().filter(LaidFeature::isPropeller).mapToDouble(LaidFeature::from).min()
            .orElse(Double.POSITIVE_INFINITY);
    }

    /** How far ahead of the foremost propeller a footprint ends [m]; negative beside and behind it, infinite without any. */
    double aheadOfPropellers(double[] footprint) {
        double aftmost = Math.max(Math.max(footprint[0], footprint[2]), Math.max(footprint[4], footprint[6]));
        return propellers - aftmost;
    }

    /**
     * Propellers count whichever side they are on: they are loud on both.
     *
     * @param sides BOTH for a search whose places serve on either side, and for a seat athwart the keel
     */
    static Obstacles of(BottomFeatures features, Sides sides) {
        return new Obstacles(features.laid().stream().filter(feature -> feature.sides().meets(sides)).toList(), features.laid());
    }

    /** Index of the nearest to a footprint, the first of equals; -1 without any. */
    int nearest(double[] footprint) {
        int nearest = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < covers.length; i++) {
            if (covers[i].leastGap(footprint) < least) {
                double gap = covers[i].gap(footprint);
                if (gap < least) {
                    least = gap;
                    nearest = i;
                }
            }
        }
        return nearest;
    }

    /** Distance of an obstacle [m], 0 under the footprint; infinite without any. */
    double gap(int obstacle, double[] footprint) {
        return obstacle < 0 ? Double.POSITIVE_INFINITY : covers[obstacle].gap(footprint);
    }

    LaidFeature feature(int obstacle) {
        return features[obstacle];
    }
}
