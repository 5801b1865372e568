package org.garboard.mount;

import java.util.List;

/**
 * One way for a transducer to go on or into a bottom: where it may lie, what it covers, and what it
 * demands of the skin. The search and the checks know mounts by these answers alone.
 */
public sealed interface Mount permits TransomMount, InHull, FlushThroughHull, FairedThroughHull, KeelPocket {

    /** All of them. */
    List<Mount> ALL = List.of(new TransomMount(), new InHull(), new FlushThroughHull(), new FairedThroughHull(), new KeelPocket());

    /** As it stands on sheets and in tables. */
    String words();

    /** As files call it: "keel-pocket". */
    default String word() {
        return words().replace(' ', '-');
    }

    /** How it lies to the keel line. */
    Seat seat();

    /** Where its body is against the outside of the skin. */
    Stands stands();

    /** What must find its bed on the skin. */
    Footprint footprint(Installation installation);

    /** How far its ramps reach along the keel beyond each end of the footprint [m], given the rise of the V [m]. */
    default double ramp(Installation installation, double rise) {
        return 0;
    }

    /** What is asked of each place, in the order of the sheet. */
    List<Demand> demands(Installation installation, Surroundings around);

    /** What is the same for every place: rulings, and what nobody told, NOT KNOWN; in the order of the sheet. */
    List<Check> settled(Installation installation, Surroundings around);

    /** How much it does to the boat: 1 for the least. */
    int invasiveness();

    /** How much of the sound comes through: 1 for the most. */
    int signalRank();

    /** What it costs, a sentence. */
    String costs();

    /** What it gains, a sentence. */
    String gains();
}
