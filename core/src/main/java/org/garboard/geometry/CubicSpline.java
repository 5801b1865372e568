package org.garboard.geometry;

/** A cubic spline function of one variable, held as B-spline poles. */
public final class CubicSpline {
    private final KnotVector knots;
    private final double[] poles;

    CubicSpline(KnotVector knots, double[] poles) {
        this.knots = knots;
        this.poles = poles;
    }

    /**
     * The spline through every value, not-a-knot at its ends; the polynomial of least degree
     * through two or three values.
     *
     * @param sites at least two, strictly rising
     * @param values as many
     */
    public static CubicSpline through(double[] sites, double[] values) {
        return new SplineSites(sites).through(values);
    }

    public KnotVector knots() {
        return knots;
    }

    public double pole(int i) {
        return poles[i];
    }

    public double value(double t) {
        return derivative(0, t);
    }

    /** Derivative of an order from 0 to 3; beyond the ends the end's cubic goes on. */
    public double derivative(int order, double t) {
        int cell = knots.cell(t);
        double[] basis = new double[16];
        knots.basis(cell, t, basis);
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            sum += basis[order * 4 + i] * poles[cell + i];
        }
        return sum;
    }
}
