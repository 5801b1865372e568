package org.garboard.craft;

import java.util.List;
import java.util.Optional;
import org.garboard.geometry.Quad;

/**
 * A feature laid on a hull.
 *
 * @param kind "lifting strake", "intake"
 * @param cover what it covers in plan, hull frame [m], drawn to starboard whatever its side; from end to end
 * @param height how far it stands out of the skin [m], 0 for an opening; none where it is not told
 */
public record LaidFeature(String name, String kind, Sides sides, List<Quad> cover, Optional<Double> height) {
    public LaidFeature {
        cover = List.copyOf(cover);
    }

    /** Behind a propeller, and just ahead of it, the water is stirred and loud. A pod has one. */
    public boolean isPropeller() {
        return is(Fitting.Type.PROPELLER) || is(Fitting.Type.POD);
    }

    /** Whether it draws water in. */
    public boolean isIntake() {
        return is(Fitting.Type.INTAKE) || is(Fitting.Type.SCOOP) || is(Fitting.Type.JET_INTAKE);
    }

    public boolean is(Fitting.Type type) {
        return kind.equals(type.words());
    }

    /** How many there are: one on each side counts twice, one on the centreline once. */
    public int count() {
        return sides == Sides.BOTH && innermost() > 0 ? 2 : 1;
    }

    /** Whether it lies over a place of the skin. */
    public boolean covers(double x, double y) {
        double side = sides == Sides.BOTH ? Math.abs(y) : sides == Sides.PORT ? -y : y;
        double[] place = {x, side, x, side, x, side, x, side};
        return cover.stream().anyMatch(quad -> quad.gap(place) == 0);
    }

    /** Its breadth athwart, of a propeller its diameter [m]. */
    public double breadth() {
        double inner = Double.POSITIVE_INFINITY;
        double outer = Double.NEGATIVE_INFINITY;
        for (Quad quad : cover) {
            for (int i = 0; i < Quad.CORNERS; i++) {
                inner = Math.min(inner, quad.y(i));
                outer = Math.max(outer, quad.y(i));
            }
        }
        return outer - inner;
    }

    /** Half-breadth of its inner edge, as if to starboard [m]. */
    public double innermost() {
        double inner = Double.POSITIVE_INFINITY;
        for (Quad quad : cover) {
            for (int i = 0; i < Quad.CORNERS; i++) {
                inner = Math.min(inner, quad.y(i));
            }
        }
        return inner;
    }

    /** Distance from a rectangle in plan, its sides fore and aft and athwart, port is negative y [m]; 0 where they touch. */
    public double gap(double x, double y, double length, double width) {
        double least = Double.POSITIVE_INFINITY;
        if (sides.meets(Sides.STARBOARD)) {
            least = gapAsDrawn(x, y, length, width);
        }
        return sides.meets(Sides.PORT) ? Math.min(least, gapAsDrawn(x, -y, length, width)) : least;
    }

    private double gapAsDrawn(double x, double y, double length, double width) {
        double l = length / 2;
        double w = width / 2;
        double[] rectangle = {x - l, y - w, x + l, y - w, x + l, y + w, x - l, y + w};
        double least = Double.POSITIVE_INFINITY;
        for (Quad quad : cover) {
            least = Math.min(least, quad.gap(rectangle));
        }
        return least;
    }

    /** x of its forward end [m]. */
    public double from() {
        double from = Double.POSITIVE_INFINITY;
        for (Quad quad : cover) {
            for (int i = 0; i < Quad.CORNERS; i++) {
                from = Math.min(from, quad.x(i));
            }
        }
        return from;
    }
}
