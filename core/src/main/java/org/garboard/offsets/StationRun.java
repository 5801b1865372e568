package org.garboard.offsets;

/**
 * Neighbouring stations of a table.
 *
 * @param from index of the first
 * @param to index behind the last
 */
public record StationRun(int from, int to) {
    /** How many there are. */
    public int size() {
        return to - from;
    }
}
