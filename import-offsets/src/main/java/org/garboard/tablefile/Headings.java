package org.garboard.tablefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** What the rows say that hold no offsets: title, units, surface, spacing, notes. */
final class Headings {
    private static final Pattern TITLE =
        Pattern.compile("table of offsets|offsets|title|boat|design|vessel", Pattern.CASE_INSENSITIVE);
    private static final Pattern UNITS = Pattern.compile("units?", Pattern.CASE_INSENSITIVE);
    private static final Pattern SURFACE =
        Pattern.compile("surface|drawn|offsets are|lines are", Pattern.CASE_INSENSITIVE);
    private static final Pattern SPACING =
        Pattern.compile("(station )?spacing|stations apart", Pattern.CASE_INSENSITIVE);
    private static final Pattern ORIGIN = Pattern.compile("origin|x from", Pattern.CASE_INSENSITIVE);
    private static final Pattern NOTE = Pattern.compile("notes?|remarks?", Pattern.CASE_INSENSITIVE);
    private final Problems problems;
    private final List<String> notes = new ArrayList<>();
    private String title = "";
    private boolean titleGiven;
    private Optional<TableUnit> unit = Optional.empty();
    private final SurfaceHeading surface;
    private final EndRows ends;
    private Optional<Cell> spacing = Optional.empty();
    private Optional<Measured> measured = Optional.empty();
    private Optional<Cell> origin = Optional.empty();
    private final List<Cell> asidesFromAft = new ArrayList<>();

    Headings(Problems problems) {
        this.problems = problems;
        this.surface = new SurfaceHeading(problems);
        this.ends = new EndRows(problems);
    }

    /** Whether a row's first cell is the word for a heading, wherever in the file it stands. */
    static boolean isHeading(String text) {
        return TITLE.matcher(text).matches() || UNITS.matcher(text).matches() || SURFACE.matcher(text).matches()
            || SPACING.matcher(text).matches() || NOTE.matcher(text).matches() || ORIGIN.matcher(text).matches()
            || EndRows.isHeading(text)
            || Thicknesses.isHeading(text) || Measured.isHeading(text) || Surfaces.in(text).isPresent();
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
        } else if (Thicknesses.isHeading(key)) {
            surface.thicknesses().row(row);
        } else if (EndRows.isHeading(key)) {
            ends.row(row);
        } else if (Measured.isHeading(key)) {
            measured(row);
        } else if (ORIGIN.matcher(key).matches()) {
            requireValue(row, values, "the station from which x is measured");
            values.forEach(this::origin);
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

    /** What follows an inside in its row is its thickness. */
    private void unitsAndSurface(List<Cell> values) {
        boolean afterInside = false;
        for (Cell cell : values) {
            Optional<TableUnit> isUnit = TableUnit.of(cell.text());
            Optional<Surfaces> isSurface = Surfaces.in(cell.text());
            if (isUnit.isPresent()) {
                unit(cell, isUnit.get());
            } else if (isSurface.isPresent()) {
                surface.read(cell, isSurface.get());
                afterInside = isSurface.get().covering().isPresent();
            } else if (afterInside) {
                surface.thicknesses().everywhere(cell);
            } else {
                problems.inCell(cell, "", "", "is neither a unit (" + TableUnit.KNOWN
                    + ") nor a surface (" + Surfaces.KNOWN + ")");
            }
        }
    }

    private void unit(Cell cell, TableUnit found) {
        if (unit.isPresent() && unit.get() != found) {
            problems.inCell(cell, "", "", "is a second unit; give one, and write others behind the numbers, as 450 mm");
        }
        unit = unit.or(() -> Optional.of(found));
    }

    private void spacing(Cell cell) {
        if (spacing.isPresent()) {
            problems.inCell(cell, "", "", "is a second spacing; where it changes write a row Distance from 0 instead");
        }
        spacing = Optional.of(cell);
    }

    private void measured(GridRow row) {
        String text = String.join(" ", row.filledFrom(0).stream().map(Cell::text).toList());
        Optional<Measured> found = Measured.heading(text);
        if (found.isEmpty() || measured.isPresent() && !measured.equals(found)) {
            problems.inRow(row.number(), "", "\"" + text + "\" does not say from which end the stations count, or says it"
                + " otherwise than before; write Stations from and in the next cell forward or aft");
        }
        measured = found.or(() -> measured);
    }

    private void origin(Cell cell) {
        if (origin.isPresent()) {
            problems.inCell(cell, "", "", "is a second origin; x is measured from one station");
        }
        origin = Optional.of(cell);
    }

    /** A note may yet say something that decides whether the table can be used. */
    private void note(GridRow row) {
        for (Cell cell : row.cells()) {
            Surfaces.in(cell.text()).ifPresent(found -> surface.read(cell, found));
            if (Measured.isAsideFromAft(cell.text())) {
                asidesFromAft.add(cell);
            }
        }
        notes.add(String.join(", ", row.filledFrom(0).stream().map(Cell::text).toList()));
    }

    /** Says what the file leaves out; called when all of it has been read. */
    void requireAll() {
        if (unit.isEmpty()) {
            problems.inFile("the units are not told; add a row Units, with " + TableUnit.KNOWN + " in its next cell");
        }
        if (!surface.isGiven()) {
            problems.inFile("the surface is not told; add it to the row Units: " + Surfaces.KNOWN
                + ", the last two with the thickness in the next cell");
        }
    }

    String title() {
        return title;
    }

    Optional<TableUnit> unit() {
        return unit;
    }

    SurfaceHeading surface() {
        return surface;
    }

    /** The rows that say where steps and the transom stand. */
    EndRows ends() {
        return ends;
    }

    /** From which end stations count, if a heading says it. */
    Optional<Measured> measured() {
        return measured;
    }

    /** Notes that speak of stations from aft. */
    List<Cell> asidesFromAft() {
        return asidesFromAft;
    }

    /** The station from which x is to be measured, if a heading names it. */
    Optional<Cell> origin() {
        return origin;
    }

    Optional<Cell> spacing() {
        return spacing;
    }

    List<String> notes() {
        return notes;
    }
}
