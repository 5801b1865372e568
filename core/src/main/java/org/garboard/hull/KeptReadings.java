package org.garboard.hull;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.PanelSection.Coordinate;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.PanelOffsets;
import org.garboard.offsets.SectionPoint;
import org.garboard.offsets.Station;

/**
 * Looks at a hull once drawn: does every section keep as near to the table's points as was promised? The
 * solvers stop after some rounds, and a strip that is pinched to nothing has no shape, so a table that nobody
 * thought of must end here and not on a sheet.
 */
final class KeptReadings {
    /** How near a section that goes "through" a point passes it [m]. */
    private static final double THROUGH = 1e-5;

    private final HullOffsets offsets;
    private final double within;

    /** @param within half the least count, or 0 where the hull goes through every point [m] */
    KeptReadings(HullOffsets offsets, double within) {
        this.offsets = offsets;
        this.within = Math.max(within, THROUGH);
    }

    /**
     * @param drawn between the named lines, from the keel outward
     * @throws HullNotDrawn at the first point, from the keel outward and forward to aft, that they stray from
     */
    void check(List<Panel> drawn) {
        List<PanelOffsets> panels = offsets.panels();
        for (int p = 0; p < panels.size(); p++) {
            for (int j = 0; j < offsets.stations().size(); j++) {
                check(drawn.get(p), offsets.stations().get(j), panels.get(p).stations().get(j));
            }
        }
    }

    private void check(Panel panel, Station station, List<SectionPoint> points) {
        PanelSection section = new PanelSection(panel, station.x());
        int last = points.size() - 1;
        for (int i = 0; i <= last; i++) {
            SectionPoint point = points.get(i);
            double off = i == 0 ? off(panel.lower(), station, point)
                    : i == last ? off(panel.upper(), station, point) : off(section, point);
            if (!(off <= within)) {
                throw HullNotDrawn.offReading(station, point, off, within);
            }
        }
    }

    private static double off(HullLine line, Station station, SectionPoint point) {
        return Math.max(Math.abs(line.y(station.x()) - point.y()), Math.abs(line.z(station.x()) - point.z()));
    }

    /** How far off as the point was read; where the section runs along that way, the least distance [m]. */
    private double off(PanelSection section, SectionPoint point) {
        double up = along(section, Coordinate.Y, point.y(), Coordinate.Z, point.z());
        double out = along(section, Coordinate.Z, point.z(), Coordinate.Y, point.y());
        double off = switch (offsets.reading(point)) {
            case UP -> up;
            case OUT -> out;
            case UP_AND_OUT -> 1 / (1 / up + 1 / out);
        };
        return off <= within ? off : Math.min(off, distance(section.points(THROUGH / 10), point));
    }

    /** Distance to the section from a point, going one way. */
    private static double along(PanelSection section, Coordinate level, double at, Coordinate way, double from) {
        double least = Double.POSITIVE_INFINITY;
        for (double v : section.crossings(level, at)) {
            least = Math.min(least, Math.abs(section.value(way, v) - from));
        }
        return least;
    }

    private static double distance(List<Vector3D> chords, SectionPoint point) {
        Vector3D at = Vector3D.of(chords.get(0).getX(), point.y(), point.z());
        double least = at.distance(chords.get(0));
        for (int i = 1; i < chords.size(); i++) {
            Vector3D from = chords.get(i - 1);
            Vector3D chord = chords.get(i).subtract(from);
            double square = chord.normSq();
            double share = square == 0 ? 0 : Math.max(0, Math.min(1, at.subtract(from).dot(chord) / square));
            least = Math.min(least, at.distance(from.add(chord.multiply(share))));
        }
        return least;
    }
}
