package org.garboard.mount;

import java.util.List;
import java.util.stream.Stream;
import org.garboard.craft.Transducer;

/** At the skin: the housing flush through the hull, beside the keel. */
public record FlushThroughHull() implements Mount {
    @Override
    public String words() {
        return "flush through-hull";
    }

    @Override
    public Seat seat() {
        return Seat.BESIDE_KEEL;
    }

    @Override
    public Footprint footprint(Installation installation) {
        Transducer transducer = installation.transducer();
        return new Footprint(transducer.length(), transducer.width(), transducer.cornerRadius());
    }

    @Override
    public double ramp(Installation installation, double rise) {
        return 0;
    }

    @Override
    public List<Demand> demands(Installation installation) {
        double inclination = installation.transducer().elementInclination().radians();
        return List.of(
            Demand.atMost("flatness under the footprint", Limits.FLATNESS, Bed::gap,
                "The bedding takes up what the skin lacks of a plane.",
                "The skin is too round or hollow here for the body to bed on."),
            Demand.atMost("lean of the element", Limits.LEAN, bed -> bed.deadrise() - inclination,
                "The beam points down athwartships at rest.",
                "Deadrise and inclination of the element differ too much: the beam points off to one side."),
            Demand.atMost("slope fore and aft", Limits.SLOPE, Bed::slope,
                "The beam points down fore and aft at rest.",
                "The bottom slopes too much fore and aft: the beam points ahead or astern."),
            Demand.atLeast("room to the keel line", Limits.ROOM_TO_KEEL, Bed::roomToKeel,
                "The body and its backing clear the keel line.",
                "The body or its backing runs into the keel line."),
            Demand.atLeast("room to the chine", Limits.ROOM_TO_CHINE, Bed::roomToBottomEdge,
                "The body lies well inside the outer edge of the bottom.",
                "The body comes too near the outer edge of the bottom."),
            CommonDemands.ROOM_TO_KNUCKLE, CommonDemands.ROOM_TO_ENDS,
            Demand.atLeast("depth of the face at rest", Limits.IMMERSION, Bed::immersion,
                "The whole face lies deep enough at rest.",
                "Part of the face lies too near the surface at rest, or above it."));
    }

    @Override
    public List<Check> openQuestions() {
        return Stream.of(OpenQuestion.WET, OpenQuestion.WAKE, OpenQuestion.LAYER, OpenQuestion.CAVITATION,
            OpenQuestion.SKIN, OpenQuestion.ROOM_INSIDE, OpenQuestion.HANDLING)
            .map(OpenQuestion::check).toList();
    }
}
