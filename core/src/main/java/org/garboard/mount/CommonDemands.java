package org.garboard.mount;

/** Demands that several mounts make alike. */
final class CommonDemands {

    static final Demand ROOM_TO_KNUCKLE = Demand.atLeast("room to other knuckles", Limits.ROOM_TO_KNUCKLE,
        Bed::roomToKnuckle,
        "No other knuckle of the bottom is near.",
        "Another knuckle of the bottom is too near, or runs through the footprint.");

    static final Demand ROOM_TO_ENDS = Demand.atLeast("room to the ends of the table", Limits.ROOM_TO_ENDS,
        Bed::roomToEnds,
        "The transom and the forward end of the table are far enough away.",
        "The transom, or the forward end of the table, is too near.");

    private CommonDemands() {
    }
}
