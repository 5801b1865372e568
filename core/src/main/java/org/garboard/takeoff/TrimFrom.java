package org.garboard.takeoff;

import java.util.OptionalDouble;

/** By what the trim is known, and so which way the boat's own level runs. */
public sealed interface TrimFrom {

    /**
     * Float marks all lie in one waterline.
     *
     * @param waterline what that is called, "load waterline"
     * @param height of it above base [m]; where it is not told, base is the lowest of the measured keel
     */
    record FloatMarks(String waterline, OptionalDouble height) implements TrimFrom {
    }

    /**
     * The keel is straight between two stations, and base runs along it.
     *
     * @param from index of the forward station
     * @param to index of the after one
     */
    record StraightKeel(int from, int to) implements TrimFrom {
    }
}
