package org.garboard.tablefile;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * A hard-chine planing boat of simple formulas, for demonstration tables. Everything in feet: x aft of the
 * stem head, y from the centreline, z above base; each formula is a function of x.
 *
 * @param length from the stem head to the transom
 * @param keel height of the keel
 * @param chine half-breadth of the chine
 * @param deadrise from the keel straight to the chine [degrees]
 * @param belly how far the bottom bulges below that straight line, over the chine's half-breadth, times four
 * @param sheer half-breadth of the sheer
 * @param sheerHeight height of the sheer
 * @param flare hollow of the side: 0 is straight from chine to sheer, 1 starts upright
 */
record VBottomBoat(double length, DoubleUnaryOperator keel, DoubleUnaryOperator chine, DoubleUnaryOperator deadrise,
                   DoubleUnaryOperator belly, DoubleUnaryOperator sheer, DoubleUnaryOperator sheerHeight,
                   DoubleUnaryOperator flare) {

    /** 22 ft outboard: 20 degrees at the transom, straight sections aft, keel straight from 12 ft aft. */
    static VBottomBoat outboard22() {
        return new VBottomBoat(22,
            x -> 3.0 * ahead(x, 12, 3.5),
            x -> 0.15 + 3.25 * (1 - ahead(x, 13.5, 2.3)) - 0.10 * aft(x, 13.5, 22, 2.3),
            x -> 20 + 26 * ahead(x, 16, 2.8),
            x -> 0.10 * ahead(x, 12.5, 2.5),
            x -> 0.25 + 3.77 * (1 - ahead(x, 16, 3.2)) - 0.15 * aft(x, 16, 22, 2.5),
            x -> 3.3 + 1.3 * square((17 - x) / 17),
            x -> 0.5 * ahead(x, 15, 2.5));
    }

    /** 39 ft outboard: 22 degrees at the transom, a little belly in the bottom all the way aft. */
    static VBottomBoat outboard39() {
        return new VBottomBoat(39,
            x -> 4.8 * ahead(x, 21, 3.6),
            x -> 0.20 + 4.50 * (1 - ahead(x, 23, 2.4)) - 0.12 * aft(x, 23, 39, 2.4),
            x -> 22 + 26 * ahead(x, 27, 2.8),
            x -> 0.03 + 0.07 * ahead(x, 22, 2.5),
            x -> 0.35 + 5.15 * (1 - ahead(x, 27, 3.2)) - 0.25 * aft(x, 27, 39, 2.6),
            x -> 5.1 + 2.1 * square((31 - x) / 31),
            x -> 0.6 * ahead(x, 26, 2.5));
    }

    /**
     * 38 ft outboard with two steps, as a length of it: 23 degrees at the transom; abaft of the steps the keel starts
     * higher and runs down aft a little, and the bottom with it.
     *
     * @param steps how many steps lie forward of the length
     */
    static VBottomBoat stepped38(int steps) {
        DoubleUnaryOperator raised = x -> steps == 0 ? 0
            : steps == 1 ? 0.150 - 0.008 * (x - 22.5) : 0.230 - 0.008 * (x - 30);
        return new VBottomBoat(38,
            x -> raised.applyAsDouble(x) + 4.6 * ahead(x, 20, 3.6),
            x -> 0.20 + 4.30 * (1 - ahead(x, 22, 2.4)) - 0.10 * aft(x, 22, 38, 2.4),
            x -> 23 + 26 * ahead(x, 26, 2.8),
            x -> 0.02 + 0.07 * ahead(x, 21, 2.5),
            x -> 0.35 + 4.95 * (1 - ahead(x, 26, 3.2)) - 0.20 * aft(x, 26, 38, 2.6),
            x -> 5.0 + 2.0 * square((30 - x) / 30),
            x -> 0.6 * ahead(x, 25, 2.5));
    }

    /** 1 at the stem head, 0 from {@code end} aft, with a curvature that starts from nothing when power > 2. */
    private static double ahead(double x, double end, double power) {
        return x < end ? Math.pow((end - x) / end, power) : 0;
    }

    /** 0 up to {@code start}, 1 at {@code end}. */
    private static double aft(double x, double start, double end, double power) {
        return x > start ? Math.pow((x - start) / (end - start), power) : 0;
    }

    private static double square(double a) {
        return a * a;
    }

    double keelHeight(double x) {
        return keel.applyAsDouble(x);
    }

    double chineHalfBreadth(double x) {
        return chine.applyAsDouble(x);
    }

    double chineHeight(double x) {
        return keelHeight(x) + chineHalfBreadth(x) * Math.tan(Math.toRadians(deadrise.applyAsDouble(x)));
    }

    double sheerHalfBreadth(double x) {
        return sheer.applyAsDouble(x);
    }

    double heightOfSheer(double x) {
        return sheerHeight.applyAsDouble(x);
    }

    /** Height of the skin at a buttock; none outboard of the sheer. */
    OptionalDouble height(double x, double y) {
        if (y > sheerHalfBreadth(x)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(y <= chineHalfBreadth(x)
            ? bottom(x, y)
            : solve(z -> side(x, z), y, chineHeight(x), heightOfSheer(x)));
    }

    /** Half-breadth of the skin at a waterline; none below the keel and above the sheer. */
    OptionalDouble halfBreadth(double x, double z) {
        if (z < keelHeight(x) || z > heightOfSheer(x)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(z >= chineHeight(x)
            ? side(x, z)
            : solve(y -> bottom(x, y), z, 0, chineHalfBreadth(x)));
    }

    private double bottom(double x, double y) {
        double out = y / chineHalfBreadth(x);
        double rise = chineHeight(x) - keelHeight(x);
        return keelHeight(x) + rise * out - belly.applyAsDouble(x) * chineHalfBreadth(x) * out * (1 - out);
    }

    private double side(double x, double z) {
        double up = (z - chineHeight(x)) / (heightOfSheer(x) - chineHeight(x));
        double spread = sheerHalfBreadth(x) - chineHalfBreadth(x);
        return chineHalfBreadth(x) + spread * (up - flare.applyAsDouble(x) * up * (1 - up));
    }

    /** The argument between two bounds at which a rising function takes a value. */
    private static double solve(DoubleUnaryOperator rising, double value, double from, double to) {
        double low = from;
        double high = to;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (rising.applyAsDouble(middle) < value) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
