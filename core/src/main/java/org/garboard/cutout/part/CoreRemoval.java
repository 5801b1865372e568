package org.garboard.cutout.part;

import org.garboard.skin.Layup.Sandwich;

/**
 * How far beyond the hull's cut a cored skin is opened from inside and filled solid. Distances [m].
 *
 * @param filled core and inner skin are taken out to here, and the place is filled solid
 * @param taper to here the inner skin is ground to a taper for the laminate that closes it
 */
public record CoreRemoval(double filled, double taper) {
    /** Core thicknesses that are taken out: common practice, no source (2 to 4 are told). */
    private static final double THICKNESSES = 3;
    /** Length of the taper to the inner skin's thickness: 12 to 1 is common in repair of glass laminates; quoted second-hand. */
    private static final double SCARF = 12;

    /**
     * For a skin.
     *
     * @param overlap of the block, which must bear on solid
     */
    public static CoreRemoval of(Sandwich skin, double overlap) {
        double filled = Math.max(THICKNESSES * skin.coreThickness(), overlap);
        return new CoreRemoval(filled, filled + SCARF * skin.innerSkin());
    }
}
