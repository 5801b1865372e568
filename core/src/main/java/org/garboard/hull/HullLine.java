package org.garboard.hull;

import org.garboard.geometry.CubicSpline;
import org.garboard.offsets.LineKind;

/** A named line of the hull as a curve along the length: keel, flat keel's edge, chine, sheer. */
public final class HullLine {
    private final String name;
    private final LineKind kind;
    private final CubicSpline halfBreadth;
    private final CubicSpline height;

    HullLine(String name, LineKind kind, CubicSpline halfBreadth, CubicSpline height) {
        this.name = name;
        this.kind = kind;
        this.halfBreadth = halfBreadth;
        this.height = height;
    }

    public String name() {
        return name;
    }

    public LineKind kind() {
        return kind;
    }

    /** Half-breadth at x [m]. */
    public double y(double x) {
        return halfBreadth.value(x);
    }

    /** Height above base at x [m]. */
    public double z(double x) {
        return height.value(x);
    }

    /** Size of the second derivative of (y, z) along x [1/m]. */
    double bend(double x) {
        return Math.hypot(halfBreadth.derivative(2, x), height.derivative(2, x));
    }

    CubicSpline halfBreadth() {
        return halfBreadth;
    }

    CubicSpline height() {
        return height;
    }
}
