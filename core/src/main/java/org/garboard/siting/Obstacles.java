package org.garboard.siting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

    /** Which is the nearest to a footprint that is moved from place to place, and how far off it is. */
    final class Nearest {
        private int index = -1;
        private double gap = Double.POSITIVE_INFINITY;

        /** Of equals the first. The nearest of the place before is tried first: most others are then passed over by their boxes alone. */
        void seek(double[] footprint) {
            gap = index < 0 ? Double.POSITIVE_INFINITY : covers[index].gap(footprint);
            int last = index;
            for (int i = 0; i < covers.length; i++) {
                if (i != last && covers[i].leastGap(footprint) <= gap) {
                    double other = covers[i].gap(footprint);
                    if (other < gap || other == gap && i < index) {
                        gap = other;
                        index = i;
                    }
                }
            }
        }

        /** [m]; 0 under the footprint, infinite without any. */
        double gap() {
            return gap;
        }

        Optional<LaidFeature> feature() {
            return index < 0 ? Optional.empty() : Optional.of(features[index]);
        }
    }

    Nearest nearest() {
        return new Nearest();
    }
}
