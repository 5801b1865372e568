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

    /** @param poles as many as the knots have functions */
    public static CubicSpline ofPoles(KnotVector knots, double... poles) {
        if (poles.length != knots.size()) {
            throw new IllegalArgumentException(poles.length + " poles for " + knots.size() + " functions");
        }
        return new CubicSpline(knots, poles.clone());
    }

    /**
     * The same function with a knot more, by Boehm's insertion (Piegl and Tiller, <i>The NURBS Book</i>, 2nd ed. 1997,
     * eq. 5.15; from memory).
     *
     * @param t strictly between the ends, and no knot
     */
    public CubicSpline withKnot(double t) {
        double[] before = knots.toArray();
        int span = knots.cell(t) + KnotVector.DEGREE;
        double[] more = new double[poles.length + 1];
        for (int i = 0; i < more.length; i++) {
            if (i <= span - KnotVector.DEGREE) {
                more[i] = poles[i];
            } else if (i > span) {
                more[i] = poles[i - 1];
            } else {
                double share = (t - before[i]) / (before[i + KnotVector.DEGREE] - before[i]);
                more[i] = share * poles[i] + (1 - share) * poles[i - 1];
            }
        }
        return new CubicSpline(knots.with(t), more);
    }

    /**
     * The same with its first pole moved: nothing changes but the first cell, and that as the cube of the distance
     * from its far end, by the whole at its start.
     */
    public CubicSpline withStartMoved(double by) {
        double[] moved = poles.clone();
        moved[0] += by;
        return new CubicSpline(knots, moved);
    }

    public KnotVector knots() {
        return knots;
    }

    public double pole(int i) {
        return poles[i];
    }

    public double value(double t) {
        return knots.value(poles, t);
    }

    /** Least and most value at the ends and at so many even places between. */
    public double[] reach(int looks) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= looks; i++) {
            double at = value(i == looks ? knots.end() : knots.start() + (knots.end() - knots.start()) * i / looks);
            low = Math.min(low, at);
            high = Math.max(high, at);
        }
        return new double[] {low, high};
    }

    /** First derivative; beyond the ends the end's cubic goes on. Allocates nothing. */
    public double slope(double t) {
        return knots.slope(poles, t);
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
