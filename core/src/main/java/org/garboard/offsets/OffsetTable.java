package org.garboard.offsets;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A table of offsets as it was printed, in metres.
 *
 * @param title the boat, as the heading names it
 * @param surface the surface it is drawn to
 * @param leastCount the smallest step of its notation [m]: 1/8 in, 1 mm, the last decimal
 * @param stations by rising x; two at one x are the forward and the after face of a step across the bottom
 * @param lines the rows of both blocks, in the order of the file
 * @param ends where its lengths end, as far as they do not end square across at their stations
 */
public record OffsetTable(String title, SkinSurface surface, double leastCount,
                          List<Station> stations, List<TableLine> lines, Ends ends) implements HullOffsets {
    public OffsetTable {
        stations = List.copyOf(stations);
        lines = List.copyOf(lines);
    }

    /** A table whose lengths all end square across. */
    public OffsetTable(String title, SkinSurface surface, double leastCount,
                       List<Station> stations, List<TableLine> lines) {
        this(title, surface, leastCount, stations, lines, Ends.SQUARE);
    }

    @Override
    public List<PanelOffsets> panels() {
        return PanelOffsets.of(this);
    }

    @Override
    public List<LineKind> kinds() {
        return NamedLine.fromKeelOutward(this).stream().map(NamedLine::kind).toList();
    }

    @Override
    public Reading reading(SectionPoint point) {
        return lines.get(point.line()).measure() == Measure.HEIGHT ? Reading.UP : Reading.OUT;
    }

    @Override
    public List<Double> levels(LineKind kind) {
        return lines.stream().filter(line -> line.kind() == kind).map(TableLine::level).distinct().toList();
    }

    @Override
    public String word() {
        return "table";
    }

    @Override
    public String document() {
        return "Table of offsets";
    }

    @Override
    public String comesFrom() {
        return "a table of offsets, not from this boat";
    }

    @Override
    public String beyond() {
        return "off";
    }

    /** A table has its boat from end to end. */
    @Override
    public Set<OpenEnd> openEnds() {
        return Set.of();
    }

    @Override
    public List<StrakeEdges> strakes() {
        return StrakeRows.of(this).stream().map(rows -> rows.edges(this)).flatMap(Optional::stream).toList();
    }

    @Override
    public Optional<KeelRows> keelBelow() {
        return KeelRows.of(this);
    }

    @Override
    public List<String> remarks() {
        return List.of();
    }

    @Override
    public String origin() {
        return stations.stream().filter(station -> station.x() == 0).findFirst()
            .map(station -> "station " + station.name()).orElse("the origin");
    }

    @Override
    public OffsetTable part(StationRun run) {
        if (run.from() == 0 && run.to() == stations.size()) {
            return this;
        }
        return new OffsetTable(title, surface, leastCount, stations.subList(run.from(), run.to()),
            lines.stream().map(line -> line.part(run)).toList());
    }
}
