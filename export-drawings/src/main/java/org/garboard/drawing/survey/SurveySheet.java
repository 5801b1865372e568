package org.garboard.drawing.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.drawing.Scale;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Notes;
import org.garboard.drawing.layout.Piece;
import org.garboard.drawing.layout.Piece.Corner;
import org.garboard.drawing.sheets.Cautions;
import org.garboard.drawing.sheets.Columns;
import org.garboard.drawing.sheets.Datums;
import org.garboard.drawing.sheets.WholeHull;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish;
import org.garboard.job.RecordedSiting;
import org.garboard.survey.LaidFinding;
import org.garboard.survey.SurveyFinding;

/** Sheet 6: profile, bottom plan and sections with numbered findings, and their schedule, which runs on to further pages. */
final class SurveySheet implements WholeHull {
    private static final List<Corner> BELOW = List.of(Corner.BOTTOM_LEFT, Corner.TOP_LEFT, Corner.TOP_RIGHT, Corner.BOTTOM_RIGHT);
    private static final List<Corner> BESIDE = List.of(Corner.BOTTOM_RIGHT, Corner.TOP_RIGHT, Corner.BOTTOM_LEFT, Corner.TOP_LEFT);
    /** A hull with balloons on it is drawn at least this part of the paper's width long, or else the schedule goes on elsewhere; our choice. */
    private static final double SHARE = 0.36;

    private final SurveyTask task;
    private final List<Piece> words = new ArrayList<>();
    private Scale drawnAt;
    private Views drawn;

    /** What is drawn at one scale. */
    private record Views(View profile, View plan, Optional<View> sections) {
    }

    SurveySheet(SurveyTask task) {
        this.task = task;
        words.add(Columns.piece("SCHEDULE OF FINDINGS", schedule(), task.lettering(), BELOW));
        words.add(Cautions.of(task.table()).piece(task.lettering(), BESIDE));
        words.add(notes().piece(task.lettering(), BESIDE));
    }

    @Override
    public int number() {
        return 6;
    }

    @Override
    public String title() {
        return "Survey findings";
    }

    @Override
    public String documentType() {
        return "Survey drawing";
    }

    @Override
    public String description() {
        return "Profile and bottom plan seen from below with bow to the right and starboard up, sections looking forward; a surveyor's findings in numbered balloons, "
            + "and their schedule.";
    }

    @Override
    public Hull hull() {
        return task.hull();
    }

    @Override
    public double shortestDrawn() {
        return Math.max(SHORTEST, SHARE * task.paper().width());
    }

    @Override
    public List<Piece> onEveryPage() {
        return List.of(Cautions.brief().piece(task.lettering(), BESIDE));
    }

    @Override
    public List<List<Piece>> arrangements(Scale scale) {
        boolean firstAngle = task.drawing().projection() == DrawingWish.Projection.FIRST_ANGLE;
        Views views = views(scale);
        return List.of(pieces(List.of(Cluster.inLine(firstAngle ? views.plan() : views.profile(), firstAngle ? views.profile() : views.plan(),
            task.lettering().gap())), views.sections()));
    }

    @Override
    public List<List<Piece>> runningOn(Scale scale) {
        List<List<Piece>> arrangements = new ArrayList<>(arrangements(scale));
        Views views = views(scale);
        arrangements.add(pieces(List.of(Cluster.of(views.plan()), Cluster.of(views.profile())), views.sections()));
        return arrangements;
    }

    /** Leading balloons clear of each other is dear: each scale is drawn once. */
    private Views views(Scale scale) {
        if (!scale.equals(drawnAt)) {
            drawn = new Views(SurveyProfile.of(task, scale), SurveyPlan.of(task, scale), SurveyBodyPlan.of(task, scale));
            drawnAt = scale;
        }
        return drawn;
    }

    private List<Piece> pieces(List<Cluster> views, Optional<View> sections) {
        List<Piece> pieces = new ArrayList<>();
        views.forEach(view -> pieces.add(new Piece(List.of(view), List.of(Corner.TOP_LEFT))));
        sections.ifPresent(view -> pieces.add(new Piece(List.of(Cluster.of(view)), BESIDE)));
        pieces.addAll(words);
        return pieces;
    }

    private List<List<String>> schedule() {
        PlaceOnSheet places = new PlaceOnSheet(new Datums(task.table(), task.hull()), task.figures());
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("No.", "Place", "Finding", "Severity", "Action", "Photo", "Date", "Done, initials, date"));
        for (LaidFinding laid : task.findings()) {
            SurveyFinding finding = laid.finding();
            rows.add(List.of(finding.number(), places.words(laid), finding.words(), finding.severity(), finding.action(), finding.photo(),
                finding.date(), ""));
        }
        return rows;
    }

    private Notes notes() {
        List<String> notes = new ArrayList<>();
        DrawingWish wish = task.set().drawing();
        notes.add("Findings as told in " + task.annotated().source() + ": places, grades and actions are the surveyor's, and were not judged here.");
        notes.add("Drawn on the set of " + wish.date() + ", revision " + wish.revision() + " (" + task.set().programVersion()
            + "), from its record; nothing was sited anew.");
        if (task.set().sitings().stream().anyMatch(siting -> siting.place().isPresent())) {
            notes.add("A diamond marks the place of a transducer that is drawn on sheet 1.");
        }
        task.set().sitings().stream().filter(RecordedSiting::isGiven)
            .forEach(siting -> notes.add("The place of " + siting.transducer() + " was GIVEN BY THE YARD; nobody advised it."));
        if (task.findings().stream().anyMatch(laid -> laid.spots().isEmpty())) {
            notes.add("Findings of the whole boat stand in the schedule alone.");
        }
        notes.add("SKIN: tape bent along the skin. PLAN: level, along the base line or square to it.");
        return Notes.numbered("NOTES", notes);
    }
}
