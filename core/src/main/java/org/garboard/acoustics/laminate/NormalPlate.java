package org.garboard.acoustics.laminate;

/** Sound square through one even plate without loss, in closed form. */
public final class NormalPlate {

    private NormalPlate() {
    }

    /**
     * Share of the power that goes through, 0 to 1.
     *
     * <p>Symbols: z1, z2, z3 = impedance before, in and behind the plate, kd = its thickness in radians of phase.
     *
     * @param kd 2 pi frequency thickness / speed of compression waves
     * @see "L. E. Kinsler, A. R. Frey, A. B. Coppens, J. V. Sanders, Fundamentals of Acoustics, section 6.3, and
     *     L. M. Brekhovskikh, Waves in Layered Media; both from memory, confirmed by the identities in the tests"
     */
    public static double transmission(double z1, double z2, double z3, double kd) {
        double cos = Math.cos(kd);
        double sin = Math.sin(kd);
        return 4 / (2 + (z3 / z1 + z1 / z3) * cos * cos + (z2 * z2 / (z1 * z3) + z1 * z3 / (z2 * z2)) * sin * sin);
    }

    /** The same for a plate of that thickness [m] at that frequency [Hz], its loss left out. */
    public static double transmission(Fluid before, Solid plate, Fluid behind, double thickness, double frequency) {
        return transmission(before.impedance(), plate.impedance(), behind.impedance(),
            2 * Math.PI * frequency * thickness / plate.longitudinal());
    }
}
