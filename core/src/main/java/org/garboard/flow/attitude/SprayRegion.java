package org.garboard.flow.attitude;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.flow.planing.Prism;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.geometry.Ring;
import org.garboard.hull.Hull;
import org.garboard.units.Angle;

/**
 * The part of the bottom that spray alone wets: between the stagnation line and the spray's forward edge. On the true
 * bottom the edge stands ahead of the line by the share that the prism's two angles to the keel give.
 */
final class SprayRegion {
    private static final int HALVINGS = 50;
    private static final int PIECES = 10;
    private static final double SAME = 1e-9;

    private SprayRegion() {
    }

    /**
     * To starboard; empty where the spray is thrown ahead and has no edge.
     *
     * @param trim of the keel over its wetted length
     * @param end x of the after end of the bottom [m]
     */
    static Optional<PlanRegion> of(Hull hull, Prism prism, Angle trim, StagnationLine line, double end) {
        if (!(prism.deadrise().radians() > 0)) {
            return Optional.empty();
        }
        double share = Math.tan(prism.stagnationAngle(trim).radians()) / Math.tan(prism.spray(trim).edgeInPlan(prism.deadrise()).radians());
        if (!(share > 0 && share < 1)) {
            return Optional.empty();
        }
        List<Vector2D> edge = new ArrayList<>();
        for (Vector2D point : drawnOn(line, share, end)) {
            Vector2D ahead = ahead(line, point, share);
            if (isOff(hull, ahead)) {
                edge.add(atEdge(hull, edge.get(edge.size() - 1), ahead));
                break;
            }
            edge.add(ahead);
        }
        List<Vector2D> outline = new ArrayList<>(line.points());
        double out = edge.get(edge.size() - 1).getX();
        if (isInside(hull, line)) {
            if (out < end) {
                alongChine(hull, end, out, outline);
            }
        } else {
            alongChine(hull, line.aftermost(), out, outline);
        }
        Collections.reverse(edge);
        outline.addAll(edge.subList(outline.get(outline.size() - 1).distance(edge.get(0)) < SAME ? 1 : 0, edge.size() - 1));
        return outline.size() < 3 ? Optional.empty() : Optional.of(new PlanRegion(new Ring(outline), List.of()));
    }

    /** With dry chines on past the end of the bottom, as far as the edge over it needs. */
    private static List<Vector2D> drawnOn(StagnationLine line, double share, double end) {
        List<Vector2D> points = new ArrayList<>(line.points());
        Vector2D last = points.get(points.size() - 1);
        Vector2D before = points.get(points.size() - 2);
        if (last.getX() < end - SAME) {
            return points;
        }
        double slope = (last.getY() - before.getY()) / (last.getX() - before.getX());
        double to = line.atKeel() + (end - line.atKeel()) / share;
        for (int i = 1; i <= PIECES; i++) {
            double on = (to - last.getX()) * i / PIECES;
            points.add(Vector2D.of(last.getX() + on, last.getY() + slope * on));
        }
        return points;
    }

    private static Vector2D ahead(StagnationLine line, Vector2D point, double share) {
        return Vector2D.of(line.atKeel() + share * (point.getX() - line.atKeel()), point.getY());
    }

    private static boolean isInside(Hull hull, StagnationLine line) {
        return line.points().get(line.points().size() - 1).getY() < hull.bottomEdge().y(line.aftermost()) - SAME;
    }

    private static boolean isOff(Hull hull, Vector2D place) {
        return place.getY() > hull.bottomEdge().y(place.getX());
    }

    /** Where the edge crosses the chine between a place on the bottom and one off it. */
    private static Vector2D atEdge(Hull hull, Vector2D on, Vector2D off) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (isOff(hull, on.lerp(off, middle))) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return on.lerp(off, low);
    }

    private static void alongChine(Hull hull, double from, double to, List<Vector2D> outline) {
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(from - to) / 0.1));
        for (int i = 1; i <= pieces; i++) {
            double x = from + (to - from) * i / pieces;
            outline.add(Vector2D.of(x, hull.bottomEdge().y(x)));
        }
    }
}
