package org.garboard.mount;

import org.garboard.finding.Bound;
import org.garboard.units.FixedDecimal;

/**
 * The figure a check is held to.
 *
 * @param value in metres, radians, decibels, beams, knots, or as a share of 1
 * @param measure how it is shown
 * @param source where it comes from
 */
public record Limit(double value, Measure measure, String source) {

    /** What is measured, and how it is shown to people. */
    public enum Measure {
        LENGTH("mm", 1000), ANGLE("deg", 180 / Math.PI), DECIBELS("dB", 1), BEAMS("beams", 1), TIMES("times", 1), KNOTS("kn", 1), SHARE("%", 100);

        private final String unit;
        private final double scale;

        Measure(String unit, double scale) {
            this.unit = unit;
            this.scale = scale;
        }

        public String unit() {
            return unit;
        }

        public double shown(double value) {
            return value * scale;
        }
    }

    static Limit ofMillimetres(double millimetres, String source) {
        return ofMetres(millimetres / 1000, source);
    }

    public static Limit ofMetres(double metres, String source) {
        return new Limit(metres, Measure.LENGTH, source);
    }

    static Limit ofDegrees(double degrees, String source) {
        return new Limit(Math.toRadians(degrees), Measure.ANGLE, source);
    }

    static Limit ofDecibels(double decibels, String source) {
        return new Limit(decibels, Measure.DECIBELS, source);
    }

    static Limit ofBeams(double beams, String source) {
        return new Limit(beams, Measure.BEAMS, source);
    }

    static Limit ofTimes(double times, String source) {
        return new Limit(times, Measure.TIMES, source);
    }

    static Limit ofShare(double share, String source) {
        return new Limit(share, Measure.SHARE, source);
    }

    static Limit ofKnots(double knots, String source) {
        return new Limit(knots, Measure.KNOTS, source);
    }

    /** A rule of another subject. */
    static Limit of(Bound bound) {
        for (Measure measure : Measure.values()) {
            if (measure.unit.equals(bound.unit())) {
                return new Limit(bound.value() / measure.scale, measure, bound.source());
            }
        }
        throw new IllegalArgumentException("no limit is measured in " + bound.unit());
    }

    /** A number in the unit that people see, as it counts here. */
    public double measured(double shown) {
        return shown / measure.scale;
    }

    /** As the job has it instead [metres, radians, decibels, beams or knots]. */
    Limit with(double asked) {
        return new Limit(asked, measure, "from the job; the program's own would be " + FixedDecimal.format(measure.shown(value), 1) + " "
            + measure.unit() + ", " + source);
    }
}
