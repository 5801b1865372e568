package org.garboard.takeoff;

import java.util.List;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hull.Panel;
import org.garboard.hull.PanelSection;
import org.garboard.hull.PanelSection.Coordinate;

/**
 * Moves points fore or aft along a drawn skin into their stations: a point on a line along that line, any other
 * along the skin at one share of the way from line to line. What it lies beside the skin, it keeps. Points of a keel
 * below the skin, or of a strake, stay: they keep an x of their own.
 */
final class IntoStations {
    private static final int LOOKS = 64;
    private static final int HALVINGS = 40;

    private final TakeOff takeOff;
    private final Hull hull;
    private final List<MarkedLine> lines;
    private final double[] stations;

    /** @param stations x of each [m] */
    IntoStations(TakeOff takeOff, Hull hull, List<MarkedLine> lines, double[] stations) {
        this.takeOff = takeOff;
        this.hull = hull;
        this.lines = lines;
        this.stations = stations;
    }

    /** By point: what the move adds to half-breadth and height [m]. */
    double[][] moves(PlacedPoints placed) {
        double[][] moves = new double[takeOff.points().size()][];
        for (int i = 0; i < moves.length; i++) {
            moves[i] = move(i, placed.x(i), stations[takeOff.points().get(i).station()], placed);
        }
        return moves;
    }

    private double[] move(int point, double from, double to, PlacedPoints placed) {
        int station = takeOff.points().get(point).station();
        if (!takeOff.points().get(point).mark().isOnSkin()) {
            return new double[] {0, 0};
        }
        // from outside in: a rabbet's points are those of the centreline too
        for (int l = lines.size() - 1; l >= 0; l--) {
            if (lines.get(l).stations().get(station).contains(point)) {
                HullLine line = hull.lines().get(l);
                return new double[] {line.y(to) - line.y(from), line.z(to) - line.z(from)};
            }
        }
        double[] best = {0, 0};
        double least = Double.POSITIVE_INFINITY;
        for (Panel panel : hull.panels()) {
            PanelSection section = new PanelSection(panel, from);
            double v = nearest(section, placed.measuredY(point), placed.measuredZ(point));
            double distance = distance(section, v, placed.measuredY(point), placed.measuredZ(point));
            if (distance < least) {
                least = distance;
                PanelSection there = new PanelSection(panel, to);
                best = new double[] {there.value(Coordinate.Y, v) - section.value(Coordinate.Y, v),
                    there.value(Coordinate.Z, v) - section.value(Coordinate.Z, v)};
            }
        }
        return best;
    }

    private static double nearest(PanelSection section, double y, double z) {
        double best = 0;
        for (int i = 1; i <= LOOKS; i++) {
            double v = (double) i / LOOKS;
            best = distance(section, v, y, z) < distance(section, best, y, z) ? v : best;
        }
        double low = Math.max(0, best - 1.0 / LOOKS);
        double high = Math.min(1, best + 1.0 / LOOKS);
        for (int i = 0; i < HALVINGS; i++) {
            double third = (high - low) / 3;
            if (distance(section, low + third, y, z) < distance(section, high - third, y, z)) {
                high -= third;
            } else {
                low += third;
            }
        }
        return 0.5 * (low + high);
    }

    private static double distance(PanelSection section, double v, double y, double z) {
        return Math.hypot(section.value(Coordinate.Y, v) - y, section.value(Coordinate.Z, v) - z);
    }
}
