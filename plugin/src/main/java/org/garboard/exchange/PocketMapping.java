package org.garboard.exchange;

import org.garboard.exchange.xml.record.Pocket;

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
        return bean;
    }
}
