package org.garboard.drawing.survey;

import java.util.List;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.Paper;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetSubject;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish;
import org.garboard.job.RecordedSet;
import org.garboard.offsets.HullOffsets;
import org.garboard.survey.LaidFinding;

/**
 * What a sheet of findings is drawn from.
 *
 * @param annotated the set, and what was found
 * @param paper it is drawn on, the record's or another that is tried
 * @param lettering of the paper, or smaller
 */
record SurveyTask(Annotated annotated, Paper paper, Lettering lettering) implements SheetSubject<SurveyTask> {

    private static final String STATUS = "SURVEY - findings in the surveyor's words; no leave to cut anything";

    SurveyTask(Annotated annotated) {
        this(annotated, SheetSubject.paper(annotated.set().drawing()),
            Lettering.forPaper(SheetSubject.paper(annotated.set().drawing())));
    }

    @Override
    public SurveyTask on(Paper other) {
        return new SurveyTask(annotated, other, Lettering.forPaper(other));
    }

    @Override
    public SurveyTask lettered(Lettering other) {
        return new SurveyTask(annotated, paper, other);
    }

    RecordedSet set() {
        return annotated.set();
    }

    List<LaidFinding> findings() {
        return annotated.findings();
    }

    Hull hull() {
        return annotated.hull();
    }

    @Override
    public HullOffsets table() {
        return annotated.table();
    }

    @Override
    public Provenance provenance() {
        return annotated.provenance();
    }

    /** As the set was wished, issued on the day of the last finding. */
    @Override
    public DrawingWish drawing() {
        DrawingWish wish = set().drawing();
        String date = SurveyDrawing.issued(set(), findings());
        return new DrawingWish(wish.units(), wish.paper(), wish.orientation(), wish.projection(), wish.number(), wish.owner(), wish.creator(), wish.approver(), date,
            wish.revision(), wish.issues());
    }

    @Override
    public String tableFile() {
        return set().tableFile();
    }

    @Override
    public String boat() {
        return set().named();
    }

    @Override
    public String sheets() {
        return "survey";
    }

    @Override
    public String status() {
        return STATUS;
    }
}
