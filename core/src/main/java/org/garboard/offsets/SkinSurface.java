package org.garboard.offsets;

/** The surface of the hull to which a table is drawn. */
public enum SkinSurface {
    OUTSIDE_OF_SKIN,
    INSIDE_OF_PLANKING,
    INSIDE_OF_PLATING
}
