package org.garboard.mount;

import java.util.ArrayList;
import java.util.List;
import org.garboard.mount.told.RoomAsked;
import org.garboard.mount.told.SkinAsked;
import org.garboard.mount.told.SupportAsked;
import org.garboard.mount.water.FlowAsked;

/** Demands that several mounts make alike. */
final class CommonDemands {

    private CommonDemands() {
    }

    static Demand roomToKnuckle(Limits limits) {
        return Demand.atLeast("room to other knuckles", limits.of(LimitName.ROOM_TO_KNUCKLE), Bed::roomToKnuckle,
            "No other knuckle of the bottom is near.",
            "Another knuckle of the bottom is too near, or runs through the footprint.");
    }

    static Demand roomToEnds(Limits limits) {
        return Demand.atLeast("room to the ends of the table", limits.of(LimitName.ROOM_TO_ENDS), Bed::roomToEnds,
            "The transom and the forward end of the table are far enough away.",
            "The transom, or the forward end of the table, is too near.");
    }

    static Demand roomToKeel(Limits limits) {
        return Demand.atLeast("room to the keel line", limits.of(LimitName.ROOM_TO_KEEL), Bed::roomToKeel,
            "The body and its backing clear the keel line.",
            "The body or its backing runs into the keel line.");
    }

    static Demand roomToChine(Limits limits) {
        return Demand.atLeast("room to the chine", limits.of(LimitName.ROOM_TO_CHINE), Bed::roomToBottomEdge,
            "The body lies well inside the outer edge of the bottom.",
            "The body comes too near the outer edge of the bottom.");
    }

    static Demand immersion(Limits limits) {
        return Demand.atLeast("depth of the face at rest", limits.of(LimitName.IMMERSION), Bed::immersion,
            "The whole face lies deep enough at rest.",
            "Part of the face lies too near the surface at rest, or above it.");
    }

    /** Of a body that lies on the skin beside the keel: clear of the bottom's own lines, and deep enough. */
    static List<Demand> besideKeel(Limits limits) {
        return List.of(roomToKeel(limits), roomToChine(limits), roomToKnuckle(limits), roomToEnds(limits), immersion(limits));
    }

    /** What is the same everywhere for a body that goes through the skin, and what nobody told. */
    static List<Check> throughSkin(Installation installation, Surroundings around) {
        List<Check> settled = new ArrayList<>(FlowAsked.open(installation, around, OpenQuestion.WET, OpenQuestion.WAKE, OpenQuestion.LAYER, OpenQuestion.CAVITATION));
        settled.addAll(SkinAsked.settled(installation, around));
        settled.addAll(RoomAsked.open(around));
        settled.addAll(SupportAsked.open(around));
        return settled;
    }

    static Demand slope(Limits limits) {
        return Demand.atMost("slope fore and aft", limits.of(LimitName.SLOPE), Bed::slope,
            "The beam points down fore and aft at rest.",
            "The bottom slopes too much fore and aft: the beam points ahead or astern.");
    }

    /** Of a mount that holds its body level athwartships. */
    static Demand leanWhereLevel(Installation installation, String held) {
        double inclination = installation.transducer().elementInclination().radians();
        return Demand.atMost("lean of the element", installation.limits().of(LimitName.LEAN), bed -> inclination,
            "The beam points down athwartships at rest: " + held + ".",
            "An element that leans in its housing looks off to one side by as much: " + held + ".");
    }
}
