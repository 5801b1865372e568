package org.garboard.mount;

import java.util.OptionalDouble;
import org.garboard.finding.Figure;
import org.garboard.finding.Finding;
import org.garboard.finding.Ruling;

/**
 * One question asked of one place, and its answer.
 *
 * <p>A yes/no check has neither demand nor limit; its utilisation is 0 or infinite. Otherwise
 * utilisation is demand/limit where the limit is the most that is allowed, limit/demand where
 * it is the least that is required (the demand then being what is available); NaN when the
 * verdict is NOT KNOWN. Demand and limit are in {@code unit}, for people: mm and degrees.
 *
 * @param name a plain name, "flatness under the footprint"
 * @param sense whether the limit is a maximum or a minimum, or the question is a plain yes or no,
 *     or only to be known before cutting
 * @param demand what the place asks for or offers, in {@code unit}; NaN when not known or a yes/no
 * @param limit in {@code unit}; NaN when none applies
 * @param unit "mm", "deg"
 * @param utilisation met when at most 1
 * @param verdict met, not met, or NOT KNOWN
 * @param source where the limit comes from
 * @param sentence the check in words that a boatyard reads
 * @param knots the speed at which it is asked; empty where it is not of one speed
 */
public record Check(String name, Sense sense, double demand, double limit, String unit,
                    double utilisation, Verdict verdict, String source, String sentence, OptionalDouble knots) {

    /** Of a question that is not of one speed. */
    public Check(String name, Sense sense, double demand, double limit, String unit,
                 double utilisation, Verdict verdict, String source, String sentence) {
        this(name, sense, demand, limit, unit, utilisation, verdict, source, sentence, OptionalDouble.empty());
    }

    /** Which side of the limit is good. */
    public enum Sense { AT_MOST, AT_LEAST, YES_NO, KNOWN_ONLY }

    /** A row of the report for what was found at a place. */
    public static Check of(Finding finding) {
        Verdict verdict = switch (finding.answer()) {
            case YES -> Verdict.MET;
            case NO -> Verdict.NOT_MET;
            case NOT_KNOWN -> Verdict.NOT_KNOWN;
        };
        if (finding instanceof Figure figure) {
            return new Check(figure.name(), figure.side() == Figure.Side.AT_MOST ? Sense.AT_MOST : Sense.AT_LEAST,
                Double.isInfinite(figure.value()) ? Double.NaN : figure.value(), figure.bound().value(), figure.bound().unit(),
                figure.utilisation(), verdict, figure.source(), figure.sentence());
        }
        boolean ruled = finding instanceof Ruling;
        return new Check(finding.name(), ruled ? Sense.YES_NO : Sense.KNOWN_ONLY, Double.NaN, Double.NaN, "",
            ruled ? verdict == Verdict.MET ? 0 : Double.POSITIVE_INFINITY : Double.NaN, verdict, finding.source(), finding.sentence());
    }

    /** The same in other words. */
    public Check saying(String words) {
        return new Check(name, sense, demand, limit, unit, utilisation, verdict, source, words, knots);
    }

    /** The same asked at a speed [kn]. */
    public Check at(double speed) {
        return new Check(name, sense, demand, limit, unit, utilisation, verdict, source, sentence, OptionalDouble.of(speed));
    }
}
