package org.garboard.exchange;

import org.garboard.cutout.PocketDetails;
import org.garboard.exchange.xml.record.Pocket;
import org.garboard.exchange.xml.record.PocketMade;

/** Turns the pocket into the record's bean. */
final class PocketMapping {
    private static final double LITRES_PER_M3 = 1000;

    private PocketMapping() {
    }

    static Pocket toBean(org.garboard.cutout.Pocket pocket) {
        Pocket bean = new Pocket();
        bean.setXM(Decimals.metres(pocket.site().getX()));
        if (pocket.site().getY() != 0) {
            bean.setYM(Decimals.metres(pocket.site().getY()));
        }
        if (pocket.lean() != 0) {
            bean.setLeanDeg(Decimals.degrees(pocket.lean()));
        }
        bean.setZM(Decimals.metres(pocket.site().getZ()));
        bean.setSlopeDeg(Decimals.degrees(pocket.slope()));
        bean.setLengthMm(Decimals.millimetres(pocket.length()));
        bean.setWidthMm(Decimals.millimetres(pocket.width()));
        bean.setCornerRadiusMm(Decimals.millimetres(pocket.cornerRadius()));
        bean.setDepthMm(Decimals.millimetres(pocket.depth()));
        bean.setFaceDepthMm(Decimals.millimetres(pocket.faceDepth()));
        bean.setWallHeightMm(Decimals.millimetres(pocket.wallHeight()));
        bean.setRampRatio(Decimals.fixed(pocket.rampRatio(), 3));
        bean.setForeRampMm(Decimals.millimetres(pocket.foreRamp()));
        bean.setAftRampMm(Decimals.millimetres(pocket.aftRamp()));
        bean.setVolumeLitres(Decimals.fixed(pocket.volume() * LITRES_PER_M3, 6));
        bean.setOpeningAreaM2(Decimals.fixed(pocket.openingArea(), 6));
        bean.setDevelopmentStretchMm(Decimals.millimetres(pocket.developmentStretch()));
        bean.setOpening(Decimals.spaceRing(pocket.opening()));
        bean.setDevelopedOpening(Decimals.flatRing(pocket.developedOpening()));
        bean.setDevelopedPocket(Decimals.flatRing(pocket.developedPocket()));
        if (!pocket.details().hullCut().isEmpty()) {
            bean.setHullCut(Decimals.flatRing(pocket.details().hullCut().flat()));
            bean.setTaperEnd(Decimals.flatRing(pocket.details().taperEnd().flat()));
        }
        bean.setMake(PocketMakeMapping.toBean(pocket.details().make()));
        bean.setMade(made(pocket.details()));
        return bean;
    }

    private static PocketMade made(PocketDetails details) {
        PocketMade bean = new PocketMade();
        bean.getMet().addAll(details.met());
        bean.getNotMade().addAll(details.notMade());
        bean.setGapAtFaceMm(Decimals.millimetres(details.gapAtFace()));
        bean.setLaminateMm(Decimals.millimetres(details.laminate()));
        bean.setSteepestDeg(Decimals.degrees(details.steepest().radians()));
        bean.setShellCutM2(Decimals.fixed(details.shellCut(), 6));
        bean.setVolumeLostLitres(Decimals.fixed(details.volumeLost() * LITRES_PER_M3, 6));
        bean.setTrappedAirMm(Decimals.millimetres(details.trappedAir()));
        bean.setCableHoleMm(Decimals.millimetres(details.cableHole()));
        bean.setLeastDraftDeg(Decimals.degrees(details.leastDraft().radians()));
        bean.setDrains(details.drains());
        bean.setToleranceMm(Decimals.millimetres(details.tolerance()));
        bean.setOutlineOnly(details.outlineOnly());
        return bean;
    }
}
