package org.garboard.mount;

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
 */
public record Check(String name, Sense sense, double demand, double limit, String unit,
                    double utilisation, Verdict verdict, String source, String sentence) {

    /** Which side of the limit is good. */
    public enum Sense { AT_MOST, AT_LEAST, YES_NO, KNOWN_ONLY }

    /** The same in other words. */
    public Check saying(String words) {
        return new Check(name, sense, demand, limit, unit, utilisation, verdict, source, words);
    }
}
