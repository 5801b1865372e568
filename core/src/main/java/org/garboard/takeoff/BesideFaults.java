package org.garboard.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.garboard.offsets.LineKind;

/** What is missing or too much of a rabbet, the keel below it, and lifting strakes, before anything is reckoned from them. */
final class BesideFaults {
    private final TakeOff takeOff;
    private final List<MarkedLine> lines;
    private final List<TakeOffFault> faults = new ArrayList<>();

    private BesideFaults(TakeOff takeOff, List<MarkedLine> lines) {
        this.takeOff = takeOff;
        this.lines = lines;
    }

    static List<TakeOffFault> of(TakeOff takeOff, List<MarkedLine> lines) {
        BesideFaults check = new BesideFaults(takeOff, lines);
        MarkedLine.first(lines, LineKind.RABBET).ifPresent(check::rabbet);
        MarkedLine.first(lines, LineKind.KEEL_BOTTOM).ifPresent(check::bottom);
        lines.forEach(check::strake);
        return check.faults;
    }

    private void rabbet(MarkedLine rabbet) {
        for (LineKind other : List.of(LineKind.KEEL, LineKind.HALF_SIDING, LineKind.KEEL_TOP)) {
            MarkedLine.first(lines, other).ifPresent(line -> at(firstRow(line), Seen.MARK, line.name() + " is given beside "
                + rabbet.name() + "; a keel below the skin has Rabbet and Keel bottom, one that is skin has Keel, and a box keel"
                + " Half-siding and Top of keel besides"));
        }
        for (int j = 0; j < rabbet.stations().size(); j++) {
            if (rabbet.stations().get(j).size() == 1) {
                at(row(rabbet, j), Seen.SIDE, rabbet.name() + " is measured on one side alone at " + station(j)
                    + "; measure it to port and to starboard, for the centreline lies half-way between");
            }
        }
    }

    private void bottom(MarkedLine bottom) {
        if (MarkedLine.first(lines, LineKind.RABBET).isEmpty()) {
            at(firstRow(bottom), Seen.MARK, bottom.name() + " is given, but not where the skin meets the keel; mark that Rabbet, to port and"
                + " to starboard at every station, instead of Keel");
        }
        stretch(bottom, "the keel");
        long corners = bottom.stations().stream().filter(points -> points.size() == 2).count();
        for (int j = 0; j < bottom.stations().size(); j++) {
            if (bottom.stations().get(j).size() == 1 && corners > 0) {
                at(row(bottom, j), Seen.SIDE, bottom.name() + " is one point at " + station(j) + ", and its two corners elsewhere; measure"
                    + " both corners at all its stations, or its middle at all");
            }
        }
    }

    private void strake(MarkedLine line) {
        if (!isStrake(line)) {
            return;
        }
        String name = BesideSkin.strakeName(line);
        Optional<MarkedLine> other = lines.stream().filter(each -> isStrake(each) && each.kind() != line.kind()
            && BesideSkin.strakeName(each).equalsIgnoreCase(name)).findFirst();
        if (other.isEmpty()) {
            at(firstRow(line), Seen.MARK, line.name() + " stands alone; measure both edges of " + name + ", and mark them \"" + name
                + ", inner\" where its face leaves the skin and \"" + name + ", outer\" at the corner that stands out");
            return;
        }
        if (line.kind() == LineKind.STRAKE_INNER) {
            stretch(line, name);
        }
        for (int j = 0; j < line.stations().size(); j++) {
            if (!line.stations().get(j).isEmpty() && other.get().stations().get(j).isEmpty()) {
                at(row(line, j), Seen.MARK, line.name() + " is measured at " + station(j) + ", and " + other.get().name()
                    + " is not; measure both or neither");
            }
        }
    }

    /** From where it begins to where it ends, two stations at least, none left out. */
    private void stretch(MarkedLine line, String what) {
        int[] given = IntStream.range(0, line.stations().size()).filter(j -> !line.stations().get(j).isEmpty()).toArray();
        if (given.length < 2) {
            at(firstRow(line), Seen.MARK, line.name() + " is measured at one station; two are the least");
        }
        for (int i = 1; i < given.length; i++) {
            for (int gap = given[i - 1] + 1; gap < given[i]; gap++) {
                faults.add(TakeOffFault.inWhole(line.name() + " is not measured at " + station(gap) + ", and is forward and aft of it;"
                    + " measure it at every station from where " + what + " begins to where it ends"));
            }
        }
    }

    private static boolean isStrake(MarkedLine line) {
        return line.kind() == LineKind.STRAKE_INNER || line.kind() == LineKind.STRAKE_OUTER;
    }

    private String station(int station) {
        return "station " + takeOff.stations().get(station).name();
    }

    private int row(MarkedLine line, int station) {
        return takeOff.points().get(line.stations().get(station).get(0)).row();
    }

    private int firstRow(MarkedLine line) {
        return line.stations().stream().flatMap(List::stream).mapToInt(point -> takeOff.points().get(point).row()).min().orElseThrow();
    }

    private void at(int row, Seen seen, String reason) {
        faults.add(TakeOffFault.at(row, seen, reason));
    }
}
