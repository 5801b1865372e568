package org.garboard.cli;

import java.util.List;
import java.util.stream.IntStream;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.lines.ExpandedSection;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.PanelOffsets;
import org.garboard.offsets.Station;

/**
 * What stands at one station.
 *
 * @param name as the table prints it
 * @param x aft of the table's origin [m]
 * @param points of the skin that the table gives there, those of the named lines once
 * @param girth from keel to sheer along the outside of the skin [m]; NaN where it is not drawn
 * @param chordDeadrise from the keel line, or the top of a box keel, straight to the outermost chine [rad]; NaN without a chine,
 *     where it meets the keel, or where the outside is not drawn
 */
record StationFigures(String name, double x, int points, double girth, double chordDeadrise) {
    static List<StationFigures> of(HullOffsets table, Hull hull) {
        List<PanelOffsets> panels = table.panels();
        return IntStream.range(0, table.stations().size())
            .mapToObj(i -> of(table.skinStations().get(i), points(panels, i), hull))
            .toList();
    }

    private static StationFigures of(Station station, int points, Hull hull) {
        boolean drawn = station.x() >= hull.forwardEnd() && station.x() <= hull.afterEnd();
        return new StationFigures(station.name(), station.x(), points, drawn ? girth(hull, station.x()) : Double.NaN,
            drawn ? chordDeadrise(hull, station.x()) : Double.NaN);
    }

    /** Every panel counts its two edges; neighbours share one. */
    private static int points(List<PanelOffsets> panels, int station) {
        int count = 1;
        for (PanelOffsets panel : panels) {
            count += panel.stations().get(station).size() - 1;
        }
        return count;
    }

    private static double girth(Hull hull, double x) {
        double[] girths = ExpandedSection.girths(hull, x);
        return girths[girths.length - 1];
    }

    private static double chordDeadrise(Hull hull, double x) {
        HullLine edge = hull.bottomEdge();
        HullLine keel = bottomStart(hull);
        double out = edge.y(x) - keel.y(x);
        boolean none = edge.kind() != LineKind.CHINE || !(out > 0);
        return none ? Double.NaN : Math.atan2(edge.z(x) - keel.z(x), out);
    }

    /** A box keel stands below the bottom, and a keel below the rabbet hangs from it. */
    private static HullLine bottomStart(Hull hull) {
        return hull.lines().stream().filter(line -> line.kind() == LineKind.KEEL_TOP).findFirst()
            .orElse(hull.lines().get(hull.skinLine()));
    }
}
