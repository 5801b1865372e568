package org.garboard.units;

import java.util.Optional;

/** What came of reading a length: the {@link Length}, or the reason why there is none. */
public sealed interface LengthReading permits Length, LengthReading.Unreadable {

    /** The length, if it could be read. */
    default Optional<Length> length() {
        return this instanceof Length length ? Optional.of(length) : Optional.empty();
    }

    /**
     * A text that is no length.
     *
     * @param reason what is wrong and what would work, to follow the quoted text:
     *     {@code has 13 inches; inches go from 0 to 11}
     */
    record Unreadable(String reason) implements LengthReading {
    }
}
