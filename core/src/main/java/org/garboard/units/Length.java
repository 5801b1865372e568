package org.garboard.units;

/**
 * A length as somebody wrote it down.
 *
 * @param metres its size [m]
 * @param leastCount the smallest step of the notation it is written in [m]: an eighth or a sixteenth
 *     of an inch, or one in the last decimal place
 */
public record Length(double metres, double leastCount) implements LengthReading {
}
