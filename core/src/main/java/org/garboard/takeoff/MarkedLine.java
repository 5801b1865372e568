package org.garboard.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.garboard.offsets.LineKind;

/**
 * A line of the hull that was marked, and its points.
 *
 * @param stations for each station the indexes of its points: one, or one of each side; none where it was not measured
 */
record MarkedLine(String name, LineKind kind, List<List<Integer>> stations) {
    MarkedLine {
        stations = stations.stream().map(List::copyOf).toList();
    }

    /** Lines in the order in which the list first names them. */
    static List<MarkedLine> of(TakeOff takeOff) {
        Map<Mark, List<List<Integer>>> found = new LinkedHashMap<>();
        for (int i = 0; i < takeOff.points().size(); i++) {
            TakenPoint point = takeOff.points().get(i);
            if (point.mark().line().isPresent()) {
                found.computeIfAbsent(point.mark(), mark -> empty(takeOff.stations().size())).get(point.station()).add(i);
            }
        }
        return found.entrySet().stream()
            .map(line -> new MarkedLine(line.getKey().name(), line.getKey().line().orElseThrow(), line.getValue()))
            .toList();
    }

    private static List<List<Integer>> empty(int stations) {
        List<List<Integer>> lists = new ArrayList<>();
        for (int j = 0; j < stations; j++) {
            lists.add(new ArrayList<>());
        }
        return lists;
    }

    /**
     * The line whose points lie on the centreline, or on both sides of it: the keel; of a boat with a keel below her
     * skin the rabbet, which is a line of its own besides.
     */
    static Optional<MarkedLine> middle(List<MarkedLine> lines) {
        return first(lines, LineKind.KEEL).or(() -> first(lines, LineKind.RABBET)
            .map(rabbet -> new MarkedLine(rabbet.name(), LineKind.KEEL, rabbet.stations())));
    }

    /** The lowest line on the centreline: the bottom of a keel below the skin, else the keel. */
    static Optional<MarkedLine> lowest(List<MarkedLine> lines) {
        return first(lines, LineKind.KEEL_BOTTOM).or(() -> middle(lines));
    }

    boolean isAtEveryStation() {
        return stations.stream().noneMatch(List::isEmpty);
    }

    static Optional<MarkedLine> first(List<MarkedLine> lines, LineKind kind) {
        return lines.stream().filter(line -> line.kind() == kind).findFirst();
    }

    /** What bounds the skin outward: the sheer, the edge of what was measured, or no line but the chines. */
    static Optional<MarkedLine> outer(List<MarkedLine> lines) {
        return first(lines, LineKind.SHEER).filter(MarkedLine::isAtEveryStation)
            .or(() -> first(lines, LineKind.EDGE).filter(MarkedLine::isAtEveryStation));
    }
}
