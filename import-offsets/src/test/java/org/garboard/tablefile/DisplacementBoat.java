package org.garboard.tablefile;

/**
 * The 30 ft round-bilge displacement boat of the demonstration tables, with a full keel and deadwood. Simple formulas in
 * metres: x aft of the stem head, y from the centreline, z above base; the skin begins at the rabbet.
 *
 * <p>Every section runs from the rabbet to the sheer as y = s + (b - s) u^p with u the share of the height,
 * a power below 1 for a full bilge amidships and near 1 towards the ends.
 */
final class DisplacementBoat {
    static final double LENGTH = 9.1;
    /** Where the keel's row begins and ends. */
    static final double KEEL_FROM = 1.0;
    static final double STERNPOST = 8.2;

    private DisplacementBoat() {
    }

    private static double square(double a) {
        return a * a;
    }

    /** Half the breadth of keel, stem and sternpost at the rabbet. */
    static double siding(double x) {
        return 0.075 - 0.025 * square(Math.max(0, 3 - x) / 3);
    }

    /** Deepest amidships, up to the stem head forward and to the tuck aft. */
    static double rabbet(double x) {
        return 0.62 + 1.15 * Math.pow(Math.max(0, 4.2 - x) / 4.2, 3) + 0.55 * Math.pow(Math.max(0, x - 4.2) / 4.9, 2.6);
    }

    static double sheer(double x) {
        return siding(x) + 0.05 + 1.37 * (1 - Math.pow(Math.abs(x - 5) / 5, 2.4)) + 0.35 * square(Math.max(0, x - 5) / 4.1);
    }

    static double sheerHeight(double x) {
        return 1.72 + 0.62 * square((6.2 - x) / 6.2);
    }

    /** Power of the section's curve. */
    static double fullness(double x) {
        return 0.52 + 0.38 * square(Math.abs(x - 4.8) / 4.8);
    }

    static double halfBreadth(double x, double z) {
        if (z <= rabbet(x) || z > sheerHeight(x)) {
            return Double.NaN;
        }
        double up = (z - rabbet(x)) / (sheerHeight(x) - rabbet(x));
        return siding(x) + (sheer(x) - siding(x)) * Math.pow(up, fullness(x));
    }

    static double height(double x, double y) {
        if (y <= siding(x) || y > sheer(x)) {
            return Double.NaN;
        }
        double out = (y - siding(x)) / (sheer(x) - siding(x));
        return rabbet(x) + (sheerHeight(x) - rabbet(x)) * Math.pow(out, 1 / fullness(x));
    }

    /** Straight, deepening aft from the forefoot to the heel of the sternpost; NaN where there is none. */
    static double keelBottom(double x) {
        if (x < KEEL_FROM || x > STERNPOST) {
            return Double.NaN;
        }
        double straight = 0.30 - 0.30 * (x - 2) / (STERNPOST - 2);
        double forefoot = rabbet(KEEL_FROM) + (0.30 - rabbet(KEEL_FROM)) * (x - KEEL_FROM);
        return x < 2 ? Math.min(rabbet(x), forefoot) : straight;
    }

    static double keelBottomSiding(double x) {
        return keelBottom(x) == keelBottom(x) ? 0.06 - (x < 2 ? 0.015 * (2 - x) : 0) : Double.NaN;
    }
}
