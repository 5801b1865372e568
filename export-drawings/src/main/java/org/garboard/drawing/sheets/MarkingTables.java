package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.garboard.drawing.layout.Notes;
import org.garboard.drawing.layout.Piece;
import org.garboard.marking.Mark;
import org.garboard.marking.MarkedLength;
import org.garboard.marking.MarkingOut;
import org.garboard.marking.MarkingOut.Datum;

/** Marks, tapes and how to go about it, in words and figures. */
final class MarkingTables {
    /** Of a tape drawn tight that is longer than the chord by more than this the hull stands between [m]; less is not read off a tape. */
    private static final double TOLD = 0.0005;

    private final SheetTask task;
    private final MarkingOut plan;
    private final Figures figures;

    MarkingTables(SheetTask task, MarkingOut plan) {
        this.task = task;
        this.plan = plan;
        this.figures = task.figures();
    }

    Piece marks(List<Piece.Corner> corners) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Mark", "What it is"));
        for (Mark mark : plan.marks()) {
            rows.add(List.of(mark.letter(), mark.words()));
        }
        return Columns.piece("MARKS", rows, task.lettering(), corners);
    }

    Piece lengths(List<Piece.Corner> corners) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Tape", "Held", "Length", "STRAIGHT", "Within", "Stop at", "For", "Measured", "By, tape, date"));
        for (MarkedLength length : plan.lengths()) {
            rows.add(List.of(name(length), held(length), figures.length(length.metres()),
                    length.metres() - length.tape().straight() > TOLD ? "-" : "the same", figures.within(length.within()),
                    figures.within(2 * length.within()), use(length.use()), "", ""));
        }
        return Columns.piece("TAPES", rows, task.lettering(), corners);
    }

    static String name(MarkedLength length) {
        return length.from().letter() + " to " + length.to().letter();
    }

    /** A tape that bridges a hollow does not read what one pressed into it does. */
    static String held(MarkedLength length) {
        return (length.tape().touches() ? "SKIN, " : "TAUT, ") + length.way().words();
    }

    private static String use(MarkedLength.Use use) {
        return switch (use) {
            case SETS -> "setting";
            case CHECKS -> "CHECK";
            case SHAPE -> "SHAPE";
        };
    }

    /** A take-off runs from a place of the boat; a table may place the transom. */
    private String settled() {
        double aft = task.hull().foot();
        return task.table().isFromPlaceOfBoat()
                ? "By the take-off it lies " + task.figures().length(Math.abs(aft)) + (aft < 0 ? " forward of " : " aft of ") + task.table().origin()
                    + ", PLAN."
                : "Or give the loft the transom's bottom corner, measured from " + task.table().origin() + ".";
    }

    Notes steps() {
        List<String> steps = new ArrayList<>();
        if (plan.datum() == Datum.END_OF_TABLE) {
            steps.add("NOTHING ON THE BOAT IS KNOWN TO STAND WHERE THE " + task.table().word().toUpperCase(Locale.ROOT)
                    + " ENDS: A is not marked out until whoever drew the " + task.table().word() + " says where it lies on the boat. "
                    + "The breadths of sheet 1 prove the place, they do not find it. " + settled() + " A lies: ______________________________");
        }
        steps.add("Snap the centreline along the keel with a string. A fair keel line is the datum for all marks on it.");
        steps.add(plan.datum() == Datum.HEEL
                ? "B: from A tape straight over the flat side of deadwood and keel, to where the length meets the keel line, that is the rabbet. "
                        + "Then tape along the keel line; mark the others on it in the order of the table."
                : "Tape along the keel line from A; mark the others on it in the order of the table.");
        steps.add("Square the athwartships line by equal swings of the tape from C and D, not by a carpenter's square on curved skin.");
        steps.add("Then tape the lengths called CHECK, pulled tight over the skin from mark to mark. Off by more than Within: do it again. "
                + "Off by Stop at or more: STOP, the boat is not as drawn; the place is NOT KNOWN.");
        if (plan.lengths().stream().anyMatch(length -> length.use() == MarkedLength.Use.SHAPE)) {
            boolean athwart = plan.marks().stream().anyMatch(mark -> mark.letter().equals("E") && mark.place().getY() == 0);
            steps.add((athwart ? "SHAPE: the two diagonals of the opening are alike within 2 mm of each other."
                    : "SHAPE: beside the keel the two diagonals of the opening differ; each is as listed.")
                    + " Lay the template (sheet 3) with its cross on E, its ticks on the corners of the same numbers.");
        } else if (plan.marks().stream().anyMatch(mark -> mark.place().getY() != 0)) {
            steps.add("The other side is the mirror image: the same figures, if the same place is wanted there.");
        }
        steps.add("SKIN: tape bent along the skin. TAUT: tape drawn tight, off the skin where it bridges a hollow. STRAIGHT: the chord between the two marks; -: the hull stands between them.");
        for (MarkedLength length : plan.lengths()) {
            if (!length.tape().touches()) {
                steps.add("Tape " + name(length) + " bridges a hollow and stands off the skin by up to "
                        + Figures.tenths(length.tape().standsOff() * 1000) + " mm: pull it tight, do not press it in.");
            }
        }
        steps.add("Compare the deadrise at E with sheet 1: more than 1.0° off is NOT KNOWN. Then a pilot hole at E, and look from inside before cutting.");
        steps.add(SurfaceNote.of(task));
        return Notes.numbered("MARKING OUT", steps);
    }
}
