package org.garboard.mount;

import java.util.ArrayList;
import java.util.List;
import org.garboard.craft.Fitting;
import org.garboard.craft.TransducerDetails;
import org.garboard.mount.told.BeamAsked;
import org.garboard.mount.told.NeighboursAsked;
import org.garboard.mount.told.RoomAsked;
import org.garboard.mount.told.SkinAsked;
import org.garboard.mount.told.SoundAsked;
import org.garboard.mount.water.FlowAsked;

/** Inside: the element stands plumb in a bath that is bonded to solid skin, and sends through it. Nothing is cut. */
public record InHull() implements Mount {
    /** Wall and flange of the bath beyond the body, each side [m]: our choice. */
    public static final double BATH = 0.025;

    @Override
    public String words() {
        return "in-hull";
    }

    @Override
    public Seat seat() {
        return Seat.BESIDE_KEEL;
    }

    @Override
    public Fitting.Type asFitting() {
        return Fitting.Type.IN_HULL_TRANSDUCER;
    }

    /** The bath. */
    @Override
    public Footprint footprint(Installation installation) {
        return Footprint.of(installation.transducer()).widened(BATH);
    }

    @Override
    public List<Demand> demands(Installation installation, Surroundings around) {
        Limits limits = installation.limits();
        List<Demand> demands = new ArrayList<>(List.of(CommonDemands.leanWhereLevel(installation, "it stands plumb in its bath")));
        demands.addAll(CommonDemands.besideKeel(limits));
        demands.addAll(SoundAsked.throughSkin(installation, around));
        demands.addAll(SkinAsked.ofBoat(installation, around));
        demands.addAll(RoomAsked.demands(around, footprint(installation), 2 * installation.transducer().height(), limits));
        demands.addAll(BeamAsked.demands(installation, around, bed -> 0, bed -> 0, bed -> 0));
        demands.addAll(NeighboursAsked.spacing(installation, around, footprint(installation), bed -> 0, bed -> 0));
        demands.addAll(FlowAsked.demands(installation.with(TransducerDetails.UNTOLD), around, footprint(installation).length() / 2,
            footprint(installation), bed -> 0));
        return demands;
    }

    @Override
    public List<Check> settled(Installation installation, Surroundings around) {
        List<Check> settled = new ArrayList<>(FlowAsked.open(installation, around, OpenQuestion.WET, OpenQuestion.WAKE));
        settled.addAll(SoundAsked.settledInHull(installation, around));
        settled.addAll(RoomAsked.open(around));
        return settled;
    }

    @Override
    public int invasiveness() {
        return 2;
    }

    @Override
    public int signalRank() {
        return 5;
    }

    @Override
    public String costs() {
        return "Sound is lost in the skin both ways, and warmth of the water is not read.";
    }

    @Override
    public String gains() {
        return "No hole, no drag, nothing outside; it can be moved until it works.";
    }
}
