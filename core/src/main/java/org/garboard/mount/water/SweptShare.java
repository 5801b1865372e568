package org.garboard.mount.water;

import org.garboard.flow.streams.StreamPoint;
import org.garboard.flow.streams.Streamline;
import org.garboard.flow.streams.SweepDown;

/** Which share of the upper water at the bow passes near a place. Owns its arrays. */
final class SweptShare {
    private final double[][] x;
    private final double[][] y;
    private final double[][] z;
    private final double within;

    private SweptShare(SweepDown sweep, double within) {
        int lines = sweep.lines().size();
        this.x = new double[lines][];
        this.y = new double[lines][];
        this.z = new double[lines][];
        this.within = within;
        for (int i = 0; i < lines; i++) {
            Streamline line = sweep.lines().get(i);
            x[i] = line.points().stream().mapToDouble(StreamPoint::x).toArray();
            y[i] = line.points().stream().mapToDouble(StreamPoint::y).toArray();
            z[i] = line.points().stream().mapToDouble(StreamPoint::z).toArray();
        }
    }

    /** @param within so far from a place a line passes near it [m] */
    static SweptShare of(SweepDown sweep, double within) {
        return new SweptShare(sweep, within);
    }

    /** 0 to 1; either side has its own water. */
    double at(double px, double py, double pz) {
        double side = Math.abs(py);
        int near = 0;
        for (int line = 0; line < x.length; line++) {
            near += passes(line, px, side, pz) ? 1 : 0;
        }
        return (double) near / x.length;
    }

    /** Lines run aft: only what lies between two points on either side of the place can be near. */
    private boolean passes(int line, double px, double py, double pz) {
        double[] along = x[line];
        int low = 0;
        int high = along.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (along[middle] < px - within) {
                low = middle;
            } else {
                high = middle;
            }
        }
        for (int i = low; i + 1 < along.length && along[i] <= px + within; i++) {
            if (squareFrom(line, i, px, py, pz) <= within * within) {
                return true;
            }
        }
        return false;
    }

    private double squareFrom(int line, int i, double px, double py, double pz) {
        double dx = x[line][i + 1] - x[line][i];
        double dy = y[line][i + 1] - y[line][i];
        double dz = z[line][i + 1] - z[line][i];
        double square = dx * dx + dy * dy + dz * dz;
        double along = square > 0 ? ((px - x[line][i]) * dx + (py - y[line][i]) * dy + (pz - z[line][i]) * dz) / square : 0;
        double t = Math.max(0, Math.min(1, along));
        double ex = px - x[line][i] - t * dx;
        double ey = py - y[line][i] - t * dy;
        double ez = pz - z[line][i] - t * dz;
        return ex * ex + ey * ey + ez * ez;
    }
}
