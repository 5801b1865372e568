package org.garboard.flow.shadow;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.craft.Sides;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;
import org.garboard.hull.HullCurves;
import org.garboard.hull.HullLine;
import org.locationtech.jts.geom.Geometry;

/** Throws the shadows of features down the flow lines of a bottom. */
public final class ShadowCaster {
    /** Pieces of the hull's outline in plan. */
    private static final int OUTLINE = 200;
    /** A propeller draws in water from so many diameters ahead of it, and from 1 m at least: our choice. */
    private static final double DIAMETERS_AHEAD = 1.5;
    private static final double LEAST_AHEAD = 1;

    private final FlowLines flow;
    private final double outboard;
    private final Plan plan = new Plan();
    private final Geometry bottom;

    /**
     * Over the bottom that is wet at one attitude.
     *
     * @param solid what solid water runs along, to starboard
     * @param outboard as for the whole hull
     */
    public ShadowCaster(List<PlanRegion> solid, FlowLines flow, double outboard) {
        this.flow = flow;
        this.outboard = spread(outboard);
        this.bottom = plan.bothSides(solid.stream().map(plan::figure).toList());
    }

    /**
     * Over all of the hull, whichever of it is wet.
     *
     * @param outboard how many times as much a wake spreads outboard as inboard: bubbles under a planing bottom ride
     *     outboard, up the deadrise, so never less than 1
     */
    public ShadowCaster(Hull hull, FlowLines flow, double outboard) {
        this.flow = flow;
        this.outboard = spread(outboard);
        this.bottom = bottom(hull);
    }

    private static double spread(double outboard) {
        if (!(outboard >= 1 && outboard <= 10)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT,
                "a wake that spreads %s times as much outboard as inboard: from 1 to 10 is possible", outboard));
        }
        return outboard;
    }

    /** The hull seen from below, both sides. */
    private Geometry bottom(Hull hull) {
        List<Vector2D> stern = stern(hull);
        double after = stern.get(0).getX();
        List<Vector2D> outline = new ArrayList<>();
        for (int i = 0; i <= OUTLINE; i++) {
            double x = hull.forwardEnd() + (after - hull.forwardEnd()) * i / OUTLINE;
            double widest = 0;
            for (HullLine line : hull.lines()) {
                widest = Math.max(widest, line.y(x));
            }
            outline.add(Vector2D.of(x, widest));
        }
        outline.addAll(stern);
        outline.add(Vector2D.of(hull.forwardEnd(), 0));
        return plan.bothSides(List.of(plan.figure(outline)));
    }

    /** The edge of the skin aft, from the sheer in to the keel; a raked one does not lie square across. */
    private static List<Vector2D> stern(Hull hull) {
        List<Vector2D> edge = new ArrayList<>();
        if (hull.endsSquare()) {
            edge.add(Vector2D.of(hull.afterEnd(), 0));
        } else {
            new HullCurves(hull).afterEdge().forEach(curve -> curve.points().forEach(point -> edge.add(Vector2D.of(point.getX(), point.getY()))));
            Collections.reverse(edge);
        }
        return edge;
    }

    /** The shadow of one feature. */
    public Cast of(Shedder feature) {
        if (feature.sheds() == Sheds.NOTHING) {
            return new Cast.None(feature.name(), "nothing of it is in the water");
        }
        Wake wake = new Wake(feature, flow, plan);
        if (wake.isEmpty()) {
            return new Cast.None(feature.name(), wake.reason());
        }
        Strip.Growth likely = new Strip.Growth(Sheds.LIKELY, feature.sheds().cap(), outboard);
        Strip.Growth advisory = new Strip.Growth(Sheds.ADVISORY, Double.POSITIVE_INFINITY, outboard);
        return new Shadow(feature, onItsSides(feature, wake.figures(likely)), onItsSides(feature, wake.figures(advisory)),
            ahead(feature), wake.middles(), wake.lost());
    }

    private List<PlanRegion> ahead(Shedder feature) {
        if (feature.sheds() != Sheds.PROPELLER) {
            return List.of();
        }
        double reach = Math.max(DIAMETERS_AHEAD * feature.width(), LEAST_AHEAD);
        double x = feature.foremost();
        List<Geometry> parts = new ArrayList<>();
        for (Quad quad : feature.cover()) {
            double inner = Math.min(Math.min(quad.y(0), quad.y(1)), Math.min(quad.y(2), quad.y(3)));
            double outer = Math.max(Math.max(quad.y(0), quad.y(1)), Math.max(quad.y(2), quad.y(3)));
            parts.add(plan.figure(List.of(Vector2D.of(x - reach, inner), Vector2D.of(feature.aftermost(), inner),
                Vector2D.of(feature.aftermost(), outer), Vector2D.of(x - reach, outer))));
        }
        return onItsSides(feature, parts);
    }

    private List<PlanRegion> onItsSides(Shedder feature, List<Geometry> starboard) {
        Geometry all = plan.together(starboard);
        List<Geometry> sides = new ArrayList<>();
        if (feature.sides().meets(Sides.STARBOARD)) {
            sides.add(all);
        }
        if (feature.sides().meets(Sides.PORT)) {
            sides.add(plan.toPort(all));
        }
        return plan.regions(plan.common(plan.together(sides), bottom));
    }
}
