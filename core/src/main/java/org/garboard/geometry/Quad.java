package org.garboard.geometry;

import java.util.Arrays;
import java.util.Locale;

/** A convex figure of four corners in a plane, which may be as narrow as a line. Owns its arrays. */
public final class Quad {
    public static final int CORNERS = 4;

    private final double[] corners;
    private final double lowX;
    private final double highX;
    private final double lowY;
    private final double highY;

    private Quad(double[] corners) {
        this.corners = corners;
        this.lowX = Math.min(Math.min(corners[0], corners[2]), Math.min(corners[4], corners[6]));
        this.highX = Math.max(Math.max(corners[0], corners[2]), Math.max(corners[4], corners[6]));
        this.lowY = Math.min(Math.min(corners[1], corners[3]), Math.min(corners[5], corners[7]));
        this.highY = Math.max(Math.max(corners[1], corners[3]), Math.max(corners[5], corners[7]));
    }

    /** @param corners x and y of each in turn, round the figure either way */
    public static Quad of(double... corners) {
        if (corners.length != 2 * CORNERS) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "a quad has 4 corners, not %d numbers", corners.length));
        }
        return new Quad(corners.clone());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Quad quad && Arrays.equals(corners, quad.corners);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(corners);
    }

    public double x(int corner) {
        return corners[2 * corner];
    }

    public double y(int corner) {
        return corners[2 * corner + 1];
    }

    /** Never more than {@link #gap}, and cheap: between the boxes round the two figures. */
    public double leastGap(double[] other) {
        double x = Math.max(0, Math.max(lowX - most(other, 0), least(other, 0) - highX));
        double y = Math.max(0, Math.max(lowY - most(other, 1), least(other, 1) - highY));
        // not hypot, which is many times dearer and keeps from overflow alone
        return Math.sqrt(x * x + y * y);
    }

    private static double least(double[] a, int at) {
        return Math.min(Math.min(a[at], a[at + 2]), Math.min(a[at + 4], a[at + 6]));
    }

    private static double most(double[] a, int at) {
        return Math.max(Math.max(a[at], a[at + 2]), Math.max(a[at + 4], a[at + 6]));
    }

    /**
     * Distance from another convex figure; 0 where they touch or lie over each other. Allocates nothing.
     *
     * @param other its corners as for {@link #of}
     */
    public double gap(double[] other) {
        if (!isParted(corners, other) && !isParted(other, corners)) {
            return 0;
        }
        return Math.sqrt(Math.min(fromCorners(corners, other), fromCorners(other, corners)));
    }

    /** Whether a side of one figure has the whole of the other beyond it: convex figures that are apart have such a side. */
    private static boolean isParted(double[] one, double[] other) {
        for (int i = 0; i < CORNERS; i++) {
            int j = (i + 1) % CORNERS;
            double nx = one[2 * j + 1] - one[2 * i + 1];
            double ny = one[2 * i] - one[2 * j];
            if (highest(one, nx, ny) < -highest(other, -nx, -ny) || highest(other, nx, ny) < -highest(one, -nx, -ny)) {
                return true;
            }
        }
        return false;
    }

    private static double highest(double[] figure, double nx, double ny) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < CORNERS; i++) {
            highest = Math.max(highest, figure[2 * i] * nx + figure[2 * i + 1] * ny);
        }
        return highest;
    }

    /** Square of the least distance of one figure's corners from the other's sides. */
    private static double fromCorners(double[] one, double[] other) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < CORNERS; i++) {
            for (int k = 0; k < CORNERS; k++) {
                least = Math.min(least, fromSide(one[2 * i], one[2 * i + 1], other, k, (k + 1) % CORNERS));
            }
        }
        return least;
    }

    private static double fromSide(double x, double y, double[] figure, int from, int to) {
        double dx = figure[2 * to] - figure[2 * from];
        double dy = figure[2 * to + 1] - figure[2 * from + 1];
        double square = dx * dx + dy * dy;
        double along = square > 0 ? ((x - figure[2 * from]) * dx + (y - figure[2 * from + 1]) * dy) / square : 0;
        double t = Math.max(0, Math.min(1, along));
        double ex = x - figure[2 * from] - t * dx;
        double ey = y - figure[2 * from + 1] - t * dy;
        return ex * ex + ey * ey;
    }
}
