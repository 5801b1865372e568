package org.garboard.cutout.pocket;

import java.util.function.DoubleUnaryOperator;

/**
 * A part of a section as height over distance, falling or level: a line, an arc, or the surface outside.
 *
 * @param order of it along the section: twice the number of a corner for its arc, one more for the line after it
 * @param from least distance [m]
 * @param to largest
 * @param height over distance
 * @param angle of an arc over distance
 * @param atAngle distance over that angle
 */
record SectionPart(int order, double from, double to, DoubleUnaryOperator height, DoubleUnaryOperator angle, DoubleUnaryOperator atAngle) {

    static SectionPart line(int order, double x0, double w0, double x1, double w1) {
        double fall = x1 > x0 ? (w1 - w0) / (x1 - x0) : 0;
        return new SectionPart(order, x0, x1, x -> w0 + fall * (x - x0), x -> x, x -> x);
    }

    /**
     * An arc by its tangent's angles.
     *
     * @param hand 1 where it turns down, -1 where it turns out again
     */
    static SectionPart arc(int order, double middleX, double middleW, double radius, double hand, double first, double last) {
        DoubleUnaryOperator angle = x -> Math.asin(Math.max(-1, Math.min(1, hand * (middleX - x) / radius)));
        return new SectionPart(order, middleX - hand * radius * Math.sin(first), middleX - hand * radius * Math.sin(last),
            x -> middleW + hand * radius * Math.cos(angle.applyAsDouble(x)), angle, a -> middleX - hand * radius * Math.sin(a));
    }

    static SectionPart outside(int order, double from, DoubleUnaryOperator height) {
        return new SectionPart(order, from, Double.POSITIVE_INFINITY, height, x -> x, x -> x);
    }

    double height(double distance) {
        return height.applyAsDouble(distance);
    }

    /** A distance between two, at a share of the arc between them. */
    double between(double low, double high, double share) {
        if (share == 0 || share == 1) {
            return share == 0 ? low : high;
        }
        double first = angle.applyAsDouble(low);
        return atAngle.applyAsDouble(first + share * (angle.applyAsDouble(high) - first));
    }
}
