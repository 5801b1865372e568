package org.garboard.exchange;

import org.garboard.exchange.xml.job.Length;
import org.garboard.units.LengthUnit;

/** Lengths of a job file in metres. */
final class Lengths {

    private Lengths() {
    }

    /** The length [m], rounded once from the decimals that stand in the file. */
    static double metres(Length length) {
        return LengthUnit.ofSymbol(length.getUnit().value()).orElseThrow().toMetres(length.getValue());
    }

    /** "2.5 in". */
    static String asWritten(Length length) {
        return length.getValue().toPlainString() + " " + length.getUnit().value();
    }

    /** True when number and unit could both be read. */
    static boolean isWhole(Length length) {
        return length != null && length.getValue() != null && length.getUnit() != null;
    }
}
