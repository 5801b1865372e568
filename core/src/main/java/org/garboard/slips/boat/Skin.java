package org.garboard.slips.boat;

import java.util.Optional;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.TableLine;
import org.garboard.slips.fit.Across;
import org.garboard.slips.fit.Net;

/**
 * The surface at the stations as the last fit has it: named lines, and between two of them the straight line
 * across plus a bulge square to it, counted in the panel's widest line.
 */
final class Skin {
    static final int Y = 0;
    static final int Z = 1;
    private static final int SCAN = 48;
    private static final int BISECTIONS = 40;
    private static final double LEAST = 1e-9;

    private final Rows rows;
    private final Across[] across;
    private final int[] firstColumn;
    private final Net net;
    /** {y, z} by line and station. */
    private final double[][][] lines;
    private final double[][][] bulge;
    /** Which way and how far a bulge of 1 goes, {y, z} by panel and station. */
    private final double[][][] square;

    /**
     * @param named values of the named rows' columns at the stations [m]
     * @param points most that a station has in each panel; a panel without is straight across
     */
    Skin(Rows rows, double[][] named, int[] points) {
        this.rows = rows;
        this.across = new Across[rows.panels()];
        this.firstColumn = new int[rows.panels()];
        this.bulge = new double[rows.panels()][rows.stations()][0];
        this.square = new double[rows.panels()][rows.stations()][2];
        this.lines = new double[rows.lines()][rows.stations()][2];
        int columns = rows.namedColumns();
        for (int p = 0; p < across.length; p++) {
            firstColumn[p] = columns;
            if (points[p] > 0) {
                across[p] = new Across(points[p]);
                columns += across[p].columns();
                bulge[p] = new double[rows.stations()][across[p].columns()];
            }
        }
        this.net = new Net(rows.along(), columns);
        for (int j = 0; j < rows.stations(); j++) {
            for (int l = 0; l < lines.length; l++) {
                lines[l][j][Y] = rows.columnOfY(l) < 0 ? 0 : named[rows.columnOfY(l)][j];
                lines[l][j][Z] = named[rows.columnOfZ(l)][j];
            }
        }
        frames();
    }

    /** Takes over what a fit says; the bulges are then square to the new straight lines. */
    void take(double[] solution) {
        for (int j = 0; j < rows.stations(); j++) {
            for (int l = 0; l < lines.length; l++) {
                lines[l][j][Y] = rows.columnOfY(l) < 0 ? 0 : net.value(solution, j, rows.columnOfY(l));
                lines[l][j][Z] = net.value(solution, j, rows.columnOfZ(l));
            }
            for (int p = 0; p < across.length; p++) {
                for (int c = 0; c < bulge[p][j].length; c++) {
                    bulge[p][j][c] = net.value(solution, j, firstColumn[p] + c);
                }
            }
        }
        frames();
    }

    private void frames() {
        for (int p = 0; p < across.length; p++) {
            double widest = LEAST;
            for (int j = 0; j < rows.stations(); j++) {
                widest = Math.max(widest, Math.hypot(chord(p, j, Y), chord(p, j, Z)));
            }
            for (int j = 0; j < rows.stations(); j++) {
                square[p][j][Y] = -chord(p, j, Z) / widest;
                square[p][j][Z] = chord(p, j, Y) / widest;
            }
        }
    }

    Net net() {
        return net;
    }

    /** The splines of a panel's bulge; null where it is straight. */
    Across across(int panel) {
        return across[panel];
    }

    int firstColumn(int panel) {
        return firstColumn[panel];
    }

    double line(int line, int station, int coordinate) {
        return lines[line][station][coordinate];
    }

    double square(int panel, int station, int coordinate) {
        return square[panel][station][coordinate];
    }

    /** Poles of a panel's bulge at a station. */
    double bulge(int panel, int station, int column) {
        return bulge[panel][station][column];
    }

    double chord(int panel, int station, int coordinate) {
        return lines[panel + 1][station][coordinate] - lines[panel][station][coordinate];
    }

    double at(int panel, int station, double v, int coordinate) {
        return lines[panel][station][coordinate] + v * chord(panel, station, coordinate)
                + bulgeAt(panel, station, v, 0) * square[panel][station][coordinate];
    }

    /** Change with v. */
    double slope(int panel, int station, double v, int coordinate) {
        return chord(panel, station, coordinate)
                + bulgeAt(panel, station, v, 1) * square[panel][station][coordinate];
    }

    private double bulgeAt(int p, int station, double v, int order) {
        if (across[p] == null) {
            return 0;
        }
        double[] basis = new double[16];
        across[p].basis(v, basis);
        int first = across[p].firstColumn(v);
        double sum = 0;
        for (int k = 0; k < 4; k++) {
            if (first + k >= 0 && first + k < bulge[p][station].length) {
                sum += basis[order * 4 + k] * bulge[p][station][first + k];
            }
        }
        return sum;
    }

    /** A place on the skin at a station. */
    record Place(int panel, double v) {
    }

    /** Which coordinate a row's level fixes. */
    static int levelOf(TableLine row) {
        return row.kind() == LineKind.WATERLINE ? Z : Y;
    }

    /** Where a waterline or buttock crosses a station; of several places the one nearest to the reading. */
    Optional<Place> crossing(TableLine row, int station, double reading) {
        int level = levelOf(row);
        Optional<Place> nearest = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int p = 0; p < across.length; p++) {
            double before = at(p, station, 0, level) - row.level();
            for (int i = 1; i <= SCAN; i++) {
                double after = at(p, station, (double) i / SCAN, level) - row.level();
                if (before < 0 != after < 0) {
                    double v = bisect(p, station, level, row.level(), (i - 1.0) / SCAN, (double) i / SCAN);
                    double apart = Math.abs(at(p, station, v, 1 - level) - reading);
                    if (apart < least) {
                        least = apart;
                        nearest = Optional.of(new Place(p, v));
                    }
                }
                before = after;
            }
        }
        return nearest;
    }

    private double bisect(int panel, int station, int coordinate, double value, double from, double to) {
        boolean below = at(panel, station, from, coordinate) < value;
        double low = from;
        double high = to;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = 0.5 * (low + high);
            if (at(panel, station, middle, coordinate) < value == below) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /** Where a point falls on the straight line across, 0 at the lower line and 1 at the upper. */
    double drop(int panel, int station, double y, double z) {
        double cy = chord(panel, station, Y);
        double cz = chord(panel, station, Z);
        double length2 = cy * cy + cz * cz;
        return length2 > LEAST * LEAST
                ? ((y - lines[panel][station][Y]) * cy + (z - lines[panel][station][Z]) * cz) / length2 : 0.5;
    }

    /** The place whose fall on its straight line is nearest to a point. */
    Place nearest(int station, double y, double z) {
        Place nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (int p = 0; p < across.length; p++) {
            double v = Math.max(0, Math.min(1, drop(p, station, y, z)));
            double apart = Math.hypot(at(p, station, v, Y) - y, at(p, station, v, Z) - z);
            if (nearest == null || apart < least) {
                least = apart;
                nearest = new Place(p, v);
            }
        }
        return nearest;
    }
}
