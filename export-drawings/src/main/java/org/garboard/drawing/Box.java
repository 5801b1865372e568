package org.garboard.drawing;

import java.util.Collection;

/** An upright rectangle on the paper [mm]. */
public record Box(double left, double bottom, double right, double top) {
    public Box {
        if (!(left <= right && bottom <= top)) {
            throw new IllegalArgumentException("a box needs left <= right and bottom <= top: "
                    + left + ", " + bottom + ", " + right + ", " + top + " mm");
        }
    }

    /** The least box round the points. */
    public static Box around(Collection<Point> points) {
        double left = Double.POSITIVE_INFINITY;
        double bottom = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double top = Double.NEGATIVE_INFINITY;
        for (Point point : points) {
            left = Math.min(left, point.x());
            bottom = Math.min(bottom, point.y());
            right = Math.max(right, point.x());
            top = Math.max(top, point.y());
        }
        return new Box(left, bottom, right, top);
    }

    public double width() {
        return right - left;
    }

    public double height() {
        return top - bottom;
    }

    public Point centre() {
        return new Point((left + right) / 2, (bottom + top) / 2);
    }

    public Box movedBy(double dx, double dy) {
        return new Box(left + dx, bottom + dy, right + dx, top + dy);
    }

    /** Larger by a margin [mm] on all sides; smaller when negative. */
    public Box grownBy(double margin) {
        return new Box(left - margin, bottom - margin, right + margin, top + margin);
    }

    public Box joinedWith(Box other) {
        return new Box(Math.min(left, other.left), Math.min(bottom, other.bottom),
                Math.max(right, other.right), Math.max(top, other.top));
    }

    public boolean contains(Box other) {
        return left <= other.left && bottom <= other.bottom && right >= other.right && top >= other.top;
    }

    /** True when the two share more than an edge. */
    public boolean overlaps(Box other) {
        return left < other.right && other.left < right && bottom < other.top && other.bottom < top;
    }
}
