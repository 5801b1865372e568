package org.garboard.exchange;

import jakarta.xml.bind.JAXBElement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.garboard.craft.Sides;
import org.garboard.exchange.xml.job.GaugeReading;
import org.garboard.exchange.xml.job.MeasuredDeadrise;
import org.garboard.exchange.xml.job.Planking;
import org.garboard.exchange.xml.job.Side;
import org.garboard.exchange.xml.job.Skin;
import org.garboard.skin.Layup;
import org.garboard.skin.PlankLine;
import org.garboard.skin.SkinMaterial;
import org.garboard.skin.SurveyedSkin;

/** The skin of a job. */
final class SkinMapping {

    private SkinMapping() {
    }

    static SurveyedSkin toSkin(Skin bean) {
        return new SurveyedSkin(material(bean), Optional.ofNullable(bean.getLayup()).map(SkinMapping::layup),
            bean.getGauge() == null ? List.of() : bean.getGauge().getReading().stream().map(SkinMapping::reading).toList(),
            Optional.ofNullable(bean.getPlanking()).map(SkinMapping::lines),
            bean.getMeasured() == null ? List.of() : bean.getMeasured().getDeadrise().stream().map(SkinMapping::deadrise).toList());
    }

    static SkinMaterial material(Skin bean) {
        return SkinMaterial.valueOf(bean.getMaterial().value().toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    static Layup layup(org.garboard.exchange.xml.job.Layup bean) {
        return bean.getWhole() != null ? new Layup.Whole(Lengths.metres(bean.getWhole()))
            : new Layup.Sandwich(Lengths.metres(bean.getOuterSkin()), Layup.Core.valueOf(bean.getCore().getKind().toUpperCase(Locale.ROOT)),
                Lengths.metres(bean.getCore()), Lengths.metres(bean.getInnerSkin()));
    }

    private static SurveyedSkin.Reading reading(GaugeReading bean) {
        return new SurveyedSkin.Reading(sides(bean.getSide()), FeatureMapping.place(bean.getAt()), Lengths.metres(bean.getThickness()));
    }

    private static List<SurveyedSkin.Line> lines(Planking bean) {
        List<SurveyedSkin.Line> lines = new ArrayList<>();
        for (JAXBElement<org.garboard.exchange.xml.job.PlankLine> each : bean.getSeamOrButtOrFastenings()) {
            lines.add(new SurveyedSkin.Line(PlankLine.Kind.valueOf(each.getName().getLocalPart().toUpperCase(Locale.ROOT)),
                sides(each.getValue().getSide()), each.getValue().getAt().stream().map(FeatureMapping::place).toList()));
        }
        return lines;
    }

    private static SurveyedSkin.Deadrise deadrise(MeasuredDeadrise bean) {
        return new SurveyedSkin.Deadrise(FeatureMapping.place(bean.getAt()),
            Optional.ofNullable(bean.getStarboard()).map(TransducerMapping::angle),
            Optional.ofNullable(bean.getPort()).map(TransducerMapping::angle));
    }

    static Sides sides(Side side) {
        return Sides.valueOf(side.value().toUpperCase(Locale.ROOT));
    }
}
