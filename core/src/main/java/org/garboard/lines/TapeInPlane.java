package org.garboard.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;

/** A tape held along a line of the skin and drawn tight there: along a named line, or square to the centreline. */
public final class TapeInPlane {
    /** Chords so short [m]: on a circle of 1 m they fall short by 4e-8. */
    private static final double APART = 0.001;

    private TapeInPlane() {
    }

    /** Along a named line, starboard, from one x to another [m]. */
    public static TapeRun along(HullLine line, double from, double to) {
        int pieces = (int) Math.max(20, Math.ceil(Math.abs(to - from) / APART));
        List<Vector3D> places = new ArrayList<>();
        for (int i = 0; i <= pieces; i++) {
            double x = from + (to - from) * i / pieces;
            places.add(Vector3D.of(x, line.y(x), line.z(x)));
        }
        return taut(places);
    }

    /** Over the section at x, from one y to another of the same side or across the keel [m]. */
    public static TapeRun athwart(Hull hull, double x, double from, double to) {
        TreeSet<Double> breadths = new TreeSet<>();
        int pieces = (int) Math.max(20, Math.ceil(Math.abs(to - from) / APART));
        for (int i = 0; i < pieces; i++) {
            breadths.add(from + (to - from) * i / pieces);
        }
        breadths.add(to);
        for (HullLine line : hull.lines()) {
            for (double y : new double[] {line.y(x), -line.y(x)}) {
                if (y > Math.min(from, to) && y < Math.max(from, to)) {
                    breadths.add(y);
                }
            }
        }
        List<Vector3D> places = new ArrayList<>();
        for (double y : from < to ? breadths : breadths.descendingSet()) {
            places.add(Vector3D.of(x, y, hull.height(x, y)));
        }
        return taut(places);
    }

    private static TapeRun taut(List<Vector3D> places) {
        double[] x = places.stream().mapToDouble(Vector3D::getX).toArray();
        double[] y = places.stream().mapToDouble(Vector3D::getY).toArray();
        double[] z = places.stream().mapToDouble(Vector3D::getZ).toArray();
        TautProfile profile = new TautProfile(x, y, z);
        int[] touching = profile.touching();
        List<Vector3D> path = new ArrayList<>(List.of(places.get(0)));
        double length = 0;
        double off = 0;
        Vector3D at = places.get(0);
        for (int k = 1; k < touching.length; k++) {
            path.add(places.get(touching[k]));
            length += places.get(touching[k - 1]).distance(places.get(touching[k]));
            for (int i = touching[k - 1] + 1; i < touching[k]; i++) {
                double here = profile.below(i, touching[k - 1], touching[k]);
                at = here > off ? places.get(i) : at;
                off = Math.max(off, here);
            }
        }
        return new TapeRun(path, length, off, at);
    }
}
