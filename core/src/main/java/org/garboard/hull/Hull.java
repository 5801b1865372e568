package org.garboard.hull;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.offsets.OffsetTable;

/** The hull surface: panels between named lines, lofted through the stations. */
public final class Hull {

    private Hull() {
    }

    /** The surface that passes through every point of the table. */
    public static Hull through(OffsetTable table) {
        throw new IllegalStateException("skeleton");
    }

    /** Named lines from keel to sheer: keel, flat keel's edge if any, chines, sheer. */
    public List<HullLine> lines() {
        throw new IllegalStateException("skeleton");
    }

    /** The keel line, first of {@link #lines()}. */
    public HullLine keel() {
        throw new IllegalStateException("skeleton");
    }

    /** The outer edge of the bottom: the last chine, or the sheer of a hull without chine. */
    public HullLine bottomEdge() {
        throw new IllegalStateException("skeleton");
    }

    /** x of the forward end of the surface [m]. */
    public double forwardEnd() {
        throw new IllegalStateException("skeleton");
    }

    /** x of the after end of the surface [m]. */
    public double afterEnd() {
        throw new IllegalStateException("skeleton");
    }

    /** The lowest skin at a place in plan; at a knuckle the inboard face. Port is negative y. */
    public Optional<SkinPoint> at(double x, double y) {
        throw new IllegalStateException("skeleton");
    }

    /** Height of the lowest skin [m], NaN off the skin. Allocates nothing. */
    public double height(double x, double y) {
        throw new IllegalStateException("skeleton");
    }

    /** Girth from the keel line along the section's skin to y [m], NaN off the skin; never negative. */
    public double girth(double x, double y) {
        throw new IllegalStateException("skeleton");
    }

    /** Half-breadth at x and height z [m], the outermost where there are several. */
    public OptionalDouble halfBreadth(double x, double z) {
        throw new IllegalStateException("skeleton");
    }

    /** The section at x: a curve per panel, from the keel outward, starboard, within chord [m] of true. */
    public List<Curve> section(double x, double chord) {
        throw new IllegalStateException("skeleton");
    }

    /** The buttock at y [m], starboard. */
    public List<Curve> buttock(double y, double chord) {
        throw new IllegalStateException("skeleton");
    }

    /** The waterline at height z [m], starboard. */
    public List<Curve> waterline(double z, double chord) {
        throw new IllegalStateException("skeleton");
    }

    /** A named line as points, within chord [m] of true, forward to aft. */
    public Curve line(HullLine line, double chord) {
        throw new IllegalStateException("skeleton");
    }

    /** Volume between skin and the level plane z, both sides, over the length of the table [m3]. */
    public double volumeBelow(double z) {
        throw new IllegalStateException("skeleton");
    }
}
