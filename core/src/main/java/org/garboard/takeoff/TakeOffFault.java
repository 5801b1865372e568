package org.garboard.takeoff;

import java.util.OptionalInt;

/**
 * Something in a take-off by which it cannot be brought into the boat's own frame, or drawn.
 *
 * @param row of the list it is seen in, if one
 * @param reason what stands there, what was expected, what would work
 */
public record TakeOffFault(OptionalInt row, String reason) {

    static TakeOffFault inWhole(String reason) {
        return new TakeOffFault(OptionalInt.empty(), reason);
    }

    static TakeOffFault at(int row, String reason) {
        return new TakeOffFault(OptionalInt.of(row), reason);
    }
}
