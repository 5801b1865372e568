package org.garboard.flow.planing;

import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/**
 * The trim at which a prismatic hull begins to porpoise.
 *
 * @see "Savitsky 1964, Fig. 18, read off the printed curves to about 0.3 degrees, straight between the readings"
 */
public final class Porpoising {
    /** sqrt(C_L / 2). */
    private static final double[] LOAD = {.13, .15, .20, .25, .30};
    private static final double[] DEADRISE = {0, 10, 20};
    private static final double[][] TRIM = {
        {1.1, 1.8, 3.8, 6.2, 9.1}, {2.7, 3.3, 4.9, 7.0, 9.5}, {3.4, 4.0, 5.7, 7.9, 10.3}};
    private static final double READING = 0.3;

    private Porpoising() {
    }

    /** Limit of trim [deg]; empty off the curves. */
    static OptionalDouble limit(double load, double deadrise) {
        if (!(load >= LOAD[0] && load <= LOAD[LOAD.length - 1] && deadrise >= 0 && deadrise <= DEADRISE[DEADRISE.length - 1])) {
            return OptionalDouble.empty();
        }
        int row = deadrise < DEADRISE[1] ? 0 : 1;
        double across = (deadrise - DEADRISE[row]) / (DEADRISE[row + 1] - DEADRISE[row]);
        return OptionalDouble.of((1 - across) * along(TRIM[row], load) + across * along(TRIM[row + 1], load));
    }

    private static double along(double[] row, double load) {
        int i = 0;
        while (i < LOAD.length - 2 && load > LOAD[i + 1]) {
            i++;
        }
        double t = (load - LOAD[i]) / (LOAD[i + 1] - LOAD[i]);
        return (1 - t) * row[i] + t * row[i + 1];
    }

    /** What is off the curves; above their last deadrise how she lies to that, as the limit rises with deadrise as far as they go. */
    private static String off(double trim, double load, double deadrise) {
        double last = DEADRISE[DEADRISE.length - 1];
        OptionalDouble there = limit(load, last);
        if (there.isEmpty()) {
            return "load " + FixedDecimal.format(load, 3) + ", root of half the lift coefficient; they are from " + FixedDecimal.format(LOAD[0], 2) + " to "
                + FixedDecimal.format(LOAD[LOAD.length - 1], 2);
        }
        double below = there.getAsDouble() - trim;
        return "deadrise " + FixedDecimal.format(deadrise, 1) + " deg; they end at " + FixedDecimal.format(last, 0) + ", rising with deadrise, and she trims "
            + FixedDecimal.format(Math.abs(below), 1) + " deg " + (below >= 0 ? "below" : "above") + " the last";
    }

    /** What is to be said of a run under the weight that it lifts. */
    public static Optional<String> note(PrismRun run) {
        double b = run.prism().beam();
        Angle deadrise = run.prism().deadrise();
        double load = Math.sqrt(0.5 * run.lift() / (run.stream().pressure() * b * b));
        OptionalDouble limit = limit(load, deadrise.degrees());
        if (limit.isEmpty()) {
            return Optional.of("porpoising not known: off the curves of Savitsky's Fig. 18 (" + off(run.trim().degrees(), load, deadrise.degrees())
                + "); run her at this speed to know");
        }
        return run.trim().degrees() > limit.getAsDouble() - READING
            ? Optional.of("may porpoise: limit of trim about " + FixedDecimal.format(limit.getAsDouble(), 1)
                + " deg (Savitsky 1964, Fig. 18, read to 0.3 deg)") : Optional.empty();
    }
}
