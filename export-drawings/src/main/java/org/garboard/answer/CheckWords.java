package org.garboard.answer;

import org.garboard.mount.Check;
import org.garboard.mount.Verdict;
import org.garboard.units.FixedDecimal;

/** A check's figures in words. */
public final class CheckWords {

    private CheckWords() {
    }

    /** "flatness under the footprint (1.2 mm, at most 3.0 mm)". */
    public static String figures(Check check) {
        return switch (check.sense()) {
            case AT_MOST, AT_LEAST -> check.name() + " (" + found(check) + ", " + limit(check) + ")";
            case YES_NO, KNOWN_ONLY -> check.name();
        };
    }

    /** "1.2 mm"; in words where there is no figure. */
    public static String found(Check check) {
        if (!Double.isNaN(check.demand())) {
            return amount(check.demand(), check);
        }
        return switch (check.sense()) {
            case YES_NO -> check.verdict() == Verdict.MET ? "yes" : "no";
            case AT_MOST, AT_LEAST -> check.verdict() == Verdict.MET ? "none near" : "-";
            case KNOWN_ONLY -> "-";
        };
    }

    /** "at most 3.0 mm". */
    public static String limit(Check check) {
        return switch (check.sense()) {
            case AT_MOST -> "at most " + amount(check.limit(), check);
            case AT_LEAST -> "at least " + amount(check.limit(), check);
            case YES_NO -> "yes";
            case KNOWN_ONLY -> "-";
        };
    }

    public static String utilisation(Check check) {
        return Double.isNaN(check.utilisation()) ? "-"
            : Double.isInfinite(check.utilisation()) ? "fails outright" : FixedDecimal.format(check.utilisation(), 2);
    }

    private static String amount(double value, Check check) {
        return FixedDecimal.format(value, 1) + " " + check.unit();
    }
}
