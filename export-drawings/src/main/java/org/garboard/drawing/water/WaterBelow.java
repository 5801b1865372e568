package org.garboard.drawing.water;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.craft.Sides;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.layout.NameColumn;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.flow.shadow.Shadow;
import org.garboard.geometry.Quad;

/** Lines and areas of the water, drawn one after another over a plan of the bottom, and the names that they want beside it. */
public final class WaterBelow {
    /** Points of a flow line nearer on paper are left out [mm]. */
    private static final double FINE = 0.3;

    private final Function<Vector2D, Point> paper;
    private final List<Entity> shown = new ArrayList<>();
    private final List<NameColumn.Name> names = new ArrayList<>();

    /** @param paper where a place of the plan lies, hull frame [m], port is negative y */
    public WaterBelow(Function<Vector2D, Point> paper) {
        this.paper = paper;
    }

    public List<Entity> shown() {
        return shown;
    }

    /** Of what is drawn, and where each ends. */
    public List<NameColumn.Name> names() {
        return names;
    }

    public void area(PlanArea area) {
        fill(area.kind(), List.of(area.region()));
        if (!area.label().isEmpty()) {
            names.add(new NameColumn.Name(area.label(), paper.apply(area.region().inside())));
        }
    }

    /** On both sides; its label stands at its end to port. */
    public void curve(PlanCurve curve) {
        List<Point> starboard = side(curve, 1);
        List<Point> port = side(curve, -1);
        if (port.size() > 1) {
            shown.add(Polyline.open(curve.kind().layer(), starboard));
            shown.add(Polyline.open(curve.kind().layer(), port));
            if (!curve.label().isEmpty()) {
                names.add(new NameColumn.Name(curve.label(), port.get(port.size() - 1)));
            }
        }
    }

    private List<Point> side(PlanCurve curve, int side) {
        List<Point> points = new ArrayList<>();
        for (Vector2D point : curve.points()) {
            Point next = paper.apply(Vector2D.of(point.getX(), side * point.getY()));
            if (points.isEmpty() || points.get(points.size() - 1).distanceTo(next) > FINE) {
                points.add(next);
            }
        }
        return points;
    }

    /** With its advisory edge, what a propeller draws in, and what throws it. */
    public void shadow(Shadow shadow) {
        fill(PlanArea.Kind.ADVISORY, shadow.advisory());
        wake(PlanArea.Kind.WAKE, shadow.wake(), shadow.feature().name());
        fill(PlanArea.Kind.AHEAD, shadow.ahead());
        cover(shadow);
    }

    /** Regions of one kind under a name that stands at their after end. */
    public void wake(PlanArea.Kind kind, List<PlanRegion> regions, String name) {
        fill(kind, regions);
        RegionBelow.aftermost(regions, paper).ifPresent(end -> names.add(new NameColumn.Name(name, end)));
    }

    public void fill(PlanArea.Kind kind, List<PlanRegion> regions) {
        regions.forEach(region -> shown.addAll(kind.strokes().over(RegionBelow.rings(region, paper))));
    }

    private void cover(Shadow shadow) {
        for (int side : new int[] {1, -1}) {
            if (shadow.feature().sides().meets(side > 0 ? Sides.STARBOARD : Sides.PORT)) {
                for (Quad quad : shadow.feature().cover()) {
                    List<Point> corners = new ArrayList<>();
                    for (int k = 0; k < Quad.CORNERS; k++) {
                        corners.add(paper.apply(Vector2D.of(quad.x(k), side * quad.y(k))));
                    }
                    shown.add(Polyline.closed(Layer.HULL, corners));
                }
            }
        }
    }
}
