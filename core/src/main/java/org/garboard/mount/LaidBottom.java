package org.garboard.mount;

import org.garboard.craft.BottomFeatures;
import org.garboard.craft.LaidFeature;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;

/** A hull and what is on its bottom. */
public record LaidBottom(Hull hull, BottomFeatures features) {
    private static final int LOOKS = 200;

    /** Height above base of the lowest place of skin, keel and features, as far as they tell how far they stand out [m]. */
    public double lowest() {
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= LOOKS; i++) {
            lowest = Math.min(lowest, hull.keel().z(hull.firstSection() + (hull.foot() - hull.firstSection()) * i / LOOKS));
        }
        lowest = Math.min(lowest, features.keel().map(keel -> keel.lowest().z()).orElse(Double.POSITIVE_INFINITY));
        for (LaidFeature feature : features.laid()) {
            for (Quad quad : feature.cover()) {
                for (int corner = 0; corner < Quad.CORNERS; corner++) {
                    double z = hull.height(quad.x(corner), quad.y(corner)) - feature.height().orElse(0.0);
                    lowest = z < lowest ? z : lowest;
                }
            }
        }
        return lowest;
    }
}
