package org.garboard.slips.fit;

/**
 * How much quicker a shape may turn in one part of the boat than in another.
 *
 * @param stations yards set stations closer where the shape turns quicker: at 1 a derivative counts as if
 *     taken over the station's number, at 0 over the distance
 * @param bow how much quicker it may turn at the first station than aft, as a power of e
 */
public record Pace(double stations, double bow) {
    static final Pace EVEN = new Pace(0, 0);

    /** Weight of the square of a derivative. */
    double weight(int order, double gap, double forward) {
        return Math.pow(gap, stations * (2 * order - 1)) * Math.exp(-2 * bow * forward * forward);
    }
}
