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

/** Below the skin: the body in a streamlined block, its face level athwartships, its stem square to the block's cut face. */
public record FairedThroughHull() implements Mount {
    /** Share of the block's length abaft of the body's middle, where it is longest: the widest place lies at three tenths. */
    private static final double AFT = 0.7;

    @Override
    public String words() {
        return "through-hull with fairing block";
    }

    @Override
    public Seat seat() {
        return Seat.BESIDE_KEEL;
    }

    /** As far ahead of the stem as the block reaches abaft of it, so that nothing stands close before its nose. */
    @Override
    public Footprint footprint(Installation installation) {
        BlockSize block = installation.block();
        return new Footprint(2 * AFT * block.length(), block.width(), block.width() / 2);
    }

    /**
     * Of the face below the skin at the stem [m]: as the job wishes; else the least that holds body and low side over the V and
     * brings the face below the slow water, as far as the block stays wider than high.
     */
    public double faceHeight(Installation installation, Surroundings around, Bed bed) {
        BlockSize block = installation.block();
        if (!Double.isNaN(block.height())) {
            return block.height();
        }
        Transducer body = installation.transducer();
        double tangent = Math.abs(Math.tan(bed.deadrise()));
        double least = Math.max(block.lowSide() + block.width() / 2 * tangent, body.height() + block.roof() + body.width() / 2 * tangent);
        double most = block.width() - block.width() / 2 * tangent;
        double clear = FlowAsked.clearHeight(around.water().speeds(), installation.limits(), bed.x(), bed.y());
        return Double.isNaN(clear) ? least : Math.max(least, Math.min(most, clear));
    }

    /** Level at the body's middle, its tail a little lower. */
    @Override
    public double hang(Installation installation, Surroundings around, Bed bed) {
        return faceHeight(installation, around, bed) + installation.block().trailingEdgeLower();
    }

    @Override
    public Extent extent(Installation installation, Bed bed) {
        BlockSize block = installation.block();
        return new Extent(block.ahead(), block.length() - block.ahead(), block.width());
    }

    /** Of the block, where the V leaves it highest [m]. */
    private double highSide(Installation installation, Surroundings around, Bed bed) {
        return faceHeight(installation, around, bed) + installation.block().width() / 2 * Math.abs(Math.tan(bed.deadrise()));
    }

    @Override
    public List<Demand> demands(Installation installation, Surroundings around) {
        Limits limits = installation.limits();
        BlockSize block = installation.block();
        Footprint plan = new Footprint(block.length(), block.width(), 0);
        List<Demand> demands = new ArrayList<>(List.of(
            CommonDemands.leanWhereLevel(installation, "a block sets it level"),
            Demand.atMost("gap to be scribed off", limits.of(LimitName.BLOCK_GAP), Bed::gap,
                "What the skin lacks of a plane is scribed off the block.",
                "The skin is too round or hollow here for a block cut from a plane."),
            Demand.atMost("high side of the block", Limit.ofMetres(block.width(), "our choice, because a block higher than wide sheds a wake of its own"),
                bed -> highSide(installation, around, bed),
                "The block is wider than high.", "The V is so deep that the block would be higher than wide."),
            CommonDemands.slope(limits)));
        demands.addAll(CommonDemands.besideKeel(limits));
        demands.addAll(SoundAsked.atRest(installation, bed -> 0));
        demands.addAll(SkinAsked.ofHole(installation, around, bed -> highSide(installation, around, bed) + installation.backing()));
        demands.addAll(RoomAsked.demands(around, plan, 2 * installation.transducer().height(), limits));
        demands.addAll(SupportAsked.demands(around, footprint(installation), limits));
        demands.addAll(FlowAsked.demands(installation, around, block.length() / 2, plan, bed -> 0));
        demands.addAll(FlowAsked.proud(installation, around, bed -> faceHeight(installation, around, bed)));
        demands.addAll(CavitationAsked.ofBlock(installation, around, bed -> highSide(installation, around, bed)));
        demands.addAll(BeamAsked.demands(installation, around, bed -> faceHeight(installation, around, bed), bed -> 0, bed -> 0));
        demands.addAll(NeighboursAsked.ownWake(installation, around, plan));
        demands.addAll(NeighboursAsked.spacing(installation, around, plan, bed -> faceHeight(installation, around, bed), bed -> 0));
        demands.addAll(NeighboursAsked.notLowest(installation, around, bed -> hang(installation, around, bed)));
        return demands;
    }

    @Override
    public List<Check> settled(Installation installation, Surroundings around) {
        return CommonDemands.throughSkin(installation, around);
    }

    @Override
    public int invasiveness() {
        return 4;
    }

    @Override
    public int signalRank() {
        return 2;
    }

    @Override
    public String costs() {
        return "A hole for the stem, a block to be made and faired, some drag, and a thing that hangs under the bottom.";
    }

    @Override
    public String gains() {
        return "The face hangs level and below the slow water next to the skin.";
    }
}
