package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import org.garboard.geometry.KnotVector;

/** One coordinate of a named line, faired over the stations within the rounding of its readings. */
final class FairLine {

    private FairLine() {
    }

    /**
     * @param readings at each station [m]
     * @param leastCount of the table [m]
     * @return faired values at the stations [m]
     */
    static double[] within(double[] readings, double leastCount) {
        KnotVector along = KnotVector.notAKnot(StationIndex.upTo(readings.length));
        List<Observation> points = new ArrayList<>();
        for (int j = 0; j < readings.length; j++) {
            double[] basis = new double[16];
            int cell = along.cell(j);
            along.basis(cell, j, basis);
            points.add(new Observation(new int[] {cell, cell + 1, cell + 2, cell + 3},
                    new double[] {basis[0], basis[1], basis[2], basis[3]}, readings[j], 1));
        }
        double[] solution = new FairFit(points, new LineFairness(along), leastCount).within(points);
        return points.stream().mapToDouble(point -> point.of(solution)).toArray();
    }
}
