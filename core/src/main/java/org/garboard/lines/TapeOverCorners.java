package org.garboard.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;

/**
 * A tape that bends over knuckles of the skin, the keel among them: tapes between them, each on smooth skin, and
 * the places on the knuckles moved along them until the sum is least.
 */
final class TapeOverCorners {
    /** A place so near to a line in plan is on it [m]. */
    private static final double ON_LINE = 1e-7;
    /** First and last step by which a place on a knuckle is moved [m]. */
    private static final double WIDE = 0.02;
    private static final double NARROW = 0.001;
    private static final int MOST_SWEEPS = 30;
    private static final double SETTLED = 1e-9;

    private final Hull hull;
    private final TapeRun first;
    private final List<Corner> corners = new ArrayList<>();

    /** A place on a named line; the side is that of the y. */
    private record Corner(HullLine line, double x, int side) {
        Vector3D place() {
            return Vector3D.of(x, side * line.y(x), line.z(x));
        }

        Corner movedBy(double dx) {
            return new Corner(line, x + dx, side);
        }
    }

    TapeOverCorners(Hull hull, TapeRun first) {
        this.hull = hull;
        this.first = first;
        List<Vector3D> path = first.path();
        for (Vector3D place : path.subList(1, path.size() - 1)) {
            hull.lines().stream().filter(line -> isOn(line, place)).findFirst()
                .ifPresent(line -> corners.add(new Corner(line, place.getX(), place.getY() < 0 ? -1 : 1)));
        }
    }

    private static boolean isOn(HullLine line, Vector3D place) {
        return Math.abs(Math.abs(place.getY()) - line.y(place.getX())) < ON_LINE
            && Math.abs(place.getZ() - line.z(place.getX())) < 1e-6;
    }

    /** The shortest; the first where nothing is won. */
    TapeRun settled() {
        TapeRun best = first;
        for (int sweep = 0; sweep < MOST_SWEEPS && !corners.isEmpty(); sweep++) {
            for (int k = 0; k < corners.size(); k++) {
                for (double step = WIDE; step > NARROW; step /= 4) {
                    improve(k, step);
                }
            }
            Optional<TapeRun> joined = joined();
            if (joined.isEmpty() || joined.get().length() > best.length() - SETTLED) {
                return best;
            }
            best = joined.get();
        }
        return best;
    }

    /** To the lowest place of the parabola through three sums, when that is lower. */
    private void improve(int k, double step) {
        double here = around(k, corners.get(k));
        double less = around(k, corners.get(k).movedBy(-step));
        double more = around(k, corners.get(k).movedBy(step));
        double bend = less - 2 * here + more;
        if (!(bend > 0)) {
            return;
        }
        Corner moved = corners.get(k).movedBy(step * Math.max(-4, Math.min(4, 0.5 * (less - more) / bend)));
        if (around(k, moved) < here) {
            corners.set(k, moved);
        }
    }

    /** Length of the two tapes that meet at a corner; beyond all where one runs off the skin. */
    private double around(int k, Corner corner) {
        Vector3D before = k == 0 ? first.path().get(0) : corners.get(k - 1).place();
        Vector3D after = k == corners.size() - 1 ? first.path().get(first.path().size() - 1) : corners.get(k + 1).place();
        return length(before, corner.place()) + length(corner.place(), after);
    }

    private double length(Vector3D from, Vector3D to) {
        return StretchedTape.within(hull, from, to).map(TapeRun::length).orElse(Double.POSITIVE_INFINITY);
    }

    private Optional<TapeRun> joined() {
        List<Vector3D> ends = new ArrayList<>();
        ends.add(first.path().get(0));
        corners.forEach(corner -> ends.add(corner.place()));
        ends.add(first.path().get(first.path().size() - 1));
        List<Vector3D> path = new ArrayList<>(List.of(ends.get(0)));
        double length = 0;
        double off = 0;
        Vector3D at = ends.get(0);
        for (int k = 1; k < ends.size(); k++) {
            Optional<TapeRun> piece = StretchedTape.within(hull, ends.get(k - 1), ends.get(k));
            if (piece.isEmpty()) {
                return Optional.empty();
            }
            length += piece.get().length();
            path.addAll(piece.get().path().subList(1, piece.get().path().size()));
            at = piece.get().standsOff() > off ? piece.get().standsOffAt() : at;
            off = Math.max(off, piece.get().standsOff());
        }
        return Optional.of(new TapeRun(path, length, off, at));
    }
}
