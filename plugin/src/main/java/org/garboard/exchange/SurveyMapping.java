package org.garboard.exchange;

import java.util.List;
import org.garboard.exchange.xml.record.Survey;
import org.garboard.exchange.xml.record.SurveySpot;
import org.garboard.survey.LaidFinding;
import org.garboard.survey.Spot;
import org.garboard.survey.SurveyFinding;
import org.garboard.survey.SurveyPlace;

/** Turns a surveyor's findings into the record's beans. */
final class SurveyMapping {

    private SurveyMapping() {
    }

    static Survey toBean(FileHash file, List<LaidFinding> laid, int sheets, String programVersion) {
        Survey bean = new Survey();
        bean.setFindings(RecordMapping.file(file));
        bean.setSheets(sheets);
        bean.setProgramVersion(programVersion);
        laid.forEach(finding -> bean.getFinding().add(finding(finding)));
        return bean;
    }

    private static org.garboard.exchange.xml.record.SurveyFinding finding(LaidFinding laid) {
        SurveyFinding finding = laid.finding();
        org.garboard.exchange.xml.record.SurveyFinding bean = new org.garboard.exchange.xml.record.SurveyFinding();
        bean.setNumber(finding.number());
        bean.setFound(finding.words());
        bean.setSeverity(orNone(finding.severity()));
        bean.setAction(orNone(finding.action()));
        bean.setPhoto(orNone(finding.photo()));
        if (finding.place().out() instanceof SurveyPlace.InRegion region) {
            bean.setRegion(region.name());
        }
        if (!finding.date().isEmpty()) {
            bean.setDate(RecordMapping.date(finding.date()));
        }
        laid.spots().forEach(spot -> bean.getSpot().add(spot(spot)));
        return bean;
    }

    private static String orNone(String text) {
        return text.isEmpty() ? null : text;
    }

    private static SurveySpot spot(Spot spot) {
        SurveySpot bean = new SurveySpot();
        bean.setXM(Decimals.metres(spot.point().getX()));
        bean.setYM(Decimals.metres(spot.point().getY()));
        bean.setZM(Decimals.metres(spot.point().getZ()));
        if (!Double.isNaN(spot.girth())) {
            bean.setGirthM(Decimals.metres(spot.girth()));
        }
        return bean;
    }
}
