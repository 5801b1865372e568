package org.garboard.drawing.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.garboard.drawing.sheets.Datums;
import org.garboard.drawing.sheets.Figures;
import org.garboard.survey.LaidFinding;
import org.garboard.survey.SurveyPlace;
import org.garboard.survey.SurveyPlace.Side;

/** Where something was found, in words: a station never without its distance from a datum. */
record PlaceOnSheet(Datums datums, Figures figures) {

    String words(LaidFinding laid) {
        SurveyPlace place = laid.finding().place();
        List<String> words = new ArrayList<>();
        if (place.out() instanceof SurveyPlace.InRegion region) {
            words.add(region.name());
        }
        place.along().ifPresent(along -> words.add(along(along, laid.x().orElseThrow())));
        if (place.out() instanceof SurveyPlace.Girth girth) {
            words.add(figures.length(girth.metres()) + " from " + (datums.hull().skinLine() == 0 ? "keel line" : "rabbet") + ", SKIN");
        } else if (place.out() instanceof SurveyPlace.HalfBreadth half) {
            words.add(figures.length(half.metres()) + " off CL, PLAN");
        } else if (place.out() instanceof SurveyPlace.NotTold) {
            words.add("how far out is not told");
        }
        side(place.side()).ifPresent(words::add);
        return String.join("; ", words);
    }

    private String along(SurveyPlace.Along along, double x) {
        if (along instanceof SurveyPlace.AheadOfAfterEnd ahead) {
            return figures.length(ahead.metres()) + " forward of " + datums.afterEnd() + ", PLAN";
        }
        String distance = figures.length(Math.abs(x)) + (x < 0 ? " forward of " : " aft of ") + datums.forward() + ", PLAN";
        return along instanceof SurveyPlace.AtStation station ? "station " + station.name() + ": " + distance : distance;
    }

    private static Optional<String> side(Optional<Side> side) {
        return side.map(each -> each == Side.BOTH ? "both sides" : each.name().toLowerCase(Locale.ROOT));
    }
}
