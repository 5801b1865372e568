package org.garboard.slips;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;

/**
 * A boat of closed form: named lines as functions of x, and between two of them a section that stands
 * {@code 4 t (1 - t)} times its bulge off the straight line.
 *
 * @param stations x of each [m]
 * @param lines from the keel outward
 * @param bulges of the panels, over the length of the straight line; positive is outward
 */
record FormulaBoat(double[] stations, List<Line> lines, List<DoubleUnaryOperator> bulges) {
    private static final int SCAN = 100;
    /** Loftsmen leave out what falls this near a line [m]. */
    private static final double CLEAR = 0.025;

    /** A named line: half-breadth and height over x. */
    record Line(LineKind kind, String name, DoubleUnaryOperator y, DoubleUnaryOperator z) {
        double at(double x, int coordinate) {
            return (coordinate == 0 ? y : z).applyAsDouble(x);
        }
    }

    double length() {
        return stations[stations.length - 1];
    }

    /** {y, z} of a panel, t from 0 at its lower line to 1 at its upper. */
    private double[] point(int panel, double x, double t) {
        Line lower = lines.get(panel);
        Line upper = lines.get(panel + 1);
        double chordY = upper.at(x, 0) - lower.at(x, 0);
        double chordZ = upper.at(x, 1) - lower.at(x, 1);
        double off = 4 * t * (1 - t) * bulges.get(panel).applyAsDouble(x);
        return new double[] {lower.at(x, 0) + t * chordY + off * chordZ, lower.at(x, 1) + t * chordZ - off * chordY};
    }

    /** Whether a yard could build it: nothing on the other side of the centreline or below the keel, chines fall aft. */
    boolean isBuildable() {
        for (int j = 0; j < stations.length; j++) {
            double x = stations[j];
            for (int l = 0; l < lines.size(); l++) {
                Line line = lines.get(l);
                boolean rises = line.kind == LineKind.CHINE && x < 0.4 * length() && line.at(stations[j + 1], 1) > line.at(x, 1);
                if (line.at(x, 0) < 0 || rises) {
                    return false;
                }
                for (int i = 1; i < SCAN && l + 1 < lines.size(); i++) {
                    double[] point = point(l, x, (double) i / SCAN);
                    if (point[0] < 0 || point[1] < lines.get(0).at(x, 1)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /** The other coordinate where a level is crossed, the nearest to the keel; NaN if nowhere or too near a line. */
    private double crossing(double x, double level, int levelOf) {
        for (int p = 0; p < bulges.size(); p++) {
            double before = point(p, x, 0)[levelOf] - level;
            for (int i = 1; i <= SCAN; i++) {
                double after = point(p, x, (double) i / SCAN)[levelOf] - level;
                if (before < 0 != after < 0) {
                    double[] found = bisect(p, x, level, levelOf, (i - 1.0) / SCAN, (double) i / SCAN);
                    return isClear(x, found) ? found[1 - levelOf] : Double.NaN;
                }
                before = after;
            }
        }
        return Double.NaN;
    }

    private double[] bisect(int panel, double x, double level, int levelOf, double from, double to) {
        boolean below = point(panel, x, from)[levelOf] < level;
        double low = from;
        double high = to;
        for (int k = 0; k < 50; k++) {
            double middle = (low + high) / 2;
            if (point(panel, x, middle)[levelOf] < level == below) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return point(panel, x, low);
    }

    private boolean isClear(double x, double[] point) {
        return lines.stream().noneMatch(line -> Math.hypot(point[0] - line.at(x, 0), point[1] - line.at(x, 1)) < CLEAR);
    }

    /**
     * @param step to which all values are rounded [m]
     * @param grid of which levels are whole multiples [m]
     */
    OffsetTable table(double step, double grid, int buttocks, int waterlines) {
        Line sheer = lines.get(lines.size() - 1);
        List<TableLine> rows = new ArrayList<>();
        for (int l = lines.size() - 1; l >= 0; l--) {
            if (lines.get(l).kind != LineKind.HALF_SIDING) {
                rows.add(named(lines.get(l), Measure.HEIGHT, step));
            }
        }
        double widest = DoubleStream.of(stations).map(x -> sheer.at(x, 0)).max().orElseThrow();
        for (double level : levels(widest, buttocks, grid)) {
            rows.add(row(LineKind.BUTTOCK, "Buttock " + level, level, Measure.HEIGHT, x -> crossing(x, level, 0), step));
        }
        for (int l = lines.size() - 1; l >= 1; l--) {
            rows.add(named(lines.get(l), Measure.HALF_BREADTH, step));
        }
        double highest = DoubleStream.of(stations).map(x -> sheer.at(x, 1)).max().orElseThrow();
        for (double level : levels(highest, waterlines, grid)) {
            rows.add(row(LineKind.WATERLINE, "WL " + level, level, Measure.HALF_BREADTH, x -> crossing(x, level, 1), step));
        }
        List<Station> named = new ArrayList<>();
        for (int j = 0; j < stations.length; j++) {
            named.add(new Station(String.valueOf(j), stations[j]));
        }
        return new OffsetTable("closed form", SkinSurface.OUTSIDE_OF_SKIN, step, named, rows);
    }

    private static double[] levels(double most, int count, double grid) {
        double apart = Math.max(1, Math.rint(most / (count + 0.6) / grid)) * grid;
        double[] levels = new double[count];
        for (int i = 0; i < count; i++) {
            levels[i] = (i + 1) * apart;
        }
        return levels;
    }

    private TableLine named(Line line, Measure measure, double step) {
        return row(line.kind, line.name, 0, measure, measure == Measure.HEIGHT ? line.z : line.y, step);
    }

    private TableLine row(LineKind kind, String name, double level, Measure measure, DoubleUnaryOperator value, double step) {
        List<Entry> entries = new ArrayList<>();
        for (int j = 0; j < stations.length; j++) {
            double exact = value.applyAsDouble(stations[j]);
            if (!Double.isNaN(exact)) {
                entries.add(new Entry(j, Math.rint(exact / step) * step));
            }
        }
        return new TableLine(kind, name, level, measure, entries);
    }
}
