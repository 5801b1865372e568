package org.garboard.flow.shadow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.geometry.Quad;
import org.locationtech.jts.geom.Geometry;

/** The flow lines from all round one feature, drawn to starboard, and the figures that they and their growth cover. */
final class Wake {
    /** Flow lines start from a feature's edge no farther apart than this [m]: our choice. */
    private static final double APART = 0.2;

    private final Shedder feature;
    private final Plan plan;
    private final double fading;
    /** For each edge of the cover, places along it; a place without water has an empty line. */
    private final List<List<List<Vector2D>>> edges = new ArrayList<>();
    private final List<Geometry> covers = new ArrayList<>();
    private String reason = "";
    private Optional<String> lost = Optional.empty();

    Wake(Shedder feature, FlowLines flow, Plan plan) {
        this.feature = feature;
        this.plan = plan;
        this.fading = feature.sheds().fading(feature.width());
        for (Quad quad : feature.cover()) {
            List<Vector2D> corners = new ArrayList<>();
            for (int corner = 0; corner < Quad.CORNERS; corner++) {
                corners.add(Vector2D.of(quad.x(corner), quad.y(corner)));
            }
            covers.add(plan.figure(corners));
            for (int corner = 0; corner < Quad.CORNERS; corner++) {
                edges.add(edge(flow, corners.get(corner), corners.get((corner + 1) % Quad.CORNERS)));
            }
        }
    }

    private List<List<Vector2D>> edge(FlowLines flow, Vector2D from, Vector2D to) {
        int pieces = Math.max(1, (int) Math.ceil(from.distance(to) / APART));
        List<List<Vector2D>> along = new ArrayList<>();
        for (int i = 0; i <= pieces; i++) {
            Vector2D place = from.lerp(to, (double) i / pieces);
            FlowLines.Found found = flow.downFrom(place.getX(), place.getY());
            if (found instanceof FlowLines.Line line) {
                along.add(line.points());
                lost = lost.or(line::lost);
            } else {
                along.add(List.of());
                reason = ((FlowLines.OffTheBottom) found).reason();
            }
        }
        return along;
    }

    /** Whether no water of the bottom comes by the feature. */
    boolean isEmpty() {
        return edges.stream().allMatch(edge -> edge.stream().allMatch(List::isEmpty));
    }

    /** Why some place of it has no water; empty if all have. */
    String reason() {
        return reason;
    }

    /** Why some line of it ends too early; empty where none does. */
    Optional<String> lost() {
        return lost;
    }

    /** Its lines without their growth. */
    List<Strip> middles() {
        return edges.stream().flatMap(List::stream).filter(line -> !line.isEmpty())
            .map(line -> new Strip(line, Strip.Growth.NONE, fading)).toList();
    }

    /** The cover, each line as wide as it grows, and the water between neighbours. */
    List<Geometry> figures(Strip.Growth growth) {
        List<Geometry> figures = new ArrayList<>(covers);
        for (List<List<Vector2D>> edge : edges) {
            for (int i = 0; i < edge.size(); i++) {
                List<Vector2D> line = edge.get(i);
                if (!line.isEmpty()) {
                    Strip strip = new Strip(line, spreads(line.get(0)) ? growth : Strip.Growth.NONE, fading);
                    figures.add(plan.figure(strip.outline()));
                    if (i > 0 && !edge.get(i - 1).isEmpty()) {
                        figures.add(between(new Strip(edge.get(i - 1), Strip.Growth.NONE, fading), strip));
                    }
                }
            }
        }
        figures.removeIf(Geometry::isEmpty);
        return figures;
    }

    /** A strake's wake spreads from its after end, any other's from all of it. */
    private boolean spreads(Vector2D place) {
        return feature.sheds() != Sheds.STRAKE || place.getX() >= feature.aftermost() - feature.width();
    }

    private Geometry between(Strip one, Strip other) {
        List<Vector2D> round = new ArrayList<>(one.line());
        for (int i = other.line().size() - 1; i >= 0; i--) {
            round.add(other.line().get(i));
        }
        return plan.figure(round);
    }
}
