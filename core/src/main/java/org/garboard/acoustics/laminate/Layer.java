package org.garboard.acoustics.laminate;

/**
 * One layer of a skin.
 *
 * @param material of the layer
 * @param thickness [m]
 */
public record Layer(Solid material, double thickness) {
    public Layer {
        Positive.require("thickness of a layer of " + material.name(), thickness, "m");
    }
}
