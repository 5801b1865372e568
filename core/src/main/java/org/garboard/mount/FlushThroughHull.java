package org.garboard.mount;

import java.util.ArrayList;
import java.util.List;
import org.garboard.craft.Transducer;
import org.garboard.mount.told.BeamAsked;
import org.garboard.mount.told.NeighboursAsked;
import org.garboard.mount.told.RoomAsked;
import org.garboard.mount.told.SkinAsked;
import org.garboard.mount.told.SoundAsked;
import org.garboard.mount.told.SupportAsked;
import org.garboard.mount.water.CavitationAsked;
import org.garboard.mount.water.FlowAsked;

/** At the skin: the housing flush through the hull, beside the keel. */
public record FlushThroughHull() implements Mount {
    /** Of the block inside beyond the body, each side [m]: as the cutout makes it, our choice. */
    private static final double LANDING = 0.040;

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
        return Footprint.of(installation.transducer());
    }

    @Override
    public List<Demand> demands(Installation installation, Surroundings around) {
        Limits limits = installation.limits();
        Transducer body = installation.transducer();
        double inclination = body.elementInclination().radians();
        List<Demand> demands = new ArrayList<>(List.of(
            Demand.atMost("flatness under the footprint", limits.of(LimitName.FLATNESS), Bed::gap,
                "The bedding takes up what the skin lacks of a plane.",
                "The skin is too round or hollow here for the body to bed on."),
            Demand.atMost("lean of the element", limits.of(LimitName.LEAN), bed -> bed.deadrise() - inclination,
                "The beam points down athwartships at rest.",
                "Deadrise and inclination of the element differ too much: the beam points off to one side."),
            CommonDemands.slope(limits)));
        demands.addAll(CommonDemands.besideKeel(limits));
        demands.addAll(SoundAsked.atRest(installation, Bed::deadrise));
        demands.addAll(SkinAsked.ofHole(installation, around, bed -> installation.backing()));
        demands.addAll(RoomAsked.demands(around, footprint(installation).widened(LANDING), 2 * body.height(), limits));
        demands.addAll(SupportAsked.demands(around, footprint(installation), limits));
        demands.addAll(FlowAsked.demands(installation, around, body.length() / 2, footprint(installation), Bed::deadrise));
        demands.addAll(FlowAsked.flush(installation, around));
        demands.addAll(CavitationAsked.ofBead(installation, around));
        demands.addAll(BeamAsked.demands(installation, around, bed -> 0, Bed::deadrise, Bed::slope));
        demands.addAll(NeighboursAsked.spacing(installation, around, footprint(installation), bed -> 0, Bed::deadrise));
        return demands;
    }

    @Override
    public List<Check> settled(Installation installation, Surroundings around) {
        return CommonDemands.throughSkin(installation, around);
    }

    @Override
    public int invasiveness() {
        return 3;
    }

    @Override
    public int signalRank() {
        return 3;
    }

    @Override
    public String costs() {
        return "A hole of the body's size through the skin, and a block inside.";
    }

    @Override
    public String gains() {
        return "Sound straight into the water, and next to no drag; but the face lies in the slow water next to the skin.";
    }
}
