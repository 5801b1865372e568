package org.garboard.tablefile;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import org.garboard.offsets.OpenEnd;
import org.garboard.takeoff.Datum;

/** What the rows above the list of a take-off say: the datum, which way lengths are counted, by what the trim is known. */
final class TakeOffHeadings {
    static final String TRIM_KNOWN = "\"float marks\" with the waterline's name in the next cell and its height above base"
        + " in the one after, or \"straight keel\" with the first and the last station of the straight run";

    private static final Pattern TITLE = words("take-? ?off( table)?|taken off");
    private static final Pattern DATUM = words("datum");
    private static final Pattern DISTANCES = words("distances?");
    private static final Pattern HEIGHTS = words("heights?");
    private static final Pattern TRIM = words("trim( from| by)?");
    private static final Pattern SYMMETRIC = words("symmetric(al)? within");
    private static final Pattern COVERS = words("covers");
    private static final Pattern AFT = words("aft( of (the )?datum)?");
    private static final Pattern FORWARD = words("(forward|fwd|ahead)( of (the )?datum)?");
    private static final Pattern UP = words("up( from (the )?level)?");
    private static final Pattern DOWN = words("down( from (the )?level)?");
    private static final Pattern FLOAT_MARKS = words("float ?marks?");
    private static final Pattern STRAIGHT_KEEL = words("(the )?straight (run of (the )?)?keel");
    private static final Pattern TO_STEM = words("to (the )?(stem|bow|forward end)");
    private static final Pattern TO_TRANSOM = words("to (the )?(transom|stern|sternpost|after end)");

    private final Problems problems;
    private final Headings common;
    private Optional<Cell> title = Optional.empty();
    private Optional<GridRow> datum = Optional.empty();
    private Optional<GridRow> distances = Optional.empty();
    private Optional<GridRow> heights = Optional.empty();
    private Optional<GridRow> trim = Optional.empty();
    private Optional<GridRow> symmetric = Optional.empty();
    private Optional<GridRow> covers = Optional.empty();

    TakeOffHeadings(Problems problems) {
        this.problems = problems;
        this.common = new Headings(problems);
    }

    private static Pattern words(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
    }

    /** Whether a row says that the file is a take-off. */
    static boolean isTitle(GridRow row) {
        return TITLE.matcher(row.first().text()).matches();
    }

    void read(GridRow row) {
        String key = row.first().text();
        if (isTitle(row)) {
            title = title.or(() -> Optional.of(row.at(1)));
        } else if (DATUM.matcher(key).matches()) {
            datum = once(datum, row, "the place of the boat that distances are measured from");
        } else if (DISTANCES.matcher(key).matches()) {
            distances = once(distances, row, "\"aft of datum\" or \"forward of datum\"");
        } else if (HEIGHTS.matcher(key).matches()) {
            heights = once(heights, row, "\"up from level\" or \"down from level\"");
        } else if (TRIM.matcher(key).matches()) {
            trim = once(trim, row, TRIM_KNOWN);
        } else if (SYMMETRIC.matcher(key).matches()) {
            symmetric = once(symmetric, row, "how far port and starboard may differ");
        } else if (COVERS.matcher(key).matches()) {
            covers = once(covers, row, "\"to the stem\", \"to the transom\", or both");
        } else {
            common.read(row);
        }
    }

    private Optional<GridRow> once(Optional<GridRow> before, GridRow row, String wanted) {
        if (row.filledFrom(1).isEmpty()) {
            problems.inCell(row.first(), "", "", "has nothing behind it; write " + wanted + " in the next cell");
            return before.or(() -> Optional.of(row));
        }
        if (before.isPresent()) {
            problems.inCell(row.first(), "", "", "is given a second time, after line " + before.get().number() + "; leave one out");
        }
        return before.or(() -> Optional.of(row));
    }

    /** Says what the headings leave out. */
    void requireAll() {
        common.requireAll();
        common.surface().refuseInside();
        if (datum.isEmpty()) {
            problems.inFile("the datum is not told; add a row Datum, and in its next cell the place of the boat that distances"
                + " are measured from, such as lower corner of transom");
        }
        if (distances.isEmpty()) {
            problems.inFile("nothing tells which way the distances run; add a row Distances, with \"aft of datum\" or"
                + " \"forward of datum\" in its next cell");
        }
        if (trim.isEmpty()) {
            problems.inFile("nothing tells the trim; add a row Trim from, with " + TRIM_KNOWN);
        }
    }

    String title() {
        return title.map(Cell::text).filter(text -> !text.isEmpty()).orElse(common.title());
    }

    Optional<TableUnit> unit() {
        return common.unit();
    }

    List<String> notes() {
        return common.notes();
    }

    Optional<Datum> datum(Lengths lengths, int upward) {
        return datum.map(row -> new Datum(row.at(1).text(), row.at(2).isBlank() ? OptionalDouble.empty()
            : length(lengths, row.at(2), "height of the datum").map(z -> OptionalDouble.of(upward * z)).orElse(OptionalDouble.empty())));
    }

    /** 1 where distances grow aft, -1 where they grow forward. */
    int aftward() {
        return direction(distances, AFT, FORWARD, "\"aft of datum\" or \"forward of datum\"");
    }

    /** 1 where heights are read up from the level, as they are unless a row says otherwise; else -1. */
    int upward() {
        return direction(heights, UP, DOWN, "\"up from level\" or \"down from level\"");
    }

    private int direction(Optional<GridRow> row, Pattern plus, Pattern minus, String wanted) {
        Optional<Cell> cell = row.map(found -> found.at(1)).filter(found -> !found.isEmpty());
        if (cell.isPresent() && minus.matcher(cell.get().text()).matches()) {
            return -1;
        }
        if (cell.isPresent() && !plus.matcher(cell.get().text()).matches()) {
            problems.inCell(cell.get(), "", "", "does not say which way; write " + wanted);
        }
        return 1;
    }

    /** 0 where no row allows more than the rounding. */
    double symmetricWithin(Lengths lengths) {
        return symmetric.map(row -> row.at(1)).filter(cell -> !cell.isEmpty())
            .flatMap(cell -> length(lengths, cell, "difference of the sides")).orElse(0.0);
    }

    Set<OpenEnd> openEnds() {
        Set<OpenEnd> open = new LinkedHashSet<>(List.of(OpenEnd.values()));
        covers.ifPresent(row -> row.filledFrom(1).forEach(cell -> {
            if (TO_STEM.matcher(cell.text()).matches()) {
                open.remove(OpenEnd.FORWARD);
            } else if (TO_TRANSOM.matcher(cell.text()).matches()) {
                open.remove(OpenEnd.AFTER);
            } else if (!cell.isEmpty()) {
                problems.inCell(cell, "", "", "names no end of the boat; write \"to the stem\" or \"to the transom\"");
            }
        }));
        return open;
    }

    /** Cells behind "float marks" or "straight keel"; where neither stands there, a problem and nothing. */
    Optional<GridRow> floatMarks() {
        return trim.filter(row -> FLOAT_MARKS.matcher(row.at(1).text()).matches());
    }

    Optional<GridRow> straightKeel() {
        Optional<GridRow> keel = trim.filter(row -> STRAIGHT_KEEL.matcher(row.at(1).text()).matches());
        if (keel.isEmpty() && floatMarks().isEmpty()) {
            trim.filter(row -> !row.at(1).isEmpty()).ifPresent(row -> problems.inCell(row.at(1), "", "",
                "is not what a trim is known by; write " + TRIM_KNOWN));
        }
        return keel;
    }

    static Optional<Double> length(Lengths lengths, Cell cell, String meaning) {
        return lengths.place(cell, "", meaning);
    }
}
