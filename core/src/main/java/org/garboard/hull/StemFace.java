package org.garboard.hull;

import org.garboard.geometry.CubicSpline;

/**
 * A stem: its profile over height, square across. Abaft of it is skin. Below the profile's foot it goes on plumb,
 * above its head straight.
 */
public final class StemFace implements EndFace {
    private static final int LOOKS = 400;
    /** So far the cells of the skin reach past the foremost place, as a share of the profile's reach, our choice. */
    private static final double MARGIN = 0.01;

    private final CubicSpline profile;
    private final double lowest;
    private final double highest;
    private final double halfSiding;
    private final double least;
    private final double most;
    private final double foremost;
    private final double first;

    /**
     * @param profile x over height
     * @param halfSiding half-breadth at which the skin ends on it [m]
     * @param first x of the first station [m]
     */
    StemFace(CubicSpline profile, double halfSiding, double first) {
        this.profile = profile;
        this.lowest = profile.knots().start();
        this.highest = profile.knots().end();
        this.halfSiding = halfSiding;
        double[] reach = profile.reach(LOOKS);
        double low = reach[0];
        double high = reach[1];
        double margin = MARGIN * (first - low);
        this.foremost = low;
        this.first = first;
        this.least = low - margin;
        this.most = Math.min(first, high + margin);
    }

    /** x at a height [m]. */
    public double profile(double z) {
        if (z <= lowest) {
            return profile.value(lowest);
        }
        return z <= highest ? profile.value(z) : profile.value(highest) + profile.slope(highest) * (z - highest);
    }

    /** dx/dz. */
    public double slopeUp(double z) {
        return z < lowest ? 0 : profile.slope(Math.min(highest, z));
    }

    @Override
    public double x(double y, double z) {
        return profile(z);
    }

    /** Half-breadth at which the skin ends on it [m]. */
    public double halfSiding() {
        return halfSiding;
    }

    /** Height at which the keel line ends on it [m]. */
    public double foot() {
        return lowest;
    }

    /** Height of its uppermost ending [m]. */
    public double head() {
        return highest;
    }

    /** x of the first station, from which the skin is drawn on to it [m]. */
    public double first() {
        return first;
    }

    /** x of its foremost place [m]. */
    public double foremost() {
        return foremost;
    }

    @Override
    public double least() {
        return least;
    }

    @Override
    public double most() {
        return most;
    }
}
