package org.garboard.hull;

import org.garboard.geometry.CubicSpline;
import org.garboard.geometry.KnotVector;
import org.garboard.geometry.SplineSites;
import org.garboard.offsets.LineKind;
import org.garboard.units.FixedDecimal;

/**
 * Draws a length on forward from its first station to the stem. Lines along it go on as their cubics do, and are bent
 * in or out so that they come to the half-siding where they meet the stem's profile: by the cube of the distance from
 * the station. So nothing changes abaft of the station, and at it slope and curvature stay; what makes up for the
 * difference is the rate at which the curvature changes, on the station's forward side.
 */
final class StemSkin {
    /** So far the skin may miss the half-siding on the stem [m]. */
    private static final double MISSES = 1e-6;
    private static final int MOST_PARTS = 32;
    private static final int LOOKS = 8;
    private static final int LOOKS_ALONG = 24;
    /**
     * A line that has to be turned by more than this to come to the stem is not the line of the stations any more.
     * Slope [-], 45 degrees; our choice.
     */
    private static final double MOST_TURN = 1;
    /** So far out of its course a line may be to begin with, and so far it may swell forward, untold [m]; our choice. */
    private static final double SWELLS = 1e-3;

    private final StemFace face;
    private final double first;

    /** @param first x of the first station [m] */
    StemSkin(StemFace face, double first) {
        this.face = face;
        this.first = first;
    }

    /** Share of what is added at the cells' start that comes to a place. */
    private double share(double x) {
        return Math.pow((first - x) / (first - face.least()), 3);
    }

    /** What has to be added at the cells' start for a line that lies at y [m] where it meets the stem at x [m]. */
    private double missing(double x, double y) {
        return (face.halfSiding() - y) / share(x);
    }

    /** Half-breadth of a named line, closed on the stem; the keel line stays on the centreline. */
    CubicSpline closed(LineKind kind, CubicSpline y, CubicSpline z) {
        CubicSpline knotted = y.withKnot(first);
        if (kind == LineKind.KEEL) {
            return knotted;
        }
        double end = face.end(y::value, z::value);
        return knotted.withStartMoved(missing(end, y.value(end)));
    }

    /** What lies inboard of a flat keel's edge, or of the rabbet, is as broad at the stem as that is. */
    private static boolean isFlatKeel(Panel panel) {
        return panel.lower().kind() == LineKind.KEEL
            && (panel.upper().kind() == LineKind.HALF_SIDING || panel.upper().kind() == LineKind.RABBET);
    }

    /** Its cells across are parted until it closes on the stem. */
    Panel closed(Panel drawn) {
        double off = Double.NaN;
        for (int parts = 2; parts <= MOST_PARTS; parts *= 2) {
            Panel open = parted(drawn, parts);
            Panel closed = closedOnce(open);
            off = isFlatKeel(drawn) ? 0 : off(closed);
            if (off <= MISSES) {
                if (!isFlatKeel(drawn)) {
                    check(open, closed);
                }
                return closed;
            }
        }
        throw HullNotDrawn.end("the skin between " + drawn.lower().name() + " and " + drawn.upper().name()
            + " cannot be drawn on to the stem: it misses it by " + FixedDecimal.format(1000 * off, 2) + " mm, where "
            + FixedDecimal.format(1000 * MISSES, 3) + " mm is allowed; let the stem begin farther forward of the first station,"
            + " or put stations where the keel line rises into it");
    }

    /** The same surface with a knot at the first station and more across. */
    private Panel parted(Panel drawn, int parts) {
        KnotVector across = drawn.knotsAcross();
        int count = drawn.knotsAlong().size();
        CubicSpline[][] rows = new CubicSpline[2][count + 1];
        double[][][] poles = new double[2][count + 1][across.size()];
        KnotVector along = null;
        for (int k = 0; k < across.size(); k++) {
            for (int coordinate = 0; coordinate < 2; coordinate++) {
                double[] column = new double[count];
                for (int i = 0; i < count; i++) {
                    column[i] = coordinate == 0 ? drawn.poleY(i, k) : drawn.poleZ(i, k);
                }
                CubicSpline knotted = CubicSpline.ofPoles(drawn.knotsAlong(), column).withKnot(first);
                along = knotted.knots();
                for (int i = 0; i <= count; i++) {
                    poles[coordinate][i][k] = knotted.pole(i);
                }
            }
        }
        KnotVector finer = across;
        for (int coordinate = 0; coordinate < 2; coordinate++) {
            for (int i = 0; i <= count; i++) {
                rows[coordinate][i] = parted(CubicSpline.ofPoles(across, poles[coordinate][i]), across, parts);
                finer = rows[coordinate][i].knots();
            }
        }
        return panel(drawn, along, finer, rows);
    }

    private static CubicSpline parted(CubicSpline row, KnotVector across, int parts) {
        CubicSpline finer = row;
        for (int cell = 0; cell < across.cells(); cell++) {
            double width = across.cellStart(cell + 1) - across.cellStart(cell);
            for (int i = 1; i < parts; i++) {
                finer = finer.withKnot(across.cellStart(cell) + width * i / parts);
            }
        }
        return finer;
    }

    private static Panel panel(Panel like, KnotVector along, KnotVector across, CubicSpline[][] rows) {
        double[][] poles = new double[2][along.size() * across.size()];
        for (int coordinate = 0; coordinate < 2; coordinate++) {
            for (int i = 0; i < along.size(); i++) {
                for (int k = 0; k < across.size(); k++) {
                    poles[coordinate][i * across.size() + k] = rows[coordinate][i].pole(k);
                }
            }
        }
        return new Panel(like.lower(), like.upper(), along, across, poles[0], poles[1], like.fore(), like.aft());
    }

    private Panel closedOnce(Panel open) {
        KnotVector across = open.knotsAcross();
        double[] values = new double[across.size()];
        double[] at = new double[Panel.DERIVATIVES];
        double outer = missing(open, 1, at);
        for (int k = 0; k < values.length; k++) {
            values[k] = isFlatKeel(open) ? across.greville(k) * outer
                : k == 0 && open.lower().kind() == LineKind.KEEL ? 0 : missing(open, across.greville(k), at);
        }
        CubicSpline added = SplineSites.ofKnots(across).through(values);
        CubicSpline[][] rows = new CubicSpline[2][open.knotsAlong().size()];
        for (int i = 0; i < rows[0].length; i++) {
            double[] y = new double[across.size()];
            double[] z = new double[across.size()];
            for (int k = 0; k < y.length; k++) {
                y[k] = open.poleY(i, k) + (i == 0 ? added.pole(k) : 0);
                z[k] = open.poleZ(i, k);
            }
            rows[0][i] = CubicSpline.ofPoles(across, y);
            rows[1][i] = CubicSpline.ofPoles(across, z);
        }
        return panel(open, open.knotsAlong(), across, rows);
    }

    private double missing(Panel open, double v, double[] at) {
        double end = open.from(v);
        open.differentiate(end, v, at, 0);
        return missing(end, at[0]);
    }

    /** How far the skin's edge on the stem lies off the half-siding, at the most [m]. */
    private double off(Panel closed) {
        KnotVector across = closed.knotsAcross();
        double[] at = new double[Panel.DERIVATIVES];
        double most = 0;
        for (int i = 0; i <= LOOKS * across.cells(); i++) {
            double v = look(across, i);
            closed.differentiate(closed.from(v), v, at, 0);
            most = Math.max(most, Math.abs(at[0] - face.halfSiding()));
        }
        return most;
    }

    private static double look(KnotVector across, int i) {
        int cell = Math.min(i / LOOKS, across.cells() - 1);
        double start = across.cellStart(cell);
        return start + (across.cellStart(cell + 1) - start) * (i - cell * LOOKS) / LOOKS;
    }

    /** Whether what is drawn is what the stations and the stem say together. */
    private void check(Panel open, Panel closed) {
        KnotVector across = closed.knotsAcross();
        double[] at = new double[Panel.DERIVATIVES];
        for (int i = 0; i <= LOOKS * across.cells(); i++) {
            double v = look(across, i);
            double end = closed.from(v);
            open.differentiate(end, v, at, 0);
            double miss = at[0] - face.halfSiding();
            double turn = 3 * Math.abs(miss) / (first - end);
            if (Math.abs(miss) > SWELLS && turn > MOST_TURN) {
                throw HullNotDrawn.end("stem and stations do not go together: " + FixedDecimal.format(at[1], 3)
                    + " m above base, where the stem stands at x = " + FixedDecimal.format(end, 3) + " m, the stations draw the skin "
                    + FixedDecimal.format(1000 * Math.abs(miss), 0) + " mm " + (miss > 0 ? "outboard" : "inboard")
                    + " of its edge there, and to close it would turn it by "
                    + FixedDecimal.format(Math.toDegrees(Math.atan(turn)), 0)
                    + " degrees; compare the stem's ends with the first stations, or put a station nearer to the stem");
            }
            course(closed, v, end, at);
        }
    }

    private void course(Panel closed, double v, double end, double[] at) {
        closed.differentiate(first, v, at, 0);
        double widest = at[0];
        for (int j = 1; j < LOOKS_ALONG; j++) {
            double x = end + (first - end) * j / LOOKS_ALONG;
            closed.differentiate(x, v, at, 0);
            boolean within = at[0] < face.halfSiding() - MISSES;
            if (within || at[0] > widest + SWELLS) {
                throw HullNotDrawn.end("stem and stations do not go together: the skin drawn between them "
                    + (within ? "comes " + FixedDecimal.format(1000 * (face.halfSiding() - at[0]), 1) + " mm inside the stem's edge"
                    : "swells to " + FixedDecimal.format(1000 * (at[0] - widest), 1) + " mm more than at the first station")
                    + " at x = " + FixedDecimal.format(x, 3) + " m, " + FixedDecimal.format(at[1], 3)
                    + " m above base; compare the stem's ends with the first stations, or put a station nearer to the stem");
            }
        }
    }
}
