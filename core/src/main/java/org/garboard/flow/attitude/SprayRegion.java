package org.garboard.flow.attitude;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.flow.planing.PrismRun;
import org.garboard.flow.planing.Spray;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.geometry.Ring;
import org.garboard.hull.Hull;

/**
 * The part of the bottom that spray alone wets: between the stagnation line and the spray's forward edge. On the true
 * bottom the edge stands ahead of the line by the share that the prism's two angles to the keel give.
 */
final class SprayRegion {
    private static final int HALVINGS = 50;

    private SprayRegion() {
    }

    /** To starboard; empty where the spray is thrown ahead and has no edge. */
    static Optional<PlanRegion> of(Hull hull, PrismRun run, StagnationLine line) {
        if (!(run.prism().deadrise().radians() > 0)) {
            return Optional.empty();
        }
        Spray spray = run.spray();
        double share = Math.tan(run.stagnationAngle().radians()) / Math.tan(spray.edgeInPlan(run.prism().deadrise()).radians());
        if (!(share > 0 && share < 1)) {
            return Optional.empty();
        }
        List<Vector2D> edge = new ArrayList<>();
        for (Vector2D point : line.points()) {
            Vector2D ahead = ahead(line, point, share);
            if (isOff(hull, ahead)) {
                edge.add(atEdge(hull, edge.get(edge.size() - 1), ahead));
                break;
            }
            edge.add(ahead);
        }
        List<Vector2D> outline = new ArrayList<>(line.points());
        alongChine(hull, line.atChine(), edge.get(edge.size() - 1).getX(), outline);
        Collections.reverse(edge);
        outline.addAll(edge.subList(0, edge.size() - 1));
        return outline.size() < 3 ? Optional.empty() : Optional.of(new PlanRegion(new Ring(outline), List.of()));
    }

    private static Vector2D ahead(StagnationLine line, Vector2D point, double share) {
        return Vector2D.of(line.atKeel() + share * (point.getX() - line.atKeel()), point.getY());
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
