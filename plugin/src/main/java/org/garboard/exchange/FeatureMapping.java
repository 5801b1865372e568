package org.garboard.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Feature;
import org.garboard.craft.FeaturePlace;
import org.garboard.craft.Fitting;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.craft.Strake;
import org.garboard.exchange.xml.job.Features;
import org.garboard.geometry.Quad;
import org.garboard.siting.PlanPoint;

/** Strakes and fittings: from the job's beans, and to the record's. */
final class FeatureMapping {

    private FeatureMapping() {
    }

    static List<Feature> toFeatures(Features list) {
        List<Feature> features = new ArrayList<>();
        for (org.garboard.exchange.xml.job.Feature each : list.getStrakeOrFitting()) {
            features.add(each instanceof org.garboard.exchange.xml.job.Strake strake
                ? strake(strake) : fitting((org.garboard.exchange.xml.job.Fitting) each));
        }
        return features;
    }

    private static Strake strake(org.garboard.exchange.xml.job.Strake bean) {
        return new Strake(bean.getName(), sides(bean), bean.getAt().stream().map(FeatureMapping::place).toList(),
            Lengths.metres(bean.getWidth()), Lengths.metres(bean.getHeight()));
    }

    private static Fitting fitting(org.garboard.exchange.xml.job.Fitting bean) {
        return new Fitting(bean.getName(), Fitting.Type.valueOf(bean.getKind().value().toUpperCase(Locale.ROOT).replace('-', '_')),
            sides(bean), place(bean.getAt()), Lengths.metres(bean.getLength()), Lengths.metres(bean.getWidth()),
            Optional.ofNullable(bean.getStandsOut()).map(Lengths::metres));
    }

    private static Sides sides(org.garboard.exchange.xml.job.Feature bean) {
        return Sides.valueOf(bean.getSide().value().toUpperCase(Locale.ROOT));
    }

    static FeaturePlace place(org.garboard.exchange.xml.job.FeaturePlace bean) {
        boolean fromOrigin = bean.getX() != null;
        boolean level = bean.getY() != null;
        return new FeaturePlace(
            fromOrigin ? FeaturePlace.Datum.AFT_OF_ORIGIN : FeaturePlace.Datum.AHEAD_OF_AFTER_END,
            Lengths.metres(fromOrigin ? bean.getX() : bean.getAheadOfAfterEnd()),
            level ? FeaturePlace.Measure.HALF_BREADTH : FeaturePlace.Measure.GIRTH,
            Lengths.metres(level ? bean.getY() : bean.getGirth()));
    }

    static org.garboard.exchange.xml.record.Features toBean(BottomFeatures features) {
        org.garboard.exchange.xml.record.Features bean = new org.garboard.exchange.xml.record.Features();
        bean.setListed(features.list() == BottomFeatures.FeatureList.GIVEN);
        features.laid().forEach(feature -> bean.getFeature().add(toBean(feature)));
        return bean;
    }

    private static org.garboard.exchange.xml.record.Feature toBean(LaidFeature feature) {
        org.garboard.exchange.xml.record.Feature bean = new org.garboard.exchange.xml.record.Feature();
        bean.setName(feature.name());
        bean.setKind(feature.kind());
        bean.setSide(feature.sides().name().toLowerCase(Locale.ROOT));
        feature.cover().forEach(quad -> bean.getCover().add(Decimals.planRing(corners(quad))));
        return bean;
    }

    private static List<PlanPoint> corners(Quad quad) {
        List<PlanPoint> corners = new ArrayList<>();
        for (int i = 0; i < Quad.CORNERS; i++) {
            corners.add(new PlanPoint(quad.x(i), quad.y(i)));
        }
        return corners;
    }
}
