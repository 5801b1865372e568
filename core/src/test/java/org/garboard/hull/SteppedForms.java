package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.offsets.Ends;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.Station;
import org.garboard.offsets.StemLine;
import org.garboard.offsets.StepLine;
import org.garboard.offsets.TableLine;
import org.garboard.offsets.TransomLine;

/** Stepped and raked closed forms. */
public final class SteppedForms {
    /** Tangent of the deadrise of {@link #prism}. */
    public static final double RISE = 0.25;
    /** Height of its step [m]. */
    public static final double STEP = 0.05;
    /** x of its step [m]. */
    public static final double AT = 5;
    /** Its length [m]. */
    public static final double LENGTH = 9;

    private SteppedForms() {
    }

    /** V bottoms z = y / 4, and that raised by the step abaft of it; chine y = 1, sheer (1.2, 1.5). */
    public static OffsetTable prism() {
        return joined(length(0, 0, 2, 3, 4, AT), length(STEP, AT, 6, 7, LENGTH));
    }

    /** The same bottom without the step. */
    public static OffsetTable plain() {
        return length(0, 0, 2, 4, 6, LENGTH);
    }

    private static OffsetTable length(double raised, double... stations) {
        return new Forms(0, stations).keel(x -> raised)
            .named(LineKind.CHINE, "Chine", x -> 1, x -> raised + RISE)
            .named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 1.5).table();
    }

    /** Tables with the same rows one behind the other, each from where the one before ends. */
    public static OffsetTable joined(OffsetTable... parts) {
        List<Station> stations = new ArrayList<>();
        List<TableLine> lines = new ArrayList<>();
        for (int l = 0; l < parts[0].lines().size(); l++) {
            List<Entry> entries = new ArrayList<>();
            int before = 0;
            for (OffsetTable part : parts) {
                int shift = before;
                part.lines().get(l).entries().forEach(entry -> entries.add(new Entry(entry.station() + shift, entry.value())));
                before += part.stations().size();
            }
            TableLine first = parts[0].lines().get(l);
            lines.add(new TableLine(first.kind(), first.name(), first.level(), first.measure(), entries));
        }
        for (OffsetTable part : parts) {
            part.stations().forEach(station -> stations.add(new Station(String.valueOf(stations.size()), station.x())));
        }
        return new OffsetTable("closed form", parts[0].surface(), parts[0].leastCount(), stations, lines);
    }

    public static OffsetTable with(OffsetTable table, StepLine... steps) {
        return new OffsetTable(table.title(), table.surface(), table.leastCount(), table.stations(), table.lines(),
            new Ends(List.of(steps), Optional.empty()));
    }

    public static OffsetTable with(OffsetTable table, StemLine stem) {
        return new OffsetTable(table.title(), table.surface(), table.leastCount(), table.stations(), table.lines(),
            new Ends(List.of(), Optional.empty(), Optional.of(stem)));
    }

    public static OffsetTable with(OffsetTable table, TransomLine transom) {
        return new OffsetTable(table.title(), table.surface(), table.leastCount(), table.stations(), table.lines(),
            new Ends(List.of(), Optional.of(transom)));
    }
}
