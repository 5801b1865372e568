package org.garboard.flow.place;

import org.garboard.flow.layer.Layer;

/** The boundary layer at a place, or why there is none to tell. */
public sealed interface LayerThere permits LayerThere.Grown, LayerThere.NotKnown {

    /**
     * @param start x from which the water has run along the skin [m]
     * @param layer thickness, displacement and momentum thickness there; {@link Layer#clearHeight()} is the height a face needs
     * @param standing at this speed
     */
    record Grown(double start, Layer layer, Standing standing) implements LayerThere {
    }

    /** No figure. @param reason in words */
    record NotKnown(String reason) implements LayerThere {
    }
}
