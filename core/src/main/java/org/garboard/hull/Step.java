package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A step across the bottom: a plumb face between the after edge of one length and the forward edge of the
 * next. Starboard; port mirrors it.
 */
public final class Step {
    private final String name;
    private final PlanFace face;
    private final HullLength forward;
    private final HullLength after;
    private final double outer;

    /**
     * @param name of the station that is its forward face
     * @param outer half-breadth of the bottom's edge there [m]
     */
    Step(String name, PlanFace face, HullLength forward, HullLength after, double outer) {
        this.name = name;
        this.face = face;
        this.forward = forward;
        this.after = after;
        this.outer = outer;
    }

    /** The station that is its forward face. */
    public String name() {
        return name;
    }

    /** Its line in plan. */
    public PlanFace face() {
        return face;
    }

    /** Half-breadth at which it runs out at the edge of the bottom [m]. */
    public double outer() {
        return outer;
    }

    /** x at a half-breadth [m]. */
    public double x(double y) {
        return face.x(Math.abs(y));
    }

    /** Height of the skin ahead of it, as far as that is drawn [m]; NaN beyond. */
    public double lower(double x, double y) {
        return forward.height(x, Math.abs(y));
    }

    /** Height of the skin abaft of it, as far as that is drawn [m]; NaN beyond. */
    public double upper(double x, double y) {
        return after.height(x, Math.abs(y));
    }

    /** Height of its lower edge, where the skin ahead of it ends [m]; NaN where there is none. */
    public double lower(double y) {
        return forward.height(x(y), Math.abs(y));
    }

    /** Height of its upper edge, where the skin abaft of it begins [m]; NaN where there is none. */
    public double upper(double y) {
        return after.height(x(y), Math.abs(y));
    }

    /** How high it is [m]. */
    public double height(double y) {
        return upper(y) - lower(y);
    }

    /** Half-breadths from the keel to the edge of the bottom, the corners of its line among them, not farther apart than a distance [m]. */
    public List<Double> halfBreadths(double apart) {
        List<Double> all = new ArrayList<>(List.of(0.0));
        for (int i = 0; i < face.size(); i++) {
            upTo(Math.min(outer, face.pointY(i)), apart, all);
        }
        upTo(outer, apart, all);
        return all;
    }

    private static void upTo(double y, double apart, List<Double> all) {
        double from = all.get(all.size() - 1);
        int spans = (int) Math.ceil((y - from) / apart);
        for (int i = 1; i <= spans; i++) {
            all.add(from + (y - from) * i / spans);
        }
    }

    /** Its two edges, each from the keel outward with as many points: first the lower, then the upper. */
    public List<List<Vector3D>> edges(double apart) {
        List<Vector3D> low = new ArrayList<>();
        List<Vector3D> high = new ArrayList<>();
        double from = 0;
        for (double y : halfBreadths(apart)) {
            corner(from, y, low, high);
            add(y, x(y), low, high);
            from = y;
        }
        return List.of(List.copyOf(low), List.copyOf(high));
    }

    /** Abaft or forward of the point before at a notch's corner, where the line runs along. */
    private void corner(double from, double to, List<Vector3D> low, List<Vector3D> high) {
        for (int i = 1; i < face.size(); i++) {
            if (face.pointY(i) == face.pointY(i - 1) && face.pointY(i) >= from && face.pointY(i) < to) {
                add(face.pointY(i), face.pointX(i), low, high);
            }
        }
    }

    private void add(double y, double x, List<Vector3D> low, List<Vector3D> high) {
        double lower = forward.height(x, y);
        double upper = after.height(x, y);
        if (lower == lower && upper == upper) {
            low.add(Vector3D.of(x, y, lower));
            high.add(Vector3D.of(x, y, upper));
        }
    }
}
