package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import org.garboard.geometry.KnotVector;
import org.garboard.geometry.SplineGram;

/**
 * The fairest strip through all its points, all stations at once.
 *
 * <p>Of all with the given knots that pass through every point, the one is taken whose third
 * derivatives across jump least at the knots, in units of the table's own spacing (our choice, because it
 * leaves any cubic untouched up to the edges). A small weight on the third derivatives themselves settles
 * what few points leave open, and a smaller one on change along the hull gives a station without points
 * the fullness of its neighbours, at an end that of its one neighbour: never more than what is there.
 */
final class ExactStrip {
    private static final double ACROSS = 1;
    private static final double THIRD_DERIVATIVE = 1e-3;
    private static final double ALONG = 1e-6;
    private static final double SECOND_DERIVATIVE = 1e-8;

    private ExactStrip() {
    }

    /** Poles of w across at each station, edges 0. */
    static double[][] through(Strip strip, KnotVector across) {
        int stations = strip.stations();
        KnotVector along = KnotVector.notAKnot(StationIndex.upTo(stations));
        PoleNet net = PoleNet.withHeldEdges(along, across);
        List<Observation> points = new ArrayList<>();
        int most = 1;
        for (int j = 0; j < stations; j++) {
            for (int p = 0; p < strip.v(j).length; p++) {
                points.add(net.observation(j, strip.v(j)[p], strip.w(j)[p], 1));
            }
            most = Math.max(most, strip.v(j).length + 1);
        }
        double[] solution = ThroughPoints.solve(points, fairness(net, along, across, 1.0 / most),
                net.size(), net.halfWidth());
        double[][] poles = new double[stations][];
        for (int j = 0; j < stations; j++) {
            poles[j] = net.sectionPoles(solution, j);
        }
        return poles;
    }

    /** Along, the unit is a station; across, it is a step. */
    private static double[] fairness(PoleNet net, KnotVector along, KnotVector across, double step) {
        double second = Math.pow(step, 4);
        double third = Math.pow(step, 6);
        double[][] valueAlong = SplineGram.ofDerivative(along, 0);
        double[] band = net.emptyBand();
        net.addProduct(band, ACROSS * third / 36, valueAlong, SplineGram.ofJumps(across));
        net.addProduct(band, THIRD_DERIVATIVE * third, valueAlong, SplineGram.ofDerivative(across, 3));
        net.addProduct(band, SECOND_DERIVATIVE * second, valueAlong, SplineGram.ofDerivative(across, 2));
        net.addProduct(band, ALONG, SplineGram.ofDerivative(along, 1), SplineGram.ofDerivative(across, 0));
        return band;
    }
}
