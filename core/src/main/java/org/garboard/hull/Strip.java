package org.garboard.hull;

import java.util.List;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.Reading;
import org.garboard.offsets.SectionPoint;

/**
 * The table's points between two named lines, each seen from the straight line that joins the two at
 * its station: v along that line, 0 to 1, and w square to it, as a share of the strip's widest line.
 * Owns its arrays; hull frame, metres.
 */
final class Strip {
    /**
     * A reading taken along the skin tells almost nothing of where along it; below this sine its weight
     * grows no further. Our choice.
     */
    private static final double LEAST_SLANT = 0.02;

    private final double[][] lower;
    private final double[][] upper;
    private final double[] girth;
    private final double widest;
    private final double[][] v;
    private final double[][] w;
    private final Reading[][] readings;

    /**
     * @param lower {y, z} of the lower line at each station
     * @param upper the same of the upper line
     * @param points of each station, both lines' included and passed over
     * @param table knows which way each point was read
     */
    Strip(double[][] lower, double[][] upper, List<List<SectionPoint>> points, HullOffsets table) {
        int stations = lower.length;
        this.lower = lower;
        this.upper = upper;
        this.girth = new double[stations];
        double most = 0;
        for (int j = 0; j < stations; j++) {
            girth[j] = Math.hypot(upper[j][0] - lower[j][0], upper[j][1] - lower[j][1]);
            most = Math.max(most, girth[j]);
        }
        this.widest = most;
        this.v = new double[stations][];
        this.w = new double[stations][];
        this.readings = new Reading[stations][];
        for (int j = 0; j < stations; j++) {
            place(j, points.get(j), table);
        }
    }

    private void place(int station, List<SectionPoint> points, HullOffsets table) {
        int inner = points.size() - 2;
        v[station] = new double[inner];
        w[station] = new double[inner];
        readings[station] = new Reading[inner];
        for (int p = 0; p < inner; p++) {
            SectionPoint point = points.get(p + 1);
            v[station][p] = ((point.y() - lower[station][0]) * alongY(station)
                    + (point.z() - lower[station][1]) * alongZ(station)) / girth[station];
            w[station][p] = off(station, point.y(), point.z());
            readings[station][p] = table.reading(point);
        }
    }

    /** w of a point of a station's plane. */
    double off(int station, double y, double z) {
        return ((z - lower[station][1]) * alongY(station) - (y - lower[station][0]) * alongZ(station)) / scale(station);
    }

    /**
     * Change of a point's reading in the table [m] for a change of w under it.
     *
     * @param slope dw/dv of the section there
     */
    double readingPerW(int station, int point, double slope) {
        double share = slope * scale(station) / Math.max(girth[station], 1e-9);
        double wPerReading = readings[station][point].share(
                alongZ(station) + share * alongY(station), alongY(station) - share * alongZ(station));
        return scale(station) / Math.max(LEAST_SLANT, wPerReading);
    }

    /** Same for a point that is read straight up, on the keel. */
    double heightPerW(int station) {
        return scale(station) / Math.max(LEAST_SLANT, Math.abs(alongY(station)));
    }

    /** How far a place of w = 1 lies from the straight line, in y and z [m]. */
    double[] square(int station) {
        return new double[] {-scale(station) * alongZ(station), scale(station) * alongY(station)};
    }

    int stations() {
        return girth.length;
    }

    double[] v(int station) {
        return v[station];
    }

    double[] w(int station) {
        return w[station];
    }

    /** What a unit of w is worth at a station [m]; 1 m where the lines meet and w can only be 0. */
    double scale(int station) {
        return girth[station] > 0 ? girth[station] / widest : 1;
    }

    private double alongY(int station) {
        return girth[station] > 0 ? (upper[station][0] - lower[station][0]) / girth[station] : 1;
    }

    private double alongZ(int station) {
        return girth[station] > 0 ? (upper[station][1] - lower[station][1]) / girth[station] : 0;
    }

    /** Half-breadth of a place (v, w) at a station [m]. */
    double y(int station, double v, double w) {
        return lower[station][0] + v * (upper[station][0] - lower[station][0])
                - w * scale(station) * alongZ(station);
    }

    /** Height of a place (v, w) at a station [m]. */
    double z(int station, double v, double w) {
        return lower[station][1] + v * (upper[station][1] - lower[station][1])
                + w * scale(station) * alongY(station);
    }
}
