package org.garboard.exchange;

import org.garboard.exchange.xml.record.PocketFloorLies;
import org.garboard.exchange.xml.record.PocketGoesInto;
import org.garboard.exchange.xml.record.PocketMake;
import org.garboard.exchange.xml.record.PocketMold;
import org.garboard.mount.pocket.Floor;
import org.garboard.mount.pocket.FormerWish;
import org.garboard.mount.pocket.PocketLayup;
import org.garboard.mount.pocket.PocketMake.Into;
import org.garboard.mount.pocket.Walls;

/** Turns how a pocket is to be made into the record's bean. */
final class PocketMakeMapping {

    private PocketMakeMapping() {
    }

    static PocketMake toBean(org.garboard.mount.pocket.PocketMake make) {
        PocketMake bean = new PocketMake();
        bean.setInto(make.into() == Into.NEW_MOLD ? PocketGoesInto.NEW_MOLD : PocketGoesInto.EXISTING_BOAT);
        walls(make.walls(), bean);
        bean.setSideRatio(Decimals.fixed(make.blend().sideRatio(), 3));
        make.blend().steepest().ifPresent(steepest -> bean.setSteepestAskedDeg(Decimals.degrees(steepest.radians())));
        bean.setFloor(make.floor().lies() == Floor.Lies.SQUARE_TO_SKIN ? PocketFloorLies.SQUARE_TO_SKIN : PocketFloorLies.LEVEL_ATHWART);
        bean.setTrailingEdgeLowerDeg(Decimals.degrees(make.floor().trailingEdgeLower().radians()));
        layup(make.layup(), bean);
        former(make.former(), bean);
        if (!make.approvedBy().isEmpty()) {
            bean.setStructureApprovedBy(make.approvedBy());
        }
        bean.setChordErrorMm(Decimals.millimetres(make.chord()));
        return bean;
    }

    private static void walls(Walls walls, PocketMake bean) {
        bean.setDraftDeg(Decimals.degrees(walls.draft().radians()));
        bean.setFloorRadiusMm(Decimals.millimetres(walls.floorRadius()));
        bean.setEdgeRadiusMm(Decimals.millimetres(walls.edgeRadius()));
        walls.rebate().ifPresent(rebate -> {
            bean.setRebateWidthMm(Decimals.millimetres(rebate.width()));
            bean.setRebateDepthMm(Decimals.millimetres(rebate.depth()));
            rebate.screws().ifPresent(screws -> {
                bean.setScrewHoleMm(Decimals.millimetres(screws.hole()));
                bean.setScrewsApartMm(Decimals.millimetres(screws.apart()));
            });
        });
    }

    private static void layup(PocketLayup layup, PocketMake bean) {
        bean.setGelcoatMm(Decimals.millimetres(layup.gelcoat()));
        bean.setScarfRatio(Decimals.fixed(layup.scarf(), 3));
        bean.setTrayGapMm(Decimals.millimetres(layup.trayGap()));
        for (PocketLayup.Layer layer : layup.layers()) {
            PocketMake.Layer told = new PocketMake.Layer();
            told.setName(layer.name());
            told.setThicknessMm(Decimals.millimetres(layer.thickness()));
            bean.getLayer().add(told);
        }
    }

    private static void former(FormerWish former, PocketMake bean) {
        bean.setMold(former.mold() == FormerWish.Mold.SPLIT_ON_CENTRELINE ? PocketMold.SPLIT_ON_CENTRELINE : PocketMold.ONE_PIECE);
        bean.setPullDeg(Decimals.degrees(former.pull().radians()));
        bean.setShrinkagePercent(Decimals.fixed(100 * former.shrinkage(), 3));
        bean.setRimMm(Decimals.millimetres(former.flange()));
    }
}
