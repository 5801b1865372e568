package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.garboard.geometry.KnotVector;
import org.garboard.geometry.SplineGram;

/**
 * Variation of curvature of a spline over station index and across: the square of its third derivatives,
 * thin-plate form, with one weight along and one across. The across unit is a step between points.
 */
final class PanelFairness implements Fairness {
    /** Holds what the points leave open: two stations are joined by straight lines. */
    static final double SECOND_DERIVATIVE = 1e-8;
    static final double VALUE = 1e-10;
    /**
     * How the weight grows from the bow aft, in powers of ten from amidships to an end: hulls bend quicker
     * forward. Our choice, because of what was measured on closed-form bottoms: from 0.3 to 0.9 the deadrise
     * comes out alike, at 0 and beyond 1.5 worse.
     */
    private static final double GROWTH = 0.6;
    private static final int[] BINOMIAL = {1, 3, 3, 1};

    private final int size;
    private final int halfWidth;
    private final double[] base;
    /** Bands of the mixed third derivatives, by how many of the three are across. */
    private final List<double[]> mixed = new ArrayList<>();

    private PanelFairness(int size, int halfWidth, double[] base) {
        this.size = size;
        this.halfWidth = halfWidth;
        this.base = base;
    }

    /** @param step between points across, in units of v */
    static PanelFairness of(PoleNet net, KnotVector along, KnotVector across, double step) {
        List<double[][]> u = derivatives(along, growing(along));
        List<double[][]> v = derivatives(across, t -> 1);
        PanelFairness fairness = new PanelFairness(net.size(), net.halfWidth(), net.emptyBand());
        net.addProduct(fairness.base, SECOND_DERIVATIVE, u.get(2), v.get(0));
        net.addProduct(fairness.base, SECOND_DERIVATIVE * Math.pow(step, 4), u.get(0), v.get(2));
        net.addProduct(fairness.base, VALUE, u.get(0), v.get(0));
        for (int d = 0; d < BINOMIAL.length; d++) {
            double[] band = net.emptyBand();
            net.addProduct(band, BINOMIAL[d] * Math.pow(step, 2 * d), u.get(3 - d), v.get(d));
            fairness.mixed.add(band);
        }
        return fairness;
    }

    /** The weight along the boat, its powers of ten rising evenly from the bow aft. */
    static DoubleUnaryOperator growing(KnotVector along) {
        double length = along.end() - along.start();
        return t -> Math.pow(10, GROWTH * (2 * (t - along.start()) / length - 1));
    }

    private static List<double[][]> derivatives(KnotVector knots, DoubleUnaryOperator weight) {
        List<double[][]> gram = new ArrayList<>();
        for (int order = 0; order <= 3; order++) {
            gram.add(SplineGram.ofDerivative(knots, order, weight));
        }
        return gram;
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public int halfWidth() {
        return halfWidth;
    }

    @Override
    public double[] band(double along, double across) {
        double[] band = base.clone();
        for (int d = 0; d < mixed.size(); d++) {
            double weight = Math.pow(10, ((3 - d) * along + d * across) / 3);
            double[] part = mixed.get(d);
            for (int i = 0; i < band.length; i++) {
                band[i] += weight * part[i];
            }
        }
        return band;
    }
}
