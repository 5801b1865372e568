package org.garboard.exchange;

import org.garboard.exchange.xml.job.TableFit;
import org.garboard.hull.Fit;

/** The words of {@code garboard-job.xsd} for how a hull is drawn from its table. */
final class FitWords {

    private FitWords() {
    }

    /** @param word null where the job leaves it out */
    static Fit fit(TableFit word) {
        return word == TableFit.EXACT ? Fit.EXACT : Fit.WITHIN_ROUNDING;
    }

    /** The record's word. */
    static Fit fit(String word) {
        return fit(TableFit.fromValue(word));
    }

    static String word(Fit fit) {
        return switch (fit) {
            case WITHIN_ROUNDING -> TableFit.WITHIN_ROUNDING.value();
            case EXACT -> TableFit.EXACT.value();
        };
    }
}
