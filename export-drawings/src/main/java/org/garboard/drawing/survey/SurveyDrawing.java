package org.garboard.drawing.survey;

import java.util.Comparator;
import java.util.List;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.layout.DoesNotFit;
import org.garboard.drawing.sheets.SheetSetter;
import org.garboard.job.RecordedSet;
import org.garboard.survey.LaidFinding;

/** Sets the sheets 6 of a survey. The same input gives the same sheets. */
public final class SurveyDrawing {
    /** How the names of its files begin. */
    public static final String NAME = "sheet-6-survey";

    private SurveyDrawing() {
    }

    /**
     * Views and schedule, on as many pages as they fill.
     *
     * @throws DoesNotFit when the paper is too small
     */
    public static List<Sheet> of(Annotated annotated) {
        return SheetSetter.pages(new SurveyTask(annotated), SurveySheet::new);
    }

    /** Date of issue: of the last finding, or of the set where no finding has one. */
    public static String issued(RecordedSet set, List<LaidFinding> findings) {
        return findings.stream().map(laid -> laid.finding().date()).max(Comparator.naturalOrder()).filter(last -> !last.isEmpty()).orElse(set.drawing().date());
    }

    /** File name of a page without its ending. */
    public static String fileName(int page) {
        return page == 1 ? NAME : NAME + "-" + page;
    }
}
