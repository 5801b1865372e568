package org.garboard.offsets;

import java.util.OptionalInt;

/**
 * Something in a table that cannot be so on any hull this program lofts.
 *
 * @param line index of the table row it is seen in, if one
 * @param station index of the station it is seen at, if one
 * @param reason what stands there, what was expected, what would work
 */
public record TableFault(OptionalInt line, OptionalInt station, String reason) {

    static TableFault inTable(String reason) {
        return new TableFault(OptionalInt.empty(), OptionalInt.empty(), reason);
    }

    static TableFault inLine(int line, String reason) {
        return new TableFault(OptionalInt.of(line), OptionalInt.empty(), reason);
    }

    static TableFault atStation(int station, String reason) {
        return new TableFault(OptionalInt.empty(), OptionalInt.of(station), reason);
    }

    static TableFault inCell(int line, int station, String reason) {
        return new TableFault(OptionalInt.of(line), OptionalInt.of(station), reason);
    }
}
