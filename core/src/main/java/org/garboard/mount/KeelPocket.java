package org.garboard.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.garboard.craft.Transducer;
import org.garboard.mount.told.BeamAsked;
import org.garboard.mount.told.NeighboursAsked;
import org.garboard.mount.told.RoomAsked;
import org.garboard.mount.told.SkinAsked;
import org.garboard.mount.told.SoundAsked;
import org.garboard.mount.told.SupportAsked;
import org.garboard.mount.water.CavitationAsked;
import org.garboard.mount.water.FlowAsked;

/** In a recess athwart the keel, or so far beside it as the job tells. */
public record KeelPocket() implements Mount {
    /** Part of a millimetre that is rounding of the machine. */
    private static final double WHOLE = 1e-6;
    /** Of laminate inside beyond the floor [m]: our choice, as the taper of a tray that thick. */
    private static final double LANDING = 0.060;

    @Override
    public String words() {
        return "keel pocket";
    }

    @Override
    public Seat seat() {
        return Seat.ATHWART_KEEL;
    }

    /** The floor: the body and its bedding gap all round. */
    @Override
    public Footprint footprint(Installation installation) {
        Transducer transducer = installation.transducer();
        double gap = installation.pocket().gap();
        return new Footprint(transducer.length() + 2 * gap, transducer.width() + 2 * gap,
            transducer.cornerRadius() > 0 ? transducer.cornerRadius() + gap : 0);
    }

    /**
     * Depth of the floor above the keel line [m]: as the job wishes, or the least whole millimetre at which
     * the body's face does not stand proud of the skin at the floor's outer edges.
     *
     * @param rise of the V over the half width [m]
     */
    public double depth(Installation installation, double rise) {
        return installation.pocket().depth().orElse(
            Math.ceil((rise + tilt(installation) + installation.transducer().height()) * 1000 - WHOLE) / 1000);
    }

    /** By how much an end of the floor stands lower than its middle where it is not along the bottom [m]. */
    private double tilt(Installation installation) {
        return installation.pocket().make().floor().tilt(footprint(installation).length());
    }

    /** Walls lean out before the ramps begin. */
    @Override
    public double ramp(Installation installation, double rise) {
        return installation.pocket().make().walls().run(installation.transducer().height())
            + installation.pocket().endRatio() * Math.max(0, faceDepth(installation, rise));
    }

    /** With its ramps. */
    @Override
    public Extent extent(Installation installation, Bed bed) {
        Footprint floor = footprint(installation);
        double reach = floor.length() / 2 + ramp(installation, bed.rise());
        return new Extent(reach, reach, floor.width());
    }

    @Override
    public List<Demand> demands(Installation installation, Surroundings around) {
        Limits limits = installation.limits();
        double height = installation.transducer().height();
        ToDoubleFunction<Bed> lean = installation.pocket().leans() ? Bed::deadrise : bed -> 0;
        List<Demand> demands = new ArrayList<>(List.of(
            lean(installation),
            Demand.atMost("depth lost to the V", limits.of(LimitName.DEPTH_LOST), Bed::rise,
                "The bottom is flat enough across the pocket.",
                "The V is too deep across the pocket: floor, walls and ramps grow too large."),
            Demand.atLeast("wall height beside the body", Limits.wallHeight(height),
                bed -> Math.min(height, depth(installation, bed.rise()) - bed.rise()),
                "The walls hold the body at its outer edges.",
                "The V rises so far that the walls at the outer edges do not hold the body."),
            Demand.atMost("face proud of the skin", limits.of(LimitName.FACE_PROUD),
                bed -> Math.max(0, bed.rise() + tilt(installation) - faceDepth(installation, bed.rise())),
                "The face stays within the skin at its outer edges.",
                "At the depth asked for the face stands proud of the skin at its outer edges."),
            Demand.atMost("straightness of the keel line", limits.of(LimitName.KEEL_STRAIGHTNESS), Bed::keelGap,
                "The keel line runs straight along pocket and ramps.",
                "The keel line bends too much along pocket and ramps."),
            Demand.atMost("slope fore and aft", limits.of(LimitName.SLOPE), Bed::slope,
                "The beam points down fore and aft at rest.",
                "The keel line slopes too much: the beam points ahead or astern."),
            Demand.atLeast("room to the chine", limits.of(LimitName.ROOM_TO_CHINE), Bed::roomToBottomEdge,
                "The pocket lies well inside the outer edge of the bottom.",
                "The pocket comes too near the outer edge of the bottom."),
            CommonDemands.roomToKnuckle(limits), CommonDemands.roomToEnds(limits),
            Demand.atLeast("depth of the face at rest", limits.of(LimitName.IMMERSION),
                bed -> bed.immersion() - Math.max(0, faceDepth(installation, bed.rise()) - bed.rise()),
                "The whole face lies deep enough at rest.",
                "The face lies too near the surface at rest, or above it.")));
        if (Math.abs(installation.pocket().aside()) >= footprint(installation).width() / 2) {
            demands.add(CommonDemands.roomToKeel(limits));
        }
        demands.addAll(SoundAsked.atRest(installation, lean));
        demands.addAll(SkinAsked.ofBoat(installation, around));
        demands.addAll(RoomAsked.demands(around, footprint(installation).widened(LANDING), 2 * height, limits));
        demands.addAll(SupportAsked.demands(around, footprint(installation), limits));
        demands.addAll(FlowAsked.demands(installation, around, footprint(installation).length() / 2, footprint(installation), lean));
        demands.addAll(FlowAsked.flush(installation, around));
        demands.addAll(cavitation(installation, around));
        demands.addAll(BeamAsked.demands(installation, around, bed -> -faceDepth(installation, bed.rise()), lean, Bed::slope));
        demands.addAll(NeighboursAsked.spacing(installation, around, footprint(installation), bed -> -faceDepth(installation, bed.rise()), bed -> 0));
        demands.add(Demand.atMost("air trapped in the recess", limits.of(LimitName.AIR_TRAPPED),
            bed -> Math.max(0, faceDepth(installation, bed.rise()) - bed.rise()), "Air runs out of the recess at its outer edges.",
            "The recess is not filled: air stays in it when she is launched, and when she comes off the plane."));
        return demands;
    }

    /** A level floor looks down; one that leans with the skin as much less as the element leans the other way. */
    private static Demand lean(Installation installation) {
        if (!installation.pocket().leans()) {
            return CommonDemands.leanWhereLevel(installation, "the floor of a pocket lies level");
        }
        double inclination = installation.transducer().elementInclination().radians();
        return Demand.atMost("lean of the element", installation.limits().of(LimitName.LEAN), bed -> bed.deadrise() - inclination,
            "The beam points down athwartships at rest.",
            "Floor and element lean too differently: the beam points off to one side.");
    }

    @Override
    public List<Check> settled(Installation installation, Surroundings around) {
        List<Check> settled = new ArrayList<>(FlowAsked.open(installation, around, OpenQuestion.WET, OpenQuestion.WAKE, OpenQuestion.LAYER, OpenQuestion.CAVITATION));
        settled.addAll(SkinAsked.settled(installation, around));
        settled.add(OpenQuestion.STRUCTURE.check());
        settled.addAll(SupportAsked.open(around));
        return settled;
    }

    @Override
    public int invasiveness() {
        return 5;
    }

    @Override
    public int signalRank() {
        return 1;
    }

    @Override
    public String costs() {
        return "The bottom is cut and rebuilt on the keel line, where it works hardest; structure to be approved.";
    }

    @Override
    public String gains() {
        return "Room for a large face on the keel line, level, in the cleanest water, with no drag of its own.";
    }

    private List<Demand> cavitation(Installation installation, Surroundings around) {
        double ratio = installation.pocket().endRatio();
        List<Demand> demands = new ArrayList<>(CavitationAsked.ofBead(installation, around));
        demands.addAll(ratio > 0 ? CavitationAsked.ofRamp(installation, around, ratio)
            : CavitationAsked.ofRecess(installation, around, bed -> faceDepth(installation, bed.rise())));
        return demands;
    }

    private double faceDepth(Installation installation, double rise) {
        return depth(installation, rise) - installation.transducer().height();
    }
}
