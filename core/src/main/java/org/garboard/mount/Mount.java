package org.garboard.mount;

import java.util.List;

/**
 * One way for a transducer to go on or into a bottom: where it may lie, what it covers, and what it
 * demands of the skin. The search and the checks know mounts by these answers alone.
 */
public sealed interface Mount permits FlushThroughHull, KeelPocket {

    /** As it stands on sheets and in tables. */
    String words();

    /** How it lies to the keel line. */
    Seat seat();

    /** What must find its bed on the skin. */
    Footprint footprint(Installation installation);

    /** How far its ramps reach along the keel beyond each end of the footprint [m], given the rise of the V [m]. */
    double ramp(Installation installation, double rise);

    /** What is measured, in the order of the sheet. */
    List<Demand> demands(Installation installation);

    /** What cannot be measured from the table, each NOT KNOWN, in the order of the sheet. */
    List<Check> openQuestions();
}
