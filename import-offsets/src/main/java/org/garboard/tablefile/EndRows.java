package org.garboard.tablefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.garboard.offsets.EndPoint;
import org.garboard.offsets.Ends;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.StemLine;
import org.garboard.offsets.StepLine;
import org.garboard.offsets.TransomLine;

/**
 * The rows that say where stem, steps and transom stand, each a line of the hull and behind it the distance at which
 * it ends there: "Stem, Keel, -80, WL 600, -190, Sheer, -420, Half-siding, 15",
 * "Step at, 5, Keel, 8000, Buttock 300, 7900, Chine, 7600" and "Transom, Keel, 9000, Sheer, 9300, Round, 60".
 * Distances are told as those of the stations are.
 */
final class EndRows {
    private static final Pattern STEP = Pattern.compile("step(?: line)?(?: (?:in plan )?at)?(?: station)?(?: +(.+))?",
        Pattern.CASE_INSENSITIVE);
    private static final Pattern TRANSOM = Pattern.compile("transom", Pattern.CASE_INSENSITIVE);
    private static final Pattern STEM = Pattern.compile("stem", Pattern.CASE_INSENSITIVE);
    private static final Pattern SIDING = Pattern.compile("half[- ]siding", Pattern.CASE_INSENSITIVE);
    private static final Pattern ROUND = Pattern.compile("round(?: in plan)?", Pattern.CASE_INSENSITIVE);

    private final Problems problems;
    private final List<GridRow> steps = new ArrayList<>();
    private final List<GridRow> transoms = new ArrayList<>();
    private final List<GridRow> stems = new ArrayList<>();

    EndRows(Problems problems) {
        this.problems = problems;
    }

    static boolean isHeading(String text) {
        return STEP.matcher(text).matches() || TRANSOM.matcher(text).matches()
            || STEM.matcher(text).matches();
    }

    void row(GridRow row) {
        String first = row.first().text();
        (STEM.matcher(first).matches() ? stems : TRANSOM.matcher(first).matches() ? transoms : steps).add(row);
    }

    /** As far as they can be read; what cannot is told. */
    Ends read(Lengths lengths, StationOrder order, OffsetTable table, SkinSurface surface) {
        List<GridRow> all = new ArrayList<>(steps);
        all.addAll(transoms);
        all.addAll(stems);
        if (all.isEmpty() || order.frame() == ToldFrame.UNKNOWN || table.stations().isEmpty()) {
            return Ends.SQUARE;
        }
        if (!surface.equals(SkinSurface.OUTSIDE_OF_SKIN)) {
            all.forEach(row -> problems.inCell(row.first(), "", "", "cannot stand in a table drawn to " + surface.words()
                + " yet; give offsets to outside of skin"));
            return Ends.SQUARE;
        }
        EndReach reach = new EndReach(table, order.frame(), problems);
        List<StepLine> lines = new ArrayList<>();
        for (GridRow row : steps) {
            step(row, lengths, order.frame(), table, lines, reach);
        }
        Optional<TransomLine> transom = once(transoms).flatMap(row -> transom(row, lengths, order.frame(), table, reach));
        Optional<StemLine> stem = once(stems).flatMap(row -> stem(row, lengths, order.frame(), table, reach));
        return new Ends(lines, transom, stem);
    }

    private Optional<GridRow> once(List<GridRow> rows) {
        rows.stream().skip(1).forEach(row -> problems.inCell(row.first(), "", "", "stands here a second time, after line "
            + rows.get(0).number() + "; give it once"));
        return rows.stream().findFirst();
    }

    private void step(GridRow row, Lengths lengths, ToldFrame frame, OffsetTable table, List<StepLine> lines, EndReach reach) {
        Matcher heading = STEP.matcher(row.first().text());
        boolean inFirst = heading.matches() && heading.group(1) != null;
        Cell named = inFirst ? row.first() : row.at(1);
        String name = inFirst ? heading.group(1) : named.text();
        OptionalInt after = afterFace(table, name);
        if (after.isEmpty()) {
            List<String> known = new ArrayList<>();
            for (int i = 1; i < table.stations().size(); i++) {
                if (table.isAfterFace(i)) {
                    known.add(table.stations().get(i - 1).name());
                }
            }
            problems.inCell(named, "", "", "names no step; " + (known.isEmpty()
                ? "this table has none: a step is two stations at one distance, as 5 and 5 aft"
                : "the steps of this table are at station " + String.join(", ", known)));
            return;
        }
        if (lines.stream().anyMatch(line -> line.station() == after.getAsInt())) {
            problems.inCell(named, "", "", "has its line given a second time; give it once");
            return;
        }
        List<PlacedEnd> ends = pairs(row, inFirst ? 1 : 2, lengths, frame, table);
        if (!ends.isEmpty() && reach.isStep(ends, after.getAsInt())) {
            lines.add(new StepLine(after.getAsInt(), ends.stream().map(PlacedEnd::point).toList()));
        }
    }

    /** By the name of either face. */
    private static OptionalInt afterFace(OffsetTable table, String name) {
        for (int i = 1; i < table.stations().size(); i++) {
            if (table.isAfterFace(i) && (table.stations().get(i).name().equals(name)
                || table.stations().get(i - 1).name().equals(name))) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private Optional<TransomLine> transom(GridRow row, Lengths lengths, ToldFrame frame, OffsetTable table, EndReach reach) {
        List<Cell> cells = new ArrayList<>(row.filledFrom(0));
        Optional<Double> round = taken(cells, ROUND, lengths, "transom", "round",
            "write how far the middle stands abaft of the sides");
        if (round.isEmpty()) {
            return Optional.empty();
        }
        List<PlacedEnd> ends = pairs(new GridRow(row.number(), cells), 1, lengths, frame, table);
        return !ends.isEmpty() && reach.isTransom(ends)
            ? Optional.of(new TransomLine(ends.stream().map(PlacedEnd::point).toList(), round.get())) : Optional.empty();
    }

    private Optional<StemLine> stem(GridRow row, Lengths lengths, ToldFrame frame, OffsetTable table, EndReach reach) {
        List<Cell> cells = new ArrayList<>(row.filledFrom(0));
        Optional<Double> siding = taken(cells, SIDING, lengths, "stem", "half-siding",
            "write half the stem's thickness where the skin ends on it");
        if (siding.isEmpty()) {
            return Optional.empty();
        }
        if (siding.get() > 0 && table.lines().stream()
                .noneMatch(line -> line.kind() == LineKind.HALF_SIDING || line.kind() == LineKind.RABBET)) {
            problems.inCell(row.first(), "", "", "has a half-siding, and the keel has none: the skin would begin on the centreline"
                + " at the keel and beside it at the stem; add a row Half-siding for the keel, or leave it out here");
            return Optional.empty();
        }
        List<PlacedEnd> ends = pairs(new GridRow(row.number(), cells), 1, lengths, frame, table);
        return !ends.isEmpty() && reach.isStem(ends)
            ? Optional.of(new StemLine(ends.stream().map(PlacedEnd::point).toList(), siding.get())) : Optional.empty();
    }

    /** A length behind its word, both taken out of the cells [m]; 0 where the word does not stand there, nothing where it is at fault. */
    private Optional<Double> taken(List<Cell> cells, Pattern word, Lengths lengths, String where, String what, String wanted) {
        double found = 0;
        for (int i = 1; i + 1 < cells.size(); i += 2) {
            if (word.matcher(cells.get(i).text()).matches()) {
                Cell value = cells.get(i + 1);
                Optional<Double> metres = lengths.place(value, where, what);
                if (metres.isEmpty() || metres.get() < 0) {
                    metres.ifPresent(each -> problems.inCell(value, where, what, "is negative; " + wanted));
                    return Optional.empty();
                }
                found = metres.get();
                cells.subList(i, i + 2).clear();
                i -= 2;
            }
        }
        return Optional.of(found);
    }

    /** Lines, each with the distance behind it; none where one of them cannot be read. */
    private List<PlacedEnd> pairs(GridRow row, int from, Lengths lengths, ToldFrame frame, OffsetTable table) {
        List<Cell> cells = row.filledFrom(from);
        if (cells.isEmpty() || cells.size() % 2 != 0) {
            problems.inCell(row.first(), "", "", "has " + cells.size() + " cell(s) for lines and distances behind it; write each"
                + " line and behind it the distance at which it ends, as Keel, 8000, Chine, 7600");
            return List.of();
        }
        List<PlacedEnd> ends = new ArrayList<>();
        for (int i = 0; i < cells.size(); i += 2) {
            Cell label = cells.get(i);
            Cell distance = cells.get(i + 1);
            Optional<Double> told = lengths.place(distance, label.text(), "distance");
            line(label, told.map(frame::x).orElse(0.0), lengths, table)
                .filter(point -> told.isPresent()).ifPresent(point -> ends.add(new PlacedEnd(label, distance, point)));
        }
        return ends.size() == cells.size() / 2 ? ends : List.of();
    }

    private Optional<EndPoint> line(Cell label, double x, Lengths lengths, OffsetTable table) {
        Optional<Labels.Line> known = Labels.line(label.text());
        if (known.isPresent() && (known.get().kind() == LineKind.BUTTOCK || known.get().kind() == LineKind.WATERLINE)) {
            boolean buttock = known.get().kind() == LineKind.BUTTOCK;
            return lengths.place(new Cell(label.row(), label.column(), known.get().level()), label.text(),
                buttock ? "distance" : "height").map(level -> new EndPoint(label.text(), known.get().kind(), level, x));
        }
        Optional<EndPoint> named = table.lines().stream()
            .filter(line -> Labels.key(line.name()).equals(Labels.key(label.text()))).findFirst()
            .map(line -> new EndPoint(line.name(), line.kind(), 0, x));
        if (named.isEmpty()) {
            problems.inCell(label, "", "", "is no line of this table at which the skin can end; write Keel, a chine or"
                + " Sheer as they are called in the table, a Buttock with its distance or a WL with its height");
        }
        return named;
    }
}
