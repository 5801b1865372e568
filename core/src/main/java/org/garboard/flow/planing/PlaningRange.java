package org.garboard.flow.planing;

import java.util.Optional;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/**
 * Where Savitsky's method holds, by the paper: speed coefficient 1 to 13 (0.6 for lift alone), trim 2 to 15
 * degrees, mean wetted length at most 4 beams, chines wet; (3) for any trim and deadrise above a speed
 * coefficient of 2, from 1 to 2 for deadrise up to 10 degrees.
 *
 * <p>From 1 to 2 with more deadrise it is used all the same, and said: the paper's procedure as a whole is
 * stated to hold from 1.
 */
public final class PlaningRange {
    private static final double STEEP = 10;
    private static final double FULL_CV = 2;

    private PlaningRange() {
    }

    /** Why a speed is too low or too high for the method, whatever the load. */
    public static Optional<String> outside(Prism prism, Stream stream) {
        double cv = prism.speedCoefficient(stream);
        if (cv < Savitsky.LEAST_CV) {
            return Optional.of("speed coefficient " + two(cv) + " is below 1, where the planing method begins");
        }
        return cv > Savitsky.MOST_CV
            ? Optional.of("speed coefficient " + two(cv) + " is above 13, where the planing method ends") : Optional.empty();
    }

    /** Why a trim of the keel is too low or too high for the method. */
    public static Optional<String> outside(Angle trim) {
        if (trim.degrees() < Savitsky.LEAST_TRIM) {
            return Optional.of("trim of the keel below 2 deg, where the planing method does not hold");
        }
        return trim.degrees() > Savitsky.MOST_TRIM - 1e-9
            ? Optional.of("trim of the keel 15 deg or more, where the planing method does not hold") : Optional.empty();
    }

    /** Why a run is outside the method. */
    public static Optional<String> outside(PrismRun run) {
        Optional<String> speed = outside(run.prism(), run.stream());
        if (speed.isPresent()) {
            return speed;
        }
        Optional<String> trim = outside(run.trim());
        if (trim.isPresent()) {
            return trim;
        }
        double tau = run.trim().degrees();
        if (!(run.beams() <= Savitsky.MOST_BEAMS)) {
            return Optional.of("more than 4 beams wetted, where the planing method does not hold");
        }
        if (!(run.beams() > Savitsky.driestBeams(tau, run.prism().deadrise().degrees()))) {
            return Optional.of("chines dry: the spray leaves the bottom inside the chines, where the planing method does not hold");
        }
        return Double.isFinite(run.drag()) && Double.isFinite(run.bottomSpeed())
            ? Optional.empty() : Optional.of("so little is wetted that the planing method leaves no speed along the bottom");
    }

    /** Why not even the stagnation line of (3) holds inside dry chines. */
    public static Optional<String> tooSlowForDryChines(Prism prism, Stream stream) {
        double cv = prism.speedCoefficient(stream);
        return cv < FULL_CV && prism.deadrise().degrees() > STEEP
            ? Optional.of("chines dry at a speed coefficient of " + two(cv) + ": below 2 the paper's stagnation line is established up to 10 deg of"
                + " deadrise only") : Optional.empty();
    }

    /** What is to be said of a run within the method. */
    public static Optional<String> doubt(PrismRun run) {
        return run.speedCoefficient() < FULL_CV && run.prism().deadrise().degrees() > STEEP
            ? Optional.of("speed coefficient " + two(run.speedCoefficient()) + ": below 2 the paper's wetted chine length is"
                + " established up to 10 deg of deadrise only") : Optional.empty();
    }

    private static String two(double value) {
        return FixedDecimal.format(value, 2);
    }
}
