package org.garboard.hydrostatics;

/**
 * Hull and keel together.
 *
 * @param volume of displacement [m3]
 * @param lcb x of the centre of buoyancy [m]
 * @param vcb height of the centre of buoyancy above base [m]
 * @param wetted skin and keel, without the hull's ends, and without the lid that the keel covers [m2]
 * @param transverseBm [m]
 * @param longitudinalBm [m]
 */
public record Together(double volume, double lcb, double vcb, double wetted, double transverseBm, double longitudinalBm) {

    public static Together of(Hydrostatics hull, KeelAfloat keel) {
        double volume = hull.volume() + keel.volume();
        double share = keel.volume() / volume;
        return new Together(volume, mean(hull.lcb(), keel.lcb(), share), mean(hull.vcb(), keel.vcb(), share),
            hull.wettedSkin() - keel.covered() + keel.wetted(), hull.waterplane().transverse() / volume,
            hull.waterplane().longitudinal() / volume);
    }

    private static double mean(double hull, double keel, double share) {
        return share > 0 ? hull + share * (keel - hull) : hull;
    }

    /** Mass that floats so [kg], in water of a density [kg/m3]. */
    public double mass(double density) {
        return volume * density;
    }
}
