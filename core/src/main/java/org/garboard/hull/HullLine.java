package org.garboard.hull;

import org.garboard.offsets.LineKind;

/** A named line of the hull, faired along the length: keel, flat keel's edge, chine, sheer. */
public final class HullLine {
    private final String name;
    private final LineKind kind;

    HullLine(String name, LineKind kind) {
        this.name = name;
        this.kind = kind;
    }

    public String name() {
        return name;
    }

    public LineKind kind() {
        return kind;
    }

    /** Half-breadth at x [m]. */
    public double y(double x) {
        throw new IllegalStateException("skeleton");
    }

    /** Height above base at x [m]. */
    public double z(double x) {
        throw new IllegalStateException("skeleton");
    }
}
