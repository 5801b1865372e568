package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import org.garboard.geometry.KnotVector;

/** The fairest strip within the rounding of its readings, all stations at once. */
final class FairStrip {
    private final Strip strip;
    private final KnotVector along;
    private final KnotVector across;
    private final double leastCount;

    FairStrip(Strip strip, KnotVector across, double leastCount) {
        this.strip = strip;
        this.along = KnotVector.notAKnot(StationIndex.upTo(strip.stations()));
        this.across = across;
        this.leastCount = leastCount;
    }

    /**
     * How far the strip would have its own edges moved square to the straight lines across, so that they
     * run fair with its points: w at the lower and the upper edge of each station.
     *
     * @param lowerReadings {y, z} of the lower line as the table reads
     * @param upperReadings the same of the upper line
     * @param keel whether the lower line is the keel on the centreline, of which only the height is read
     */
    double[][] edges(double[][] lowerReadings, double[][] upperReadings, Keel keel) {
        PoleNet net = PoleNet.withFreeEdges(along, across);
        List<Observation> points = observations(net, new double[strip.stations()][across.size()]);
        for (int j = 0; j < strip.stations(); j++) {
            double lower = strip.off(j, lowerReadings[j][0], lowerReadings[j][1]);
            double upper = strip.off(j, upperReadings[j][0], upperReadings[j][1]);
            points.add(net.observation(j, 0, lower,
                    keel == Keel.ON_CENTRELINE ? strip.heightPerW(j) : strip.scale(j)));
            points.add(net.observation(j, 1, upper, strip.scale(j)));
        }
        double[] solution = new FairFit(points, fairness(net), leastCount).unbounded(points).solution();
        double[][] moved = new double[strip.stations()][];
        for (int j = 0; j < moved.length; j++) {
            double[] poles = net.sectionPoles(solution, j);
            moved[j] = new double[] {poles[0], poles[poles.length - 1]};
        }
        return moved;
    }

    /** What the lower line of a strip is. */
    enum Keel { ON_CENTRELINE, NONE }

    /**
     * Poles of w across at each station, edges 0. Twice: the first time the section's slope is unknown,
     * which says how a reading along or up moves the skin.
     */
    double[][] within() {
        PoleNet net = PoleNet.withHeldEdges(along, across);
        double[][] sections = new double[strip.stations()][across.size()];
        List<Observation> points = observations(net, sections);
        if (points.isEmpty()) {
            return sections;
        }
        FairFit fit = new FairFit(points, fairness(net), leastCount);
        for (int round = 0; round < 2; round++) {
            double[] solution = fit.within(points);
            for (int j = 0; j < sections.length; j++) {
                sections[j] = net.sectionPoles(solution, j);
            }
            points = observations(net, sections);
        }
        return sections;
    }

    private List<Observation> observations(PoleNet net, double[][] sections) {
        List<Observation> points = new ArrayList<>();
        for (int j = 0; j < strip.stations(); j++) {
            for (int p = 0; p < strip.v(j).length; p++) {
                double v = strip.v(j)[p];
                points.add(net.observation(j, v, strip.w(j)[p],
                        strip.readingPerW(j, p, net.slope(sections[j], v))));
            }
        }
        return points;
    }

    private Fairness fairness(PoleNet net) {
        int most = 1;
        for (int j = 0; j < strip.stations(); j++) {
            most = Math.max(most, strip.v(j).length + 1);
        }
        return PanelFairness.of(net, along, across, 1.0 / most);
    }
}
