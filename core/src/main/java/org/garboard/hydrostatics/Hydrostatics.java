package org.garboard.hydrostatics;

import org.garboard.hull.Hull;

/**
 * The hull afloat to one surface of the water.
 *
 * @param water how it lies
 * @param from x of the forward end of the wet part [m]
 * @param to x of its after end [m]
 * @param volume of displacement, to the outside of the skin, both sides [m3]
 * @param lcb x of the centre of buoyancy [m]
 * @param vcb height of the centre of buoyancy above base, square to the base line [m]
 * @param wettedSkin both sides, without the ends [m2]
 * @param waterplane where the water cuts it
 */
public record Hydrostatics(WaterSurface water, double from, double to, double volume, double lcb, double vcb,
                           double wettedSkin, Waterplane waterplane)
        implements Floating {

    /** Works out how a hull lies in the water; one that is floated often is better made a {@link HullToFloat} first. */
    public static Floating of(Hull hull, WaterSurface water) {
        return new HullToFloat(hull).to(water);
    }

    /** Mass that floats so [kg], in water of a density [kg/m3]. */
    public double mass(double density) {
        return volume * density;
    }

    /** Transverse BM [m]: from the centre of buoyancy up to the metacentre, square to the water; I/V. */
    public double transverseBm() {
        return waterplane.transverse() / volume;
    }

    /** Longitudinal BM [m], likewise. */
    public double longitudinalBm() {
        return waterplane.longitudinal() / volume;
    }
}
