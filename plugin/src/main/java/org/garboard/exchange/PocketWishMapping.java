package org.garboard.exchange;

import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.exchange.xml.job.Angle;
import org.garboard.exchange.xml.job.Aside;
import org.garboard.exchange.xml.job.Former;
import org.garboard.exchange.xml.job.Length;
import org.garboard.exchange.xml.job.MoldKind;
import org.garboard.exchange.xml.job.Pocket;
import org.garboard.exchange.xml.job.PocketFloor;
import org.garboard.exchange.xml.job.PocketInto;
import org.garboard.exchange.xml.job.PocketLaminate;
import org.garboard.exchange.xml.job.Side;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.Blend;
import org.garboard.mount.pocket.Floor;
import org.garboard.mount.pocket.FormerWish;
import org.garboard.mount.pocket.PocketLayup;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.mount.pocket.Walls;

/** What a job asks of a keel pocket, its defaults filled in; what cannot be made of it is refused where it is made. */
final class PocketWishMapping {
    /** Common practice, no source [m]. */
    private static final double GAP = 0.0025;
    /** Our choice: a mean slope of 7 degrees, which tape and fairing board still follow. */
    private static final double RAMP_RATIO = 8;

    private PocketWishMapping() {
    }

    static PocketWish toWish(Pocket wish) {
        return new PocketWish(wish.getDepth() == null ? OptionalDouble.empty() : OptionalDouble.of(Lengths.metres(wish.getDepth())),
            metres(wish.getGap(), GAP), wish.getRampRatio() == null ? RAMP_RATIO : wish.getRampRatio().doubleValue(), aside(wish.getAside()), make(wish));
    }

    private static double aside(Aside aside) {
        return aside == null ? 0 : aside.getSide() == Side.PORT ? -Lengths.metres(aside) : Lengths.metres(aside);
    }

    private static PocketMake make(Pocket wish) {
        return new PocketMake(walls(wish),
            new Blend(wish.getSideRatio() == null ? Blend.USUAL.sideRatio() : wish.getSideRatio().doubleValue(),
                Optional.ofNullable(wish.getSteepest()).map(angle -> org.garboard.units.Angle.ofDegrees(angle.getValue().doubleValue()))),
            new Floor(wish.getFloor() == PocketFloor.SQUARE_TO_SKIN ? Floor.Lies.SQUARE_TO_SKIN : Floor.Lies.LEVEL_ATHWART,
                angle(wish.getTrailingEdgeLower(), Floor.USUAL.trailingEdgeLower())),
            wish.getInto() == PocketInto.NEW_MOLD ? PocketMake.Into.NEW_MOLD : PocketMake.Into.EXISTING_BOAT,
            wish.getLaminate() == null ? PocketLayup.UNTOLD : layup(wish.getLaminate()),
            wish.getFormer() == null ? FormerWish.USUAL : former(wish.getFormer()),
            Optional.ofNullable(wish.getStructureApprovedBy()).orElse(""), metres(wish.getChordError(), PocketMake.CHORD));
    }

    private static Walls walls(Pocket wish) {
        return new Walls(angle(wish.getDraftAngle(), Walls.USUAL.draft()), metres(wish.getFloorRadius(), Walls.USUAL.floorRadius()),
            metres(wish.getEdgeRadius(), Walls.USUAL.edgeRadius()), Optional.ofNullable(wish.getRebate())
                .map(rebate -> new Walls.Rebate(Lengths.metres(rebate.getWidth()), Lengths.metres(rebate.getDepth()), Optional.ofNullable(rebate.getScrews())
                    .map(screws -> new Walls.Screws(Lengths.metres(screws.getHole()), Lengths.metres(screws.getApart()))))));
    }

    private static PocketLayup layup(PocketLaminate laminate) {
        return new PocketLayup(metres(laminate.getGelcoat(), 0), laminate.getLayer().stream()
            .map(layer -> new PocketLayup.Layer(layer.getName(), Lengths.metres(layer.getThickness()))).toList(),
            laminate.getScarfRatio() == null ? PocketLayup.SCARF : laminate.getScarfRatio().doubleValue(),
            metres(laminate.getTrayGap(), PocketLayup.TRAY_GAP));
    }

    private static FormerWish former(Former former) {
        return new FormerWish(former.getMold() == MoldKind.SPLIT_ON_CENTRELINE ? FormerWish.Mold.SPLIT_ON_CENTRELINE : FormerWish.Mold.ONE_PIECE,
            angle(former.getPull(), FormerWish.USUAL.pull()),
            former.getShrinkagePercent() == null ? FormerWish.SHRINKAGE : former.getShrinkagePercent().doubleValue() / 100,
            metres(former.getRim(), 0));
    }

    private static double metres(Length length, double otherwise) {
        return length == null ? otherwise : Lengths.metres(length);
    }

    private static org.garboard.units.Angle angle(Angle angle, org.garboard.units.Angle otherwise) {
        return angle == null ? otherwise : org.garboard.units.Angle.ofDegrees(angle.getValue().doubleValue());
    }
}
