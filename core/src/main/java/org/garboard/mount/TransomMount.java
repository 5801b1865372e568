package org.garboard.mount;

import java.util.ArrayList;
import java.util.List;
import org.garboard.mount.told.BeamAsked;
import org.garboard.mount.told.DriveAsked;
import org.garboard.mount.told.NeighboursAsked;
import org.garboard.mount.told.SoundAsked;
import org.garboard.mount.water.FlowAsked;

/**
 * Behind the transom: on a bracket, its face a little below the lower edge of the transom. The bracket sets it level, and it
 * is thrown up by what it hits. Its place is on the transom's lower edge.
 */
public record TransomMount() implements Mount {
    /** How far ahead of the transom a strake's end, tab or fitting still stirs the water that comes to it [m]: our choice. */
    private static final double AHEAD = 0.5;

    @Override
    public String words() {
        return "transom mount";
    }

    @Override
    public Seat seat() {
        return Seat.BEHIND_TRANSOM;
    }

    /** Of the body and what it swings through, on either side of the transom's edge. */
    @Override
    public Footprint footprint(Installation installation) {
        double length = Math.max(AHEAD, installation.transducer().length() + installation.transducer().height());
        return new Footprint(2 * length, installation.transducer().width(), 0);
    }

    /** The body abaft of the transom: the footprint is the water that it asks for. */
    @Override
    public Extent extent(Installation installation, Bed bed) {
        return new Extent(0, installation.transducer().length(), installation.transducer().width());
    }

    /** Its level face hangs below the lowest of the transom's edge over it. */
    @Override
    public double hang(Installation installation, Surroundings around, Bed bed) {
        return installation.drop() + installation.transducer().width() / 2 * Math.abs(Math.tan(bed.deadrise()));
    }

    @Override
    public List<Demand> demands(Installation installation, Surroundings around) {
        Limits limits = installation.limits();
        List<Demand> demands = new ArrayList<>(List.of(
            CommonDemands.leanWhereLevel(installation, "the bracket sets it level"),
            CommonDemands.roomToKeel(limits), CommonDemands.roomToChine(limits), CommonDemands.roomToKnuckle(limits),
            CommonDemands.immersion(limits)));
        demands.addAll(DriveAsked.fromPropeller(installation, around));
        demands.addAll(NeighboursAsked.besideTabs(installation, around));
        demands.addAll(SoundAsked.atRest(installation, bed -> 0));
        Footprint body = Footprint.of(installation.transducer());
        demands.addAll(NeighboursAsked.ownWake(installation, around, body));
        demands.addAll(NeighboursAsked.spacing(installation, around, body, bed -> hang(installation, around, bed), bed -> 0));
        demands.addAll(NeighboursAsked.notLowest(installation, around, bed -> hang(installation, around, bed)));
        demands.addAll(BeamAsked.demands(installation, around, bed -> hang(installation, around, bed), bed -> 0, bed -> 0));
        demands.addAll(FlowAsked.demands(installation, around, 0, footprint(installation), bed -> 0));
        return demands;
    }

    @Override
    public List<Check> settled(Installation installation, Surroundings around) {
        List<Check> settled = new ArrayList<>(FlowAsked.open(installation, around, OpenQuestion.WET, OpenQuestion.WAKE));
        settled.addAll(DriveAsked.settled(around));
        settled.add(OpenQuestion.KICK_UP.check());
        return settled;
    }

    @Override
    public int invasiveness() {
        return 1;
    }

    @Override
    public int signalRank() {
        return 4;
    }

    @Override
    public String costs() {
        return "It hangs in the last of the bottom's water, loses the bottom where the boat jumps or turns, and is knocked up by what it hits.";
    }

    @Override
    public String gains() {
        return "Two screws in the transom and no hole through the bottom; it is moved in minutes.";
    }
}
