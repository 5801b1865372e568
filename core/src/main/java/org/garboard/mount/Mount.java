package org.garboard.mount;

import java.util.List;
import org.garboard.craft.Fitting;

/**
 * One way for a transducer to go on or into a bottom: where it may lie, what it covers, and what it
 * demands of the skin. The search and the checks know mounts by these answers alone.
 */
public sealed interface Mount permits TransomMount, InHull, FlushThroughHull, FairedThroughHull, KeelPocket {

    /** All of them, the least invasive first. */
    static List<Mount> all() {
        return EveryMount.ALL;
    }

    /** As it stands on sheets and in tables. */
    String words();

    /** As files call it: "keel-pocket". */
    default String word() {
        return words().replace(' ', '-');
    }

    /** How it lies to the keel line. */
    Seat seat();

    /** What another transducer sees of it: one in the water, unless nothing of it is. */
    default Fitting.Type asFitting() {
        return Fitting.Type.TRANSDUCER;
    }

    /** What must find its bed on the skin. */
    Footprint footprint(Installation installation);

    /** How far its ramps reach along the keel beyond each end of the footprint [m], given the rise of the V [m]. */
    default double ramp(Installation installation, double rise) {
        return 0;
    }

    /**
     * What it covers of the bottom where it is put, and another transducer keeps clear of.
     *
     * @param bed where it was laid
     */
    default Extent extent(Installation installation, Bed bed) {
        return Extent.about(footprint(installation));
    }

    /**
     * How far the lowest of it hangs below the skin at its middle [m]; 0 of what lies in the skin or inside.
     *
     * @param bed where it was laid
     */
    default double hang(Installation installation, Surroundings around, Bed bed) {
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
