package org.garboard.flow.attitude;

import org.garboard.flow.planing.Prism;
import org.garboard.hull.Hull;
import org.garboard.units.Angle;

/**
 * The prism with a bottom's mean beam and mean chord deadrise over a length forward of where the bottom ends. Both are
 * read once at close stations, straight between them, and summed up forward.
 */
final class MeanPrism {
    private static final int CELLS = 256;

    private final VBottom bottom;
    private final double end;
    private final double cell;
    private final double[] beam = new double[CELLS + 1];
    private final double[] deadrise = new double[CELLS + 1];
    private final double[] beamSum = new double[CELLS + 1];
    private final double[] deadriseSum = new double[CELLS + 1];

    MeanPrism(Hull hull, double end) {
        this.bottom = new VBottom(hull);
        this.end = end;
        this.cell = (end - hull.firstSection()) / CELLS;
        for (int i = 0; i <= CELLS; i++) {
            double x = i == CELLS ? hull.firstSection() : end - i * cell;
            beam[i] = bottom.beam(x);
            deadrise[i] = bottom.deadrise(x);
            if (i > 0) {
                beamSum[i] = beamSum[i - 1] + 0.5 * cell * (beam[i - 1] + beam[i]);
                deadriseSum[i] = deadriseSum[i - 1] + 0.5 * cell * (deadrise[i - 1] + deadrise[i]);
            }
        }
    }

    /** @param length forward of the end [m], more than 0 and at most to the forward end of the hull */
    Prism over(double length) {
        return new Prism(sum(length, beam, beamSum) / length, Angle.ofRadians(Math.max(0, sum(length, deadrise, deadriseSum) / length)));
    }

    private double sum(double length, double[] value, double[] sum) {
        int i = Math.min(CELLS - 1, (int) (length / cell));
        double into = length - i * cell;
        return sum[i] + into * (value[i] + 0.5 * into / cell * (value[i + 1] - value[i]));
    }

    /** Angle of the keel's chord to the base line, positive where it rises forward [rad]. */
    double rise(double length) {
        return bottom.rise(end, length);
    }
}
