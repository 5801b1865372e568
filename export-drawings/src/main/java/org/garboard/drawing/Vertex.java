package org.garboard.drawing;

/**
 * A corner of a polyline.
 *
 * @param at where
 * @param bulge tangent of a quarter of the arc's angle to the next corner, positive turning
 *     left; 0 for a straight run
 */
public record Vertex(Point at, double bulge) {

    public static Vertex corner(Point at) {
        return new Vertex(at, 0);
    }

    public boolean straight() {
        return Math.abs(bulge) < 1e-9;
    }
}
