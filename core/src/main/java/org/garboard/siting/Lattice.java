package org.garboard.siting;

import org.garboard.mount.Footprint;

/**
 * Where a footprint is sampled: points on its plane, from fore to aft and from inboard to outboard,
 * its edge included. Points that would fall outside a rounded corner lie on the corner's arc; the four
 * corners themselves on the arc's point farthest from the centre.
 * Symmetric about both axes, so the best plane's two slopes do not depend on each other.
 */
final class Lattice {
    /** Sampling of one place [m] (our choice, because waves of the skin shorter than 20 mm are not in a table). */
    private static final double FINE_SPACING = 0.010;
    private static final int FINE_LEAST = 9;
    private static final int FINE_MOST = 41;

    private final int rows;
    private final int columns;
    private final int roomStride;
    private final double[] aft;
    private final double[] outboard;
    private final double aftSquares;
    private final double outboardSquares;
    private final Footprint footprint;

    private Lattice(Footprint footprint, int rows, int columns, int roomStride) {
        this.footprint = footprint;
        this.rows = rows;
        this.columns = columns;
        this.roomStride = roomStride;
        this.aft = new double[rows * columns];
        this.outboard = new double[rows * columns];
        double aftSum = 0;
        double outboardSum = 0;
        for (int k = 0; k < aft.length; k++) {
            place(k);
            aftSum += aft[k] * aft[k];
            outboardSum += outboard[k] * outboard[k];
        }
        this.aftSquares = aftSum;
        this.outboardSquares = outboardSum;
    }

    /**
     * For the search of the whole bottom: on twisted skin its flatness lies within a hundredth of what the
     * fine lattice finds.
     */
    static Lattice coarse(Footprint footprint) {
        return new Lattice(footprint, 7, 5, 3);
    }

    /** For the checks of one place. */
    static Lattice fine(Footprint footprint) {
        return new Lattice(footprint, count(footprint.length()), count(footprint.width()), 1);
    }

    private static int count(double side) {
        int intervals = 2 * (int) Math.ceil(side / 2 / FINE_SPACING - 1e-9);
        return Math.max(FINE_LEAST, Math.min(FINE_MOST, intervals + 1));
    }

    private void place(int k) {
        double length = footprint.length() / 2;
        double width = footprint.width() / 2;
        double radius = footprint.cornerRadius();
        double s = length * (2.0 * (k / columns) / (rows - 1) - 1);
        double r = width * (2.0 * (k % columns) / (columns - 1) - 1);
        double beyondAft = Math.abs(s) - (length - radius);
        double beyondOut = Math.abs(r) - (width - radius);
        double reach = Math.hypot(beyondAft, beyondOut);
        if (beyondAft > 0 && beyondOut > 0 && reach > radius) {
            boolean corner = k / columns % (rows - 1) == 0 && k % columns % (columns - 1) == 0;
            double pullAft = corner && length + width > 2 * radius ? length - radius : beyondAft;
            double pullOut = corner && length + width > 2 * radius ? width - radius : beyondOut;
            double pull = radius / Math.hypot(pullAft, pullOut);
            s = Math.copySign(length - radius + pullAft * pull, s);
            r = Math.copySign(width - radius + pullOut * pull, r);
        }
        aft[k] = s;
        outboard[k] = r;
    }

    int rows() {
        return rows;
    }

    int columns() {
        return columns;
    }

    /** Every which row is taken for the rooms beside the footprint, first and last among them. */
    int roomStride() {
        return roomStride;
    }

    int size() {
        return aft.length;
    }

    double halfLength() {
        return footprint.length() / 2;
    }

    double halfWidth() {
        return footprint.width() / 2;
    }

    /** Distance of point k aft of the centre, in the footprint's plane [m]. */
    double aft(int k) {
        return aft[k];
    }

    /** Distance of point k outboard of the centre, in the footprint's plane [m]. */
    double outboard(int k) {
        return outboard[k];
    }

    /** Sum of the squares of {@link #aft} [m2]. */
    double aftSquares() {
        return aftSquares;
    }

    double outboardSquares() {
        return outboardSquares;
    }
}
