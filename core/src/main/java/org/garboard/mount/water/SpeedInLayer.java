package org.garboard.mount.water;

import java.util.List;
import org.garboard.flow.layer.Layer;
import org.garboard.flow.layer.LayerLaw;

/** How fast the water runs so near the skin, by the profile of the layer's own law: what a search reads off at every place. Owns its array. */
final class SpeedInLayer {
    private final Layer[] layers;

    /** @param layers as {@link LayerAlong#layers} has them */
    SpeedInLayer(List<LayerLaw.Answer> layers) {
        this.layers = layers.stream().map(layer -> layer instanceof LayerLaw.Known known ? known.layer() : null).toArray(Layer[]::new);
    }

    /**
     * Mean speed at a height above the skin [m] over that outside the layer, after a run [m] of more than 0; where the layer begins
     * the water is not slowed. NaN where no law reaches.
     */
    double slowed(double run, double height) {
        double place = run / LayerAlong.STEP;
        int k = Math.min(layers.length - 1, (int) place);
        double from = k == 0 ? 1 : slowed(layers[k - 1], height);
        return from + Math.min(1, place - k) * (slowed(layers[k], height) - from);
    }

    private static double slowed(Layer layer, double height) {
        return layer == null ? Double.NaN : layer.profile().velocity(height / layer.thickness());
    }
}
