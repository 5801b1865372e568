package org.garboard.takeoff;

import java.util.Optional;
import org.garboard.offsets.LineKind;

/**
 * What a measured point is called. Points of one name at one station, one to port and one to starboard, are a pair.
 *
 * @param line the line of the hull that it lies on, if it lies on one
 * @param name as the list has it, empty for a point without mark
 */
public record Mark(Optional<LineKind> line, String name) {
    public static final Mark NONE = new Mark(Optional.empty(), "");

    /** Whether the point lies on the skin: not on a keel below it, nor on a strake. */
    boolean isOnSkin() {
        return !is(LineKind.KEEL_BOTTOM) && !isOnStrake();
    }

    boolean isOnStrake() {
        return is(LineKind.STRAKE_INNER) || is(LineKind.STRAKE_OUTER);
    }

    boolean is(LineKind kind) {
        return line.isPresent() && line.get() == kind;
    }
}
