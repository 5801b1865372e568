package org.garboard.tablefile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.garboard.offsets.PanelName;
import org.garboard.offsets.SkinThickness;

/** The cells that say how thick the skin is: one for all of it, or panels each with its own. */
final class Thicknesses {
    static final String EXAMPLE = "as 32 mm or 0-1-2";

    private static final Pattern HEADING = Pattern.compile(
        "(?:(?:skin|planking|plank|plating|plate|shell) )?thickness(?:es)?(?: of (?:the )?(?:skin|planking|plating|shell))?",
        Pattern.CASE_INSENSITIVE);
    /** Far above any skin [m]; our choice, so that a slip of the decimal is seen. */
    private static final double MOST = 0.2;

    private final Problems problems;
    private final List<Cell> everywhere = new ArrayList<>();
    private final List<OfPanel> panels = new ArrayList<>();

    /** A panel as the file names it, and its thickness. */
    private record OfPanel(Cell panel, Cell thickness) {
    }

    Thicknesses(Problems problems) {
        this.problems = problems;
    }

    static boolean isHeading(String text) {
        return HEADING.matcher(text).matches();
    }

    void everywhere(Cell cell) {
        everywhere.add(cell);
    }

    void row(GridRow row) {
        List<Cell> values = row.filledFrom(1);
        if (values.size() == 1) {
            everywhere(values.get(0));
        } else if (values.isEmpty() || values.size() % 2 != 0) {
            problems.inCell(row.first(), "", "", "has " + values.size() + " cells behind it; write one thickness, " + EXAMPLE
                + ", or panels each with its own behind it, as Keel to Chine and then 32 mm");
        }
        for (int i = 0; i + 1 < values.size() && values.size() % 2 == 0; i += 2) {
            panels.add(new OfPanel(values.get(i), values.get(i + 1)));
        }
    }

    /** A thickness beside a table to the outside would be passed over in silence. */
    void refuseAll() {
        List<Cell> cells = new ArrayList<>(everywhere);
        panels.forEach(each -> cells.add(each.thickness()));
        cells.forEach(cell -> problems.inCell(cell, "", "thickness", "is not wanted, for the table is drawn to the outside;"
            + " leave it out, or write to which inside it is drawn"));
    }

    /**
     * The thickness; empty where something is wrong with it, which is told.
     *
     * @param names the table's panels
     * @param surface the cell that speaks of the inside
     */
    Optional<SkinThickness> read(Lengths lengths, List<PanelName> names, Cell surface) {
        if (everywhere.isEmpty() && panels.isEmpty()) {
            problems.inCell(surface, "", "", "tells no thickness; write it in the next cell, " + EXAMPLE);
            return Optional.empty();
        }
        if (!panels.isEmpty()) {
            everywhere.forEach(cell -> problems.inCell(cell, "", "thickness", "stands for all panels, and line "
                + panels.get(0).panel().row() + " gives panels their own; give one or the other"));
            return byPanel(lengths, names);
        }
        Cell first = everywhere.get(0);
        everywhere.stream().skip(1).forEach(cell -> problems.inCell(cell, "", "thickness", "is a second one, after "
            + first.quoted() + " in line " + first.row() + "; give one, or each panel its own"));
        return metres(lengths, first, "").map(SkinThickness.Everywhere::new);
    }

    private Optional<SkinThickness> byPanel(Lengths lengths, List<PanelName> names) {
        Map<PanelName, Optional<Double>> given = new LinkedHashMap<>();
        names.forEach(name -> given.put(name, Optional.empty()));
        List<PanelName> missing = new ArrayList<>(names);
        for (OfPanel each : panels) {
            Optional<Double> metres = metres(lengths, each.thickness(), each.panel().text());
            Optional<PanelName> panel = panel(each.panel(), names);
            if (panel.isPresent() && !missing.remove(panel.get())) {
                problems.inCell(each.panel(), "", "", "is given a second time; give each panel one thickness");
            }
            panel.ifPresent(name -> given.put(name, metres));
        }
        missing.forEach(name -> problems.inRow(panels.get(0).panel().row(), "", "no thickness is given for "
            + name.words() + "; the panels of this table are " + words(names)));
        if (given.values().stream().anyMatch(Optional::isEmpty)) {
            return Optional.empty();
        }
        return Optional.of(new SkinThickness.ByPanel(given.entrySet().stream()
            .map(each -> new SkinThickness.OfPanel(each.getKey(), each.getValue().get())).toList()));
    }

    private Optional<PanelName> panel(Cell cell, List<PanelName> names) {
        Optional<PanelName> panel = names.stream()
            .filter(name -> Labels.key(name.words()).equals(Labels.key(cell.text()))).findFirst();
        if (panel.isEmpty() && !names.isEmpty()) {
            problems.inCell(cell, "", "", "is no panel of this table; they are " + words(names));
        }
        return panel;
    }

    private static String words(List<PanelName> names) {
        return names.stream().map(PanelName::words).collect(Collectors.joining(", "));
    }

    private Optional<Double> metres(Lengths lengths, Cell cell, String place) {
        if (cell.isBlank()) {
            problems.inCell(cell, place, "thickness", "is blank; write it, " + EXAMPLE);
            return Optional.empty();
        }
        Optional<Double> metres = lengths.place(cell, place, "thickness");
        if (metres.isPresent() && !(metres.get() > 0 && metres.get() <= MOST)) {
            problems.inCell(cell, place, "thickness", "is " + (metres.get() > 0 ? "more than 200 mm" : "not more than 0")
                + "; write how thick the skin is, " + EXAMPLE);
            return Optional.empty();
        }
        return metres;
    }
}
