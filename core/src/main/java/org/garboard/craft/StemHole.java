package org.garboard.craft;

/** The hole for a stem. */
public final class StemHole {
    /** Added to the stem's diameter [m]: common practice, no source. */
    static final double EASE = 0.0015;
    /** Hole saws that shops hold [mm], inch sizes by their millimetres: common practice, no source. */
    private static final int[] SAWS_MM = {16, 19, 20, 22, 25, 29, 30, 32, 35, 38, 41, 44, 48, 51, 54, 57, 60, 64, 67, 70, 73,
        76, 79, 83, 86, 89, 92, 95, 98, 102, 105, 108, 111, 114, 121, 127, 140, 152};
    /** Beyond the last saw holes are cut with a router to whole steps of so much [mm]. */
    private static final int ROUTED_MM = 5;

    private StemHole() {
    }

    /** Diameter of the hole for a stem [m]: with its ease, to the next saw up. */
    public static double diameter(double stem) {
        return diameter(stem, 0);
    }

    /** Bore of a sleeve for a stem [m]. */
    public static double eased(double stem) {
        return stem + EASE;
    }

    /** The same with a sleeve round the stem, of that wall [m]. */
    public static double diameter(double stem, double sleeveWall) {
        double least = 1000 * (eased(stem) + 2 * sleeveWall) - 1e-6;
        for (int saw : SAWS_MM) {
            if (saw >= least) {
                return saw / 1000.0;
            }
        }
        return Math.ceil(least / ROUTED_MM) * ROUTED_MM / 1000;
    }
}
