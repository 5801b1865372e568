package org.garboard.tablefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.garboard.offsets.SkinSurface;

/** What the rows say that hold no offsets: title, units, surface, spacing, notes. */
final class Headings {
    private static final Pattern TITLE =
        Pattern.compile("table of offsets|offsets|title|boat|design|vessel", Pattern.CASE_INSENSITIVE);
    private static final Pattern UNITS = Pattern.compile("units?", Pattern.CASE_INSENSITIVE);
    private static final Pattern SURFACE =
        Pattern.compile("surface|drawn|offsets are|lines are", Pattern.CASE_INSENSITIVE);
    private static final Pattern SPACING =
        Pattern.compile("(station )?spacing|stations apart", Pattern.CASE_INSENSITIVE);
    private static final Pattern NOTE = Pattern.compile("notes?|remarks?", Pattern.CASE_INSENSITIVE);
    static final String FROM_AFT_REFUSED = "measures from aft, which is not read yet;"
        + " write the stations from forward aft, with their distances from the forward one";

    private static final Pattern FROM_AFT = Pattern.compile(
        ".*\\bfrom (the )?(aft|stern|transom|a\\.?p\\.?|after perpendicular)( .*)?", Pattern.CASE_INSENSITIVE);

    private final Problems problems;
    private final List<String> notes = new ArrayList<>();
    private String title = "";
    private boolean titleGiven;
    private Optional<TableUnit> unit = Optional.empty();
    private Optional<Surfaces> surface = Optional.empty();
    private Optional<Cell> spacing = Optional.empty();

    Headings(Problems problems) {
        this.problems = problems;
    }

    /** Whether a row's first cell is the word for a heading, wherever in the file it stands. */
    static boolean isHeading(String text) {
        return TITLE.matcher(text).matches() || UNITS.matcher(text).matches() || SURFACE.matcher(text).matches()
            || SPACING.matcher(text).matches() || NOTE.matcher(text).matches() || Surfaces.in(text).isPresent();
    }

    static boolean isFromAft(String text) {
        return FROM_AFT.matcher(text).matches();
    }

    void read(GridRow row) {
        String key = row.first().text();
        List<Cell> values = row.filledFrom(1).stream().filter(cell -> !cell.isEmpty()).toList();
        if (UNITS.matcher(key).matches() || SURFACE.matcher(key).matches()) {
            requireValue(row, values, "\"mm\" or \"to outside of skin\"");
            unitsAndSurface(values);
        } else if (SPACING.matcher(key).matches()) {
            requireValue(row, values, "the distance from station to station");
            values.forEach(this::spacing);
        } else if (TITLE.matcher(key).matches() && !titleGiven) {
            title = values.isEmpty() ? "" : values.get(0).text();
            titleGiven = !values.isEmpty();
            values.stream().skip(1).forEach(cell -> note(new GridRow(row.number(), List.of(cell))));
        } else {
            note(row);
        }
    }

    private void requireValue(GridRow row, List<Cell> values, String wanted) {
        if (values.isEmpty()) {
            problems.inCell(row.first(), "", "", "has nothing behind it; write " + wanted + " in the next cell");
        }
    }

    private void unitsAndSurface(List<Cell> values) {
        boolean insideOfSkin = values.stream().anyMatch(cell -> Surfaces.in(cell.text()).isPresent()
            && Surfaces.in(cell.text()).get() != Surfaces.OUTSIDE);
        for (Cell cell : values) {
            Optional<TableUnit> isUnit = TableUnit.of(cell.text());
            Optional<Surfaces> isSurface = Surfaces.in(cell.text());
            if (isUnit.isPresent()) {
                unit(cell, isUnit.get());
            } else if (isSurface.isPresent()) {
                surface(cell, isSurface.get());
            } else if (!insideOfSkin) {
                problems.inCell(cell, "", "", "is neither a unit (" + TableUnit.KNOWN
                    + ") nor a surface (to outside of skin)");
            }
        }
    }

    private void unit(Cell cell, TableUnit found) {
        if (unit.isPresent() && unit.get() != found) {
            problems.inCell(cell, "", "", "is a second unit; give one, and write others behind the numbers, as 450 mm");
        }
        unit = unit.or(() -> Optional.of(found));
    }

    private void surface(Cell cell, Surfaces found) {
        if (surface.isPresent() && surface.get() != found) {
            problems.inCell(cell, "", "", "is a second surface; a table is drawn to one");
        } else if (surface.isEmpty()) {
            found.refusal().ifPresent(reason -> problems.inCell(cell, "", "", reason));
        }
        surface = Optional.of(found);
    }

    private void spacing(Cell cell) {
        if (spacing.isPresent()) {
            problems.inCell(cell, "", "", "is a second spacing; where it changes write a row Distance from 0 instead");
        }
        spacing = Optional.of(cell);
    }

    /** A note may yet say something that decides whether the table can be used. */
    private void note(GridRow row) {
        for (Cell cell : row.cells()) {
            Surfaces.in(cell.text()).ifPresent(found -> surface(cell, found));
            if (isFromAft(cell.text())) {
                problems.inCell(cell, "", "", FROM_AFT_REFUSED);
            }
        }
        notes.add(String.join(", ", row.filledFrom(0).stream().map(Cell::text).toList()));
    }

    /** Says what the file leaves out; called when all of it has been read. */
    void requireAll() {
        if (unit.isEmpty()) {
            problems.inFile("the units are not told; add a row Units, with " + TableUnit.KNOWN + " in its next cell");
        }
        if (surface.isEmpty()) {
            problems.inFile("the surface is not told; add \"to outside of skin\" to the row Units"
                + " if the table is drawn to that");
        }
    }

    String title() {
        return title;
    }

    Optional<TableUnit> unit() {
        return unit;
    }

    /** Only the outside passes; the others have been refused. */
    SkinSurface surface() {
        return SkinSurface.OUTSIDE_OF_SKIN;
    }

    Optional<Cell> spacing() {
        return spacing;
    }

    List<String> notes() {
        return notes;
    }
}
