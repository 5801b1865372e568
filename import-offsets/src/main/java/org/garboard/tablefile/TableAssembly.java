package org.garboard.tablefile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.garboard.offsets.Ends;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.TableFault;
import org.garboard.offsets.TableFaults;
import org.garboard.offsets.TableLine;

/** Makes the table of the cells, and brings the faults seen in the table back to the cells they come from. */
final class TableAssembly {
    /** A surface could be drawn, straight from one to the other; a place for a cut cannot be judged on it. */
    private static final int FEW_STATIONS = 2;

    private final Layout layout;
    private final Headings headings;
    private final Problems problems;
    private final Lengths lengths;
    private final List<Strip> strips = new ArrayList<>();
    private final List<TableLine> lines = new ArrayList<>();
    private final Map<String, String> spellings = new LinkedHashMap<>();
    private StationOrder order;
    private OffsetTable table;
    private boolean allInBlocks = true;
    private boolean readable;

    private TableAssembly(Layout layout, Headings headings, Problems problems) {
        this.layout = layout;
        this.headings = headings;
        this.problems = problems;
        this.lengths = new Lengths(headings.unit().orElse(TableUnit.METRE), problems);
    }

    /**
     * The table as far as it can be read; only without problems is it whole. Where the unit is not told,
     * which is a problem, cells are looked at as if they were metres, but no lengths are compared.
     */
    static TableAssembly of(Layout layout, Headings headings, Problems problems) {
        TableAssembly assembly = new TableAssembly(layout, headings, problems);
        assembly.order = new StationPlaces(layout, headings, assembly.lengths, problems).stations();
        if (assembly.order.stations().size() == FEW_STATIONS) {
            problems.inFile("the table has 2 stations; three are the least, for between two nothing tells"
                + " how the skin curves along the boat");
        }
        layout.lines().forEach(assembly::line);
        OffsetTable outside = new OffsetTable(headings.title(), SkinSurface.OUTSIDE_OF_SKIN, assembly.lengths.leastCount(),
            assembly.order.stations(), assembly.lines);
        SkinSurface surface = headings.surface().of(assembly.lengths, outside);
        Ends ends = headings.ends().read(assembly.lengths, assembly.order, outside, surface);
        assembly.lengths.compareMarks();
        assembly.table = new OffsetTable(outside.title(), surface, outside.leastCount(), outside.stations(), outside.lines(), ends);
        assembly.readable = problems.isEmpty();
        if (assembly.allInBlocks) {
            assembly.report(TableFaults.of(assembly.table).stream()
                .filter(fault -> headings.unit().isPresent() || fault.station().isEmpty())
                .toList());
        }
        return assembly;
    }

    /** As far as it could be read. */
    OffsetTable table() {
        return table;
    }

    /** The table with its cells; none if some of them, or the headings, could not be read. */
    Optional<WrittenTable> written(GridKind grid, String file) {
        return readable
            ? headings.unit().map(unit -> new WrittenTable(grid, file, unit, layout.stations(), strips, order, table))
            : Optional.empty();
    }

    private void line(Strip strip) {
        Labels.Line label = Labels.line(strip.label().text()).orElseThrow();
        if (strip.block().isEmpty()) {
            allInBlocks = false;
            problems.inCell(strip.label(), "", "", "stands under no block heading; write HEIGHTS ABOVE BASE"
                + " or HALF-BREADTHS FROM CENTRELINE above it");
        }
        Optional<Double> level = level(strip.label(), label);
        Optional<Measure> block = strip.block();
        List<Entry> entries = entries(strip, block);
        if (block.isPresent() && level.isPresent()) {
            strips.add(strip);
            lines.add(new TableLine(label.kind(), spelling(strip.label().text()), level.get(), block.get(), entries));
        }
    }

    private Optional<Double> level(Cell cell, Labels.Line label) {
        if (label.kind() != LineKind.WATERLINE && label.kind() != LineKind.BUTTOCK) {
            return Optional.of(0.0);
        }
        String meaning = label.kind() == LineKind.WATERLINE ? "height" : "distance";
        if (label.level().isEmpty()) {
            problems.inCell(cell, "", "", "has no " + meaning + " behind it; write one, as in WL 1-0-0 or Buttock 300 mm");
            return Optional.empty();
        }
        return lengths.place(new Cell(cell.row(), cell.column(), label.level()), cell.text(), meaning);
    }

    private List<Entry> entries(Strip strip, Optional<Measure> block) {
        String meaning = block.map(measure -> measure == Measure.HEIGHT ? "height" : "half-breadth").orElse("offset");
        List<Entry> entries = new ArrayList<>();
        // a block with more stations than the first has been told of
        int stations = Math.min(strip.cells().size(), layout.stations().size());
        for (int i = 0; i < stations; i++) {
            Cell cell = strip.cells().get(i);
            if (!cell.isBlank()) {
                int station = order.index(i);
                lengths.offset(cell, place(i, strip), meaning)
                    .ifPresent(metres -> entries.add(new Entry(station, metres)));
            }
        }
        entries.sort(Comparator.comparingInt(Entry::station));
        return entries;
    }

    private String place(int station, Strip strip) {
        return StationPlaces.place(layout.stations().get(station)) + ", " + strip.label().text();
    }

    /** Rows of one line share the spelling of the first. */
    private String spelling(String label) {
        return spellings.computeIfAbsent(Labels.key(label), key -> label);
    }

    private void report(List<TableFault> faults) {
        faults.forEach(this::report);
        if (!faults.isEmpty() && problems.isEmpty()) {
            throw new IllegalStateException("fault not reported: " + faults.get(0));
        }
    }

    private void report(TableFault fault) {
        if (fault.line().isEmpty() && fault.station().isEmpty()) {
            problems.inFile(fault.reason());
        } else if (fault.line().isEmpty()) {
            reportStation(order.index(fault.station().getAsInt()), fault.reason());
        } else {
            Strip strip = strips.get(fault.line().getAsInt());
            if (fault.station().isEmpty()) {
                problems.inCell(strip.label(), "", "", "stands here: " + fault.reason());
            } else {
                reportCell(strip, order.index(fault.station().getAsInt()), fault.reason());
            }
        }
    }

    /** At the station's name if that is there twice, otherwise at its distance, if the row of distances goes so far. */
    private void reportStation(int station, String reason) {
        Cell name = layout.stations().get(station);
        boolean repeated = layout.stations().stream().filter(other -> other.text().equals(name.text())).count() > 1;
        Optional<Cell> distance = layout.distances().map(Strip::cells).filter(cells -> station < cells.size()).map(cells -> cells.get(station));
        Cell cell = repeated ? name : distance.orElse(name);
        problems.inCell(cell, StationPlaces.place(name), "", "stands here: " + reason);
    }

    /** A cell that is unreadable, or cut off with the end of its row, has been reported as that. */
    private void reportCell(Strip strip, int station, String reason) {
        if (station < strip.cells().size() && !problems.isKnown(strip.cells().get(station))) {
            problems.inCell(strip.cells().get(station), place(station, strip), "", "stands here: " + reason);
        }
    }
}
