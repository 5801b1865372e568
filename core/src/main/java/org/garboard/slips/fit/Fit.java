package org.garboard.slips.fit;

import java.util.ArrayList;
import java.util.List;
import org.garboard.geometry.BandedCholesky;

/**
 * Penalised least squares over the readings that are in, and what it says of every cell, in or out. Cells can
 * be left out and taken back one by one.
 *
 * <p>What the others say of a reading that is in follows from its residual e and its leverage h:
 * it stands e / (1 - h) apart, with variance s^2 / (1 - h) (Belsley, Kuh and Welsch 1980, from memory). Leaving a
 * reading out or taking it back changes the inverse by one product of vectors (Sherman and Morrison 1950, from
 * memory).
 */
public final class Fit {
    /** Below this share left to the others they say nothing of a reading. */
    private static final double LEAST_LEFT = 1e-6;

    private final Net net;
    private final Reading[] readings;
    private final boolean[] out;
    private final double scatter;
    private final BandedCholesky factor;
    private final double[] solution;
    /** Changes of the inverse since: a number times the square of a vector each. */
    private final List<double[]> changes = new ArrayList<>();
    private final List<Double> multiples = new ArrayList<>();
    /** By cell: variance of what is given, and written less given; made when first asked for. */
    private double[] variance;
    private double[] residual;

    /**
     * @param readings by cell; null where a cell cannot be seen
     * @param out cells left out
     * @param penalty band, left as it is
     * @param scatter standard deviation of a reading [m]
     */
    public Fit(Net net, Reading[] readings, boolean[] out, double[] penalty, double scatter) {
        this.net = net;
        this.readings = readings;
        this.out = out.clone();
        this.scatter = scatter;
        solution = new double[net.size()];
        double[] band = penalty.clone();
        for (int c = 0; c < readings.length; c++) {
            if (isIn(c)) {
                readings[c].add(net, 1 / (scatter * scatter), band, solution);
            }
        }
        factor = BandedCholesky.factor(band, net.size(), net.halfWidth());
        factor.solve(solution);
    }

    public double[] solution() {
        return solution;
    }

    int cells() {
        return readings.length;
    }

    boolean isIn(int cell) {
        return readings[cell] != null && !out[cell];
    }

    public boolean isSeen(int cell) {
        return readings[cell] != null;
    }

    /** Written less given [m]. */
    public double residual(int cell) {
        return readings[cell].value() - readings[cell].of(net, solution);
    }

    /** A cell that is seen. */
    public Apart apart(int cell) {
        look();
        double rounding = rounding(cell);
        if (out[cell]) {
            return new Apart(residual[cell], Math.sqrt(rounding + variance[cell]));
        }
        double left = Math.max(LEAST_LEFT, 1 - variance[cell] / rounding);
        return new Apart(residual[cell] / left, Math.sqrt(rounding / left));
    }

    private double rounding(int cell) {
        double blunted = scatter * readings[cell].bluntness();
        return blunted * blunted;
    }

    /** A reading that is none of the cells'. */
    public Apart apart(Reading reading) {
        double blunted = scatter * reading.bluntness();
        return new Apart(reading.value() - reading.of(net, solution), Math.sqrt(blunted * blunted + variance(reading)));
    }

    private void look() {
        if (variance == null) {
            variance = new double[readings.length];
            residual = new double[readings.length];
            for (int c = 0; c < readings.length; c++) {
                if (readings[c] != null) {
                    variance[c] = variance(readings[c]);
                    residual[c] = residual(c);
                }
            }
        }
    }

    private double variance(Reading reading) {
        double[] f = new double[net.size()];
        reading.spread(net, 1, f);
        double sum = factor.inverseForm(f, reading.firstUnknown(net));
        for (int m = 0; m < changes.size(); m++) {
            double along = reading.of(net, changes.get(m));
            sum += multiples.get(m) * along * along;
        }
        return sum;
    }

    public void leaveOut(int cell) {
        look();
        change(cell, -1 / rounding(cell), Math.max(LEAST_LEFT, 1 - variance[cell] / rounding(cell)));
        out[cell] = true;
    }

    public void takeBack(int cell) {
        look();
        change(cell, 1 / rounding(cell), 1 + variance[cell] / rounding(cell));
        out[cell] = false;
    }

    /** Adds so much of a reading's square to the matrix. */
    private void change(int cell, double precision, double share) {
        double[] response = new double[net.size()];
        readings[cell].spread(net, 1, response);
        factor.solve(response);
        for (int m = 0; m < changes.size(); m++) {
            double along = multiples.get(m) * readings[cell].of(net, changes.get(m));
            for (int i = 0; i < response.length; i++) {
                response[i] += along * changes.get(m)[i];
            }
        }
        double multiple = -precision / share;
        double push = precision * residual[cell] / share;
        changes.add(response);
        multiples.add(multiple);
        for (int i = 0; i < solution.length; i++) {
            solution[i] += push * response[i];
        }
        for (int c = 0; c < readings.length; c++) {
            if (readings[c] != null) {
                double along = readings[c].of(net, response);
                variance[c] += multiple * along * along;
                residual[c] -= push * along;
            }
        }
    }
}
