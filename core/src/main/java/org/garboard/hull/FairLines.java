package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * The named lines faired within their rounding: each by itself first, then once more by what the strips
 * on its two sides would have of it, for their points tell of the line too.
 */
final class FairLines {
    /** Keeps a line from sliding along the skin where its two strips are nearly one; our choice, small. */
    private static final double STAY = 1e-2;

    private final double leastCount;
    private final List<double[][]> readings;

    /** @param readings {y, z} of each line at each station, from the keel outward [m] */
    FairLines(double leastCount, List<double[][]> readings) {
        this.leastCount = leastCount;
        this.readings = readings;
    }

    /** @param strips makes the strips between given lines */
    List<double[][]> with(Function<List<double[][]>, List<Strip>> strips) {
        List<double[][]> lines = readings.stream().map(this::faired).toList();
        return moved(lines, strips.apply(lines));
    }

    private List<double[][]> moved(List<double[][]> lines, List<Strip> between) {
        List<double[][]> wishes = IntStream.range(0, between.size()).parallel()
                .mapToObj(p -> new FairStrip(between.get(p), PanelKnots.across(between.get(p), PanelKnots.GAP_TO_FAIR), leastCount)
                        .edges(readings.get(p), readings.get(p + 1),
                                p == 0 ? FairStrip.Keel.ON_CENTRELINE : FairStrip.Keel.NONE))
                .toList();
        List<double[][]> moved = new ArrayList<>();
        for (int l = 0; l < lines.size(); l++) {
            double[][] line = new double[lines.get(l).length][];
            for (int j = 0; j < line.length; j++) {
                line[j] = moved(l, j, lines.get(l)[j], between, wishes);
            }
            moved.add(line);
        }
        return moved;
    }

    private double[][] faired(double[][] line) {
        double[][] faired = new double[line.length][2];
        for (int coordinate = 0; coordinate < 2; coordinate++) {
            double[] values = new double[line.length];
            for (int j = 0; j < line.length; j++) {
                values[j] = line[j][coordinate];
            }
            double[] fair = FairLine.within(values, leastCount);
            for (int j = 0; j < line.length; j++) {
                faired[j][coordinate] = fair[j];
            }
        }
        return faired;
    }

    /** Least squares of both strips' wishes, each along its own square; the keel only up and down. */
    private double[] moved(int line, int station, double[] from, List<Strip> strips, List<double[][]> wishes) {
        double yy = STAY;
        double yz = 0;
        double zz = STAY;
        double y = 0;
        double z = 0;
        for (int side = 0; side < 2; side++) {
            int p = line - 1 + side;
            if (p < 0 || p >= strips.size()) {
                continue;
            }
            double scale = strips.get(p).scale(station);
            double[] square = strips.get(p).square(station);
            double wish = wishes.get(p)[station][1 - side] * scale;
            double ny = line == 0 ? 0 : square[0] / scale;
            double nz = square[1] / scale;
            yy += ny * ny;
            yz += ny * nz;
            zz += nz * nz;
            y += ny * wish;
            z += nz * wish;
        }
        double determinant = yy * zz - yz * yz;
        double moveY = (zz * y - yz * z) / determinant;
        double moveZ = (yy * z - yz * y) / determinant;
        double[] read = readings.get(line)[station];
        return new double[] {line == 0 ? 0 : bounded(from[0] + moveY, read[0]), bounded(from[1] + moveZ, read[1])};
    }

    private double bounded(double value, double reading) {
        double bound = Rounding.bound(leastCount);
        return Math.min(reading + bound, Math.max(reading - bound, value));
    }
}
