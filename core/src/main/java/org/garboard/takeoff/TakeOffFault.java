package org.garboard.takeoff;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Something in a take-off by which it cannot be brought into the boat's own frame, or drawn.
 *
 * @param row of the list it is seen in, if one
 * @param seen in which of the row's readings, if one
 * @param reason what stands there, what was expected, what would work
 */
public record TakeOffFault(OptionalInt row, Optional<Seen> seen, String reason) {

    static TakeOffFault inWhole(String reason) {
        return new TakeOffFault(OptionalInt.empty(), Optional.empty(), reason);
    }

    static TakeOffFault at(int row, Seen seen, String reason) {
        return new TakeOffFault(OptionalInt.of(row), Optional.of(seen), reason);
    }

    /** In no single reading of its row. */
    static TakeOffFault at(int row, String reason) {
        return new TakeOffFault(OptionalInt.of(row), Optional.empty(), reason);
    }
}
