package org.garboard.offsets;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The table's points on the strip of skin between two neighbouring named lines.
 *
 * @param lower name of the line nearer the keel
 * @param upper name of the line nearer the sheer
 * @param stations for each station of the table its points, from the lower line to the upper,
 *     both ends included
 */
public record PanelOffsets(String lower, String upper, List<List<SectionPoint>> stations) {
    public PanelOffsets {
        stations = stations.stream().map(List::copyOf).toList();
    }

    /**
     * The panels of a table without faults, from the keel to the sheer: keel, flat keel's edge where the
     * table gives a half-siding, chines from the keel outward, sheer. A point of a waterline or buttock
     * within half the least count (0.1 mm at least) of another is that point, and the row that comes first
     * in the table, named lines before all, stands for it.
     *
     * @throws IllegalArgumentException if {@link TableFaults#of} finds a fault
     */
    public static List<PanelOffsets> of(OffsetTable table) {
        List<TableFault> faults = TableFaults.of(table);
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException("table \"" + table.title() + "\" has " + faults.size()
                + " fault(s); the first: " + faults.get(0).reason());
        }
        List<NamedLine> lines = NamedLine.fromKeelOutward(table);
        List<StationSection> sections = IntStream.range(0, table.stations().size())
            .mapToObj(station -> StationSection.at(table, lines, station))
            .toList();
        return IntStream.range(0, lines.size() - 1)
            .mapToObj(panel -> new PanelOffsets(lines.get(panel).name(), lines.get(panel + 1).name(),
                sections.stream().map(section -> section.panel(panel)).toList()))
            .toList();
    }
}
