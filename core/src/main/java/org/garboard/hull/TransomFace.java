package org.garboard.hull;

import org.garboard.geometry.CubicSpline;

/**
 * A transom: its profile on the centreline over height, and how far its sides stand forward of that, as the
 * square of the half-breadth. (Our choice, because a table gives but one figure for the round; a circle's arc
 * of that rise differs from it by less than a fortieth of it where the round is a fifth of the half-breadth.)
 */
public final class TransomFace implements EndFace {
    private static final int LOOKS = 200;
    private static final double MARGIN = 0.1;

    private final CubicSpline profile;
    private final double lowest;
    private final double highest;
    private final double perSquare;
    private final double least;
    private final double most;

    /**
     * @param profile x over height
     * @param perSquare round over the square of the half-breadth at which it is reached [1/m]
     * @param widest half-breadth of the skin's end [m]
     */
    TransomFace(CubicSpline profile, double perSquare, double widest) {
        this.profile = profile;
        this.lowest = profile.knots().start();
        this.highest = profile.knots().end();
        this.perSquare = perSquare;
        double[] reach = profile.reach(LOOKS);
        double low = reach[0];
        double high = reach[1];
        double foremost = low - perSquare * widest * widest;
        // the skin between its lines may swell a little past them, and so a little past the face's own ends
        double margin = MARGIN * (high - foremost);
        this.least = foremost - margin;
        this.most = high + margin;
    }

    /** x on the centreline at a height [m]; below and above its ends it goes on straight. */
    public double profile(double z) {
        double end = Math.min(highest, Math.max(lowest, z));
        return profile.value(end) + (z == end ? 0 : profile.slope(end) * (z - end));
    }

    @Override
    public double x(double y, double z) {
        return profile(z) - perSquare * y * y;
    }

    /** How far it stands forward of its middle for each square of the half-breadth [1/m]. */
    public double roundPerSquare() {
        return perSquare;
    }

    /** dx/dy. */
    public double slopeOut(double y) {
        return -2 * perSquare * y;
    }

    /** dx/dz. */
    public double slopeUp(double z) {
        return profile.slope(Math.min(highest, Math.max(lowest, z)));
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
