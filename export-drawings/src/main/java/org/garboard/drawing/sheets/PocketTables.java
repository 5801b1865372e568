package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.garboard.craft.Transducer;
import org.garboard.cutout.Pocket;
import org.garboard.drawing.layout.Piece;
import org.garboard.mount.KeelPocket;
import org.garboard.units.FixedDecimal;

/** The pocket in figures, and what is to be measured before anything is cut. */
final class PocketTables {

    private static final double LITRES = 1000;

    private final SheetTask sheet;
    private final PocketTask task;
    private final Pocket pocket;
    private final Figures figures;

    PocketTables(SheetTask sheet, PocketTask task) {
        this.sheet = sheet;
        this.task = task;
        this.pocket = task.pocket();
        this.figures = task.figures();
    }

    Piece pocket(List<Piece.Corner> corners) {
        Transducer body = task.body();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Of the pocket", "Figure"));
        rows.add(List.of("For", body.name()));
        rows.add(List.of("Body, length x width x height", figures.fine(body.length()) + " x " + figures.fine(body.width())
                + " x " + figures.fine(body.height())));
        rows.add(List.of("Gap round it", figures.fine((pocket.length() - body.length()) / 2)));
        rows.add(List.of("Floor, length x width", figures.fine(pocket.length()) + " x " + figures.fine(pocket.width())));
        if (!task.athwartKeel()) {
            rows.add(List.of("Middle of pocket, PLAN", task.aside()));
        }
        rows.add(List.of("Floor lies", floorLean() + ", " + floorSlope()));
        rows.add(List.of("Corner radius", figures.fine(pocket.cornerRadius())));
        rows.add(List.of("Depth of floor " + atMiddle(), figures.fine(pocket.depth())));
        rows.add(List.of("Depth of face " + atMiddle(), figures.fine(pocket.faceDepth())));
        rows.add(List.of("Least wall at outer edges", figures.bench(pocket.wallHeight())));
        if (pocket.rampRatio() > 0) {
            rows.add(List.of("Ramps 1:" + Figures.tenths(pocket.rampRatio()) + ", fore and aft " + (task.athwartKeel() ? "on CL" : "of the middle"),
                    figures.bench(pocket.foreRamp()) + " and " + figures.bench(pocket.aftRamp())));
        } else {
            rows.add(List.of("Ramps", "none"));
        }
        rows.add(List.of(deadriseOf(), Figures.slope(deadrise())));
        rows.add(List.of("Volume", FixedDecimal.format(pocket.volume() * LITRES, 2) + " litres"));
        rows.add(List.of("Opening in the skin", FixedDecimal.format(pocket.openingArea() * 1e4, 0) + " cm²"));
        return Columns.piece("POCKET", rows, task.lettering(), corners);
    }

    private String atMiddle() {
        return task.athwartKeel() ? "at keel, middle" : "in the middle";
    }

    private String floorLean() {
        return Math.abs(Math.toDegrees(pocket.lean())) < 0.05 ? "level athwartships"
                : "square to the skin, " + Figures.degrees(Math.abs(pocket.lean())) + ", higher " + (pocket.lean() > 0 ? "to starboard" : "to port");
    }

    private String deadriseOf() {
        return task.athwartKeel() ? "Deadrise, chord from keel to pocket edge" : "Deadrise at the middle";
    }

    private String floorSlope() {
        if (Math.abs(Math.toDegrees(pocket.slope())) < 0.05) {
            return "fore and aft along the base line";
        }
        return "fore and aft " + Figures.slope(Math.abs(pocket.slope())) + (pocket.slope() > 0 ? ", rising aft" : ", rising forward");
    }

    private double deadrise() {
        return task.athwartKeel() ? PocketCrossView.deadrise(task.paper(), task.middleSection()) : sheet.record().sitings().stream()
                .filter(siting -> siting.mount() instanceof KeelPocket).flatMap(siting -> siting.sites().stream()).findFirst().orElseThrow().deadrise();
    }

    /** Drawn figures with empty places for what is measured. */
    Piece checks(List<Piece.Corner> corners) {
        CutOutline outline = CutOutline.of(pocket);
        CutOutline edge = CutOutline.finishedEdge(pocket);
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Measure", "Drawn", "Within", "Measured", "By, date"));
        check(rows, "Cut file: length of outline", outline.extents().width() / 1000, Marking.SHAPE);
        check(rows, "Cut file: width of outline, flat", outline.extents().height() / 1000, Marking.SHAPE);
        check(rows, "Cut file: way round outline", outline.perimeter() / 1000, Marking.ROUND);
        check(rows, "Cut file: diagonal, fwd starboard to aft port tick (marks 1, 4)", edge.diagonalFromStarboard() / 1000, Marking.SHAPE);
        check(rows, "Cut file: diagonal, fwd port to aft starboard tick (marks 2, 3)", edge.diagonalFromPort() / 1000, Marking.SHAPE);
        double x = pocket.site().getX();
        taped(rows, "Boat: middle of pocket from " + sheet.afterEnd(), sheet.fromAfterEnd(x));
        taped(rows, "Boat: middle of pocket from " + sheet.forwardDatum(), Math.abs(x));
        rows.add(List.of("Boat: " + deadriseOf().toLowerCase(Locale.ROOT), Figures.degrees(deadrise()), "±1.0°", "", ""));
        check(rows, "Pocket: depth of floor " + atMiddle(), pocket.depth(), Marking.DEPTH);
        return Columns.piece("CHECK MEASUREMENTS", rows, task.lettering(), corners);
    }

    private void check(List<List<String>> rows, String what, double drawn, double withinMm) {
        rows.add(List.of(what, figures.bench(drawn), figures.within(withinMm), "", ""));
    }

    private void taped(List<List<String>> rows, String what, double drawn) {
        rows.add(List.of(what, figures.length(drawn), figures.within(Marking.place(drawn)), "", ""));
    }
}
