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

    /** True when number and unit could both be read. */
    static boolean isWhole(Length length) {
        return length != null && length.getValue() != null && length.getUnit() != null;
    }
}
