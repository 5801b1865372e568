package org.garboard.hull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.garboard.geometry.BandedCholesky;
import org.garboard.geometry.KnotVector;

/**
 * The fairest bicubic B-spline panel through its points, all stations and points at once.
 *
 * <p>Unknown is how the poles between the panel's two edges move from straight lines across; the
 * edges are the named lines. Of all
 * surfaces with the given knots that pass through every point, the one is taken whose third
 * derivatives jump least at the knots, along and across, in units of the table's own spacing
 * (our choice, because it leaves any bicubic patch untouched). Jumps along weigh little: the
 * stations' points already fix them, and they are only to give to stations with few points the shape
 * of their neighbours. A smaller weight still on the derivatives themselves decides where the points
 * leave even that open: two stations are joined by straight lines, three by parabolas.
 *
 * <p>The points are held by the method of multipliers (Hestenes 1969, Powell 1969, from memory):
 * a penalised least-squares system, factored once, solved until the residuals vanish.
 */
final class PanelFit {
    private static final double POINT_WEIGHT = 1e4;
    private static final double ACROSS_WEIGHT = 1;
    private static final double ALONG_WEIGHT = 1e-6;
    private static final double THIRD_DERIVATIVE_WEIGHT = 1e-3;
    private static final double SECOND_DERIVATIVE_WEIGHT = 1e-8;
    private static final double RESIDUAL = 1e-12;
    private static final int MOST_ROUNDS = 200;

    private final KnotVector along;
    private final KnotVector across;
    private final int inner;
    private final double[] poles;
    private final List<Row> points = new ArrayList<>();
    private final List<Row> fairness = new ArrayList<>();
    private final double[] basisU = new double[16];
    private final double[] basisV = new double[16];

    /** One linear condition on how the poles move: sum of factors times unknowns = target. */
    private record Row(int[] unknowns, double[] factors, double target, double weight) {
    }

    private PanelFit(KnotVector along, KnotVector across, double[] poles) {
        this.along = along;
        this.across = across;
        this.inner = across.size() - 2;
        this.poles = poles;
    }

    /**
     * Fits one coordinate of a panel.
     *
     * @param x stations [m]
     * @param v parameters of the points of each station, first 0, last 1
     * @param values coordinate of the same points [m]
     * @param lower poles of the lower edge along the length [m]
     * @param upper poles of the upper edge [m]
     * @return poles, {@code [i * across.size() + k]}, i along, k across [m]
     */
    static double[] through(KnotVector along, KnotVector across, double[] x,
                            List<double[]> v, List<double[]> values, double[] lower, double[] upper) {
        PanelFit fit = new PanelFit(along, across, ruled(across, lower, upper));
        fit.takePoints(x, v, values);
        if (fit.points.isEmpty()) {
            return fit.poles;
        }
        fit.askFairness(x, v);
        return fit.solve();
    }

    /** Straight lines from edge to edge: where the fit starts, so that it is exact for ruled panels. */
    private static double[] ruled(KnotVector across, double[] lower, double[] upper) {
        int nv = across.size();
        double[] poles = new double[lower.length * nv];
        for (int i = 0; i < lower.length; i++) {
            for (int k = 0; k < nv; k++) {
                poles[i * nv + k] = lower[i] + across.greville(k) * (upper[i] - lower[i]);
            }
        }
        return poles;
    }

    private void takePoints(double[] x, List<double[]> v, List<double[]> values) {
        for (int j = 0; j < x.length; j++) {
            double[] sites = v.get(j);
            int cellU = along.cell(x[j]);
            along.basis(cellU, x[j], basisU);
            for (int p = 1; p < sites.length - 1; p++) {
                int cellV = across.cell(sites[p]);
                across.basis(cellV, sites[p], basisV);
                points.add(row(cellU, window(basisU, 0), cellV, window(basisV, 0),
                        values.get(j)[p], POINT_WEIGHT));
            }
        }
    }

    private void askFairness(double[] x, List<double[]> v) {
        int most = v.stream().mapToInt(sites -> sites.length).max().orElseThrow();
        double stepV = 1.0 / Math.max(1, most - 1);
        double stepU = (along.end() - along.start()) / (x.length - 1);
        for (double station : x) {
            int cellU = along.cell(station);
            along.basis(cellU, station, basisU);
            double[] here = window(basisU, 0);
            for (int cell = 1; cell < across.cells(); cell++) {
                add(cellU, here, cell - 1, jump(across, cell, stepV), ACROSS_WEIGHT);
            }
            for (int cell = 0; cell < across.cells(); cell++) {
                across.basis(cell, 0.5 * (across.cellStart(cell) + across.cellStart(cell + 1)), basisV);
                add(cellU, here, cell, scaled(basisV, 3, stepV), THIRD_DERIVATIVE_WEIGHT);
                add(cellU, here, cell, scaled(basisV, 2, stepV), SECOND_DERIVATIVE_WEIGHT);
            }
        }
        for (int k = 0; k < across.size(); k++) {
            int cellV = across.cell(across.greville(k));
            across.basis(cellV, across.greville(k), basisV);
            double[] here = window(basisV, 0);
            for (int cell = 1; cell < along.cells(); cell++) {
                add(cell - 1, jump(along, cell, stepU), cellV, here, ALONG_WEIGHT);
            }
            for (int cell = 0; cell < along.cells(); cell++) {
                along.basis(cell, 0.5 * (along.cellStart(cell) + along.cellStart(cell + 1)), basisU);
                add(cell, scaled(basisU, 3, stepU), cellV, here, THIRD_DERIVATIVE_WEIGHT);
                add(cell, scaled(basisU, 2, stepU), cellV, here, SECOND_DERIVATIVE_WEIGHT);
            }
        }
    }

    private void add(int cellU, double[] factorsU, int cellV, double[] factorsV, double weight) {
        fairness.add(row(cellU, factorsU, cellV, factorsV, 0, weight));
    }

    /** Jump of the third derivative where a cell begins, over the five functions that feel it. */
    private static double[] jump(KnotVector knots, int cell, double step) {
        double[] before = new double[16];
        double[] after = new double[16];
        double at = knots.cellStart(cell);
        knots.basis(cell - 1, at, before);
        knots.basis(cell, at, after);
        double scale = step * step * step / 6;
        double[] jump = new double[5];
        for (int i = 0; i < 4; i++) {
            jump[i] -= before[12 + i] * scale;
            jump[i + 1] += after[12 + i] * scale;
        }
        return jump;
    }

    private static double[] window(double[] basis, int order) {
        return Arrays.copyOfRange(basis, order * 4, order * 4 + 4);
    }

    private static double[] scaled(double[] basis, int order, double step) {
        double[] factors = window(basis, order);
        double scale = Math.pow(step, order);
        for (int i = 0; i < factors.length; i++) {
            factors[i] *= scale;
        }
        return factors;
    }

    private Row row(int firstU, double[] factorsU, int firstV, double[] factorsV, double wanted, double weight) {
        int nv = across.size();
        int[] unknowns = new int[factorsU.length * factorsV.length];
        double[] factors = new double[unknowns.length];
        double target = wanted;
        int count = 0;
        for (int i = 0; i < factorsU.length; i++) {
            for (int k = 0; k < factorsV.length; k++) {
                double factor = factorsU[i] * factorsV[k];
                int column = firstV + k;
                target -= factor * poles[(firstU + i) * nv + column];
                if (column > 0 && column < nv - 1) {
                    unknowns[count] = (firstU + i) * inner + column - 1;
                    factors[count++] = factor;
                }
            }
        }
        return new Row(Arrays.copyOf(unknowns, count), Arrays.copyOf(factors, count), target, weight);
    }

    private double[] solve() {
        int n = along.size() * inner;
        int halfWidth = Math.min(n - 1, 4 * inner + 4);
        double[] band = new double[n * (halfWidth + 1)];
        double[] pull = new double[n];
        points.forEach(row -> accumulate(row, band, halfWidth));
        fairness.forEach(row -> accumulate(row, band, halfWidth));
        fairness.forEach(row -> spread(row, row.weight * row.target, pull));
        BandedCholesky factor = BandedCholesky.factor(band, n, halfWidth);
        double[] multipliers = new double[points.size()];
        double[] solution = pull;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            solution = pull.clone();
            for (int p = 0; p < multipliers.length; p++) {
                Row row = points.get(p);
                spread(row, row.weight * (row.target + multipliers[p]), solution);
            }
            factor.solve(solution);
            double worst = 0;
            for (int p = 0; p < multipliers.length; p++) {
                double residual = residual(points.get(p), solution);
                multipliers[p] += residual;
                worst = Math.max(worst, Math.abs(residual));
            }
            if (worst < RESIDUAL) {
                break;
            }
        }
        return moved(solution);
    }

    private static void accumulate(Row row, double[] band, int halfWidth) {
        for (int a = 0; a < row.unknowns.length; a++) {
            int i = row.unknowns[a];
            double scaled = row.weight * row.factors[a];
            for (int b = 0; b < row.unknowns.length; b++) {
                int j = row.unknowns[b];
                if (j <= i) {
                    band[i * (halfWidth + 1) + j - i + halfWidth] += scaled * row.factors[b];
                }
            }
        }
    }

    private static void spread(Row row, double value, double[] into) {
        for (int a = 0; a < row.unknowns.length; a++) {
            into[row.unknowns[a]] += value * row.factors[a];
        }
    }

    private static double residual(Row row, double[] solution) {
        double sum = row.target;
        for (int a = 0; a < row.unknowns.length; a++) {
            sum -= row.factors[a] * solution[row.unknowns[a]];
        }
        return sum;
    }

    private double[] moved(double[] solution) {
        int nv = across.size();
        for (int i = 0; i < along.size(); i++) {
            for (int k = 0; k < inner; k++) {
                poles[i * nv + 1 + k] += solution[i * inner + k];
            }
        }
        return poles;
    }
}
