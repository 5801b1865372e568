package org.garboard.hull;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/**
 * Looks for the two fairness weights of least risk, on their decimal logarithms: a coarse net over the
 * whole range, since there may be several hollows, then a pattern search from the net's best, then the mean
 * of the weights around it, each counted by how likely the readings are with it. The mean wanders less from
 * one rounding to the next than the least itself (measured: our choice).
 */
final class FairnessSearch {
    private static final double[] LEAST = {-7, -4};
    private static final double[] MOST = {5, 4};
    private static final double NET = 2;
    private static final double LAST_STEP = 0.25;
    private static final double[][] MOVES = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, -1}, {1, -1}, {-1, 1}};
    private static final int MEAN_REACH = 2;
    /**
     * A stiffness that betters the risk by less than this share of a reading's variance is not asked for by the
     * readings. Left in, it would be paid for with ripples the other way, where the bounds bind. Our choice, small.
     */
    private static final double IDLE = 0.3;
    /** Down to here; below it weights along and across are of one size. */
    private static final double STIFF = 0;

    private final BiFunction<Double, Double, Smoothing> smoothing;
    private final double scatter;
    private final Map<List<Double>, Double> seen = new HashMap<>();

    /** @param scatter standard deviation of a reading [m] */
    FairnessSearch(double scatter, BiFunction<Double, Double, Smoothing> smoothing) {
        this.scatter = scatter;
        this.smoothing = smoothing;
    }

    double[] best() {
        return relaxed(mean(settled(netBest())));
    }

    /** As little stiff along as does as well. */
    private double[] relaxed(double[] from) {
        double most = risk(from) + IDLE * scatter * scatter;
        double[] here = from;
        for (double along = from[0] - NET / 4; along >= STIFF; along -= NET / 4) {
            double[] there = {along, from[1]};
            if (risk(there) > most) {
                break;
            }
            here = there;
        }
        return here;
    }

    private double[] netBest() {
        double[] best = LEAST;
        for (double a = LEAST[0]; a <= MOST[0]; a += NET) {
            for (double b = LEAST[1]; b <= MOST[1]; b += NET) {
                double[] there = {a, b};
                best = risk(there) < risk(best) ? there : best;
            }
        }
        return best;
    }

    private double[] settled(double[] from) {
        double[] here = from;
        for (double step = NET / 2; step >= LAST_STEP; ) {
            double[] better = here;
            for (double[] move : MOVES) {
                double[] there = {here[0] + move[0] * step, here[1] + move[1] * step};
                if (inRange(there) && risk(there) < risk(better)) {
                    better = there;
                }
            }
            if (better == here) {
                step /= 2;
            }
            here = better;
        }
        return here;
    }

    /** Weights counted by exp(-n (risk - least) / (2 scatter^2)). */
    private double[] mean(double[] centre) {
        double least = risk(centre);
        double[] sum = new double[2];
        double total = 0;
        for (int i = -MEAN_REACH; i <= MEAN_REACH; i++) {
            for (int k = -MEAN_REACH; k <= MEAN_REACH; k++) {
                double[] there = {centre[0] + i, centre[1] + k};
                if (inRange(there)) {
                    double share = Math.exp((least - risk(there)) / (2 * scatter * scatter));
                    total += share;
                    sum[0] += share * there[0];
                    sum[1] += share * there[1];
                }
            }
        }
        return new double[] {sum[0] / total, sum[1] / total};
    }

    private static boolean inRange(double[] place) {
        return place[0] >= LEAST[0] && place[0] <= MOST[0] && place[1] >= LEAST[1] && place[1] <= MOST[1];
    }

    private double risk(double[] place) {
        return seen.computeIfAbsent(List.of(place[0], place[1]),
                key -> smoothing.apply(place[0], place[1]).risk(scatter));
    }
}
