package org.garboard.tablefile;

/**
 * The 58 ft twin inboard of the demonstration tables: a V bottom on a box keel with a flat outside its chine. Simple
 * formulas in metres: x aft of the stem head, y from the centreline, z above base.
 */
final class InboardBoat {
    static final double LENGTH = 17.7;
    private static final double KEEL_SIDING = 0.14;
    private static final double KEEL_DEPTH = 0.32;

    private InboardBoat() {
    }

    /** 1 at the stem head, 0 from {@code end} aft. */
    private static double ahead(double x, double end, double power) {
        return x < end ? Math.pow((end - x) / end, power) : 0;
    }

    /** From 0 at one x to 1 at another, without a kink at either. */
    private static double step(double x, double from, double to) {
        double t = Math.max(0, Math.min(1, (x - from) / (to - from)));
        return t * t * t * (10 - 15 * t + 6 * t * t);
    }

    /** Half the breadth of the keel, the same at its bottom and its top. */
    static double siding(double x) {
        return KEEL_SIDING - 0.09 * ahead(x, 5, 2.5);
    }

    /** How far the box keel stands below the bottom: it fades out forward and well ahead of the transom. */
    static double keelDepth(double x) {
        return KEEL_DEPTH * step(x, 2.4, 8) * (1 - step(x, 13, 17.7));
    }

    static double topOfKeel(double x) {
        return KEEL_DEPTH + 1.75 * ahead(x, 9, 3.2);
    }

    static double keel(double x) {
        return topOfKeel(x) - keelDepth(x);
    }

    static double deadrise(double x) {
        return Math.toRadians(14 + 26 * ahead(x, 13, 2.6));
    }

    static double chine(double x) {
        return siding(x) + 0.04 + 1.96 * (1 - ahead(x, 10, 2.3)) - 0.06 * Math.pow(Math.max(0, x - 10) / 7.7, 2.5);
    }

    static double chineHeight(double x) {
        return topOfKeel(x) + (chine(x) - siding(x)) * Math.tan(deadrise(x));
    }

    /** The flat outside the chine, level. */
    static double outerChine(double x) {
        return chine(x) + 0.02 + 0.11 * (1 - ahead(x, 8, 2.4));
    }

    static double sheer(double x) {
        return outerChine(x) + 0.10 + 0.32 * step(x, 0, 6) - 0.12 * step(x, 8, 17.7);
    }

    static double sheerHeight(double x) {
        return 2.45 + 0.95 * Math.pow((13 - x) / 13, 2);
    }

    /** Height at a buttock: keel, bottom, flat, side; NaN outboard of the sheer. */
    static double height(double x, double y) {
        if (y > sheer(x)) {
            return Double.NaN;
        }
        if (y <= siding(x)) {
            return keel(x);
        }
        if (y <= chine(x)) {
            return topOfKeel(x) + (y - siding(x)) * Math.tan(deadrise(x));
        }
        return y <= outerChine(x) ? chineHeight(x)
            : chineHeight(x) + (y - outerChine(x)) / (sheer(x) - outerChine(x)) * (sheerHeight(x) - chineHeight(x));
    }

    /** Half-breadth at a waterline; NaN below the bottom and above the sheer. */
    static double halfBreadth(double x, double z) {
        if (z <= topOfKeel(x) || z > sheerHeight(x)) {
            return Double.NaN;
        }
        return z <= chineHeight(x) ? siding(x) + (z - topOfKeel(x)) / Math.tan(deadrise(x))
            : outerChine(x) + (z - chineHeight(x)) / (sheerHeight(x) - chineHeight(x)) * (sheer(x) - outerChine(x));
    }
}
