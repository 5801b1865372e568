package org.garboard.flow.panels;

/** An ellipsoid of semi-axes a, b, c along x, y, z, and the flow about it (Lamb, Hydrodynamics, article 114). */
public final class Ellipsoid {
    private final double[] semi;
    /** 1 + k of each axis, worked out once. */
    private final double[] factors = new double[3];

    public Ellipsoid(double a, double b, double c) {
        this.semi = new double[] {a, b, c};
        for (int axis = 0; axis < factors.length; axis++) {
            factors[axis] = worked(axis);
        }
    }

    /** The quarter to starboard and below, columns along x and rows from keel to water; cosine spacing. */
    public PanelMesh quarter(int columns, int rows) {
        return mesh(columns, rows, Math.PI / 2);
    }

    /** All of it. */
    public PanelMesh whole(int columns, int rows) {
        return mesh(columns, rows, 2 * Math.PI);
    }

    private PanelMesh mesh(int columns, int rows, double round) {
        double[] corners = new double[PanelMesh.CORNERS * columns * rows];
        int at = 0;
        for (int i = 0; i < columns; i++) {
            for (int j = 0; j < rows; j++) {
                int[][] around = {{i, j}, {i, j + 1}, {i + 1, j + 1}, {i + 1, j}};
                for (int[] corner : around) {
                    double theta = Math.PI * corner[0] / columns;
                    double phi = round * corner[1] / rows;
                    double ring = corner[0] == 0 || corner[0] == columns ? 0 : Math.sin(theta);
                    corners[at++] = -semi[0] * Math.cos(theta);
                    corners[at++] = semi[1] * ring * Math.sin(phi);
                    corners[at++] = -semi[2] * ring * Math.cos(phi);
                }
            }
        }
        return new PanelMesh(corners);
    }

    /** Speed on the skin beside a place near it: (1 + k) of the stream, less its part along the normal. */
    public double speed(Stream stream, double x, double y, double z) {
        double[] n = {x / (semi[0] * semi[0]), y / (semi[1] * semi[1]), z / (semi[2] * semi[2])};
        double size = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
        double[] w = {factor(0) * stream.x(), factor(1) * stream.y(), factor(2) * stream.z()};
        double through = (w[0] * n[0] + w[1] * n[1] + w[2] * n[2]) / size;
        return Math.sqrt(Math.max(0, w[0] * w[0] + w[1] * w[1] + w[2] * w[2] - through * through));
    }

    public double greatest(Stream stream) {
        return Math.sqrt(Math.pow(factor(0) * stream.x(), 2) + Math.pow(factor(1) * stream.y(), 2)
            + Math.pow(factor(2) * stream.z(), 2));
    }

    /** 1 + k of an axis. */
    public double factor(int axis) {
        return factors[axis];
    }

    /**
     * 1 + k of an axis: 2 / (2 − α), α = abc ∫ dλ / [(a² + λ) Δ]. With λ = c s² / (1 − s)², s from 0 to 1, the
     * integrand is smooth; Simpson's rule.
     */
    private double worked(int axis) {
        int pieces = 20000;
        double sum = 0;
        for (int i = 0; i <= pieces; i++) {
            double weight = i == 0 || i == pieces ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * integrand(axis, (double) i / pieces);
        }
        double alpha = semi[0] * semi[1] * semi[2] * sum / (3.0 * pieces);
        return 2 / (2 - alpha);
    }

    private double integrand(int axis, double s) {
        if (s == 1) {
            return 0;
        }
        double ratio = s / (1 - s);
        double lambda = ratio * ratio;
        double root = Math.sqrt((semi[0] * semi[0] + lambda) * (semi[1] * semi[1] + lambda) * (semi[2] * semi[2] + lambda));
        return 2 * ratio / ((1 - s) * (1 - s)) / ((semi[axis] * semi[axis] + lambda) * root);
    }
}
