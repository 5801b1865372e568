package org.garboard.cutout.fairing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.cutout.part.CoreRemoval;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.cutout.template.Development;
import org.garboard.cutout.template.Template;
import org.garboard.cutout.template.Template.Kind;
import org.garboard.cutout.template.Template.Mark;
import org.garboard.cutout.template.Template.RoundHole;
import org.garboard.cutout.template.Template.Up;
import org.garboard.solid.Loop;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * The flat outlines of a block: its footprint on the skin, outer and inner block.
 *
 * @param chord by which outlines may stray [m]
 * @param stemHole its diameter [m], where there is a stem
 * @param inner whether there is a block inside
 * @param core what comes out of a cored skin round each hole
 */
record BlockTemplates(AxisFrame frame, BlockPlan plan, BodyOutline recess, double chord, OptionalDouble stemHole, boolean inner,
                      Optional<CoreRemoval> core) {

    /** @param holes right through, stem, bolt and pin */
    List<Template> of(List<Loop> holes) throws CannotBeBuilt {
        Development laid = Development.of(frame, plan.outline(chord, plan.length() / 12));
        List<List<FlatPoint>> bored = new ArrayList<>();
        for (Loop hole : holes) {
            bored.add(laid.flat(hole));
        }
        List<Template> templates = new ArrayList<>();
        templates.add(new Template("fairing-footprint", Up.OUTSIDE, laid.outline(), bored, List.of(), laid.cross(), laid.stretch()));
        List<FlatPoint> outline = flat(plan.outline(chord, plan.length()));
        List<FlatPoint> milled = new ArrayList<>(flat(recess.loop(chord / 2, plan.length())));
        milled.add(milled.get(0));
        templates.add(new Template("fairing-block", Up.OUTSIDE, outline, List.of(), drilled(), List.of(new Mark(Kind.SCRIBED, milled)), 0));
        if (inner) {
            templates.add(new Template("inner-block", Up.OUTSIDE, outline, List.of(), drilled(), List.of(), 0));
        }
        if (core.isPresent()) {
            templates.add(coreRemoval(core.get()));
        }
        return templates;
    }

    /** Laid by the holes, which are drilled before; openings that do not run together are scribed on one template round all. */
    private Template coreRemoval(CoreRemoval removed) throws CannotBeBuilt {
        List<Loop> openings = coreOpenings(removed);
        Development open = Development.of(frame, openings.size() == 1 ? openings.get(0) : around(openings));
        List<RoundHole> holes = new ArrayList<>();
        for (RoundHole hole : drilled()) {
            holes.add(new RoundHole(open.flat(hole.centre().u(), hole.centre().v()), hole.diameter()));
        }
        List<Mark> marks = new ArrayList<>(open.cross());
        for (Loop opening : openings.size() == 1 ? List.<Loop>of() : openings) {
            List<FlatPoint> ring = new ArrayList<>(open.flat(opening));
            ring.add(ring.get(0));
            marks.add(new Mark(Kind.SCRIBED, ring));
        }
        return new Template("core-removal", Up.OUTSIDE, open.outline(), List.of(), holes, marks, open.stretch());
    }

    /** A line round several loops, drawn tight. */
    private static Loop around(List<Loop> loops) {
        Coordinate[] all = loops.stream().flatMap(loop -> IntStream.range(0, loop.size()).mapToObj(i -> new Coordinate(loop.u(i), loop.v(i))))
            .toArray(Coordinate[]::new);
        return loop((Polygon) new GeometryFactory().createMultiPointFromCoords(all).convexHull());
    }

    private static Loop loop(Polygon polygon) {
        Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
        return Loop.of(Arrays.stream(ring).limit(ring.length - 1).flatMapToDouble(at -> DoubleStream.of(at.x, at.y)).toArray());
    }

    /** What is opened round stem, bolt and pin, from forward: one opening where they run together, else several. */
    List<Loop> coreOpenings(CoreRemoval removed) {
        List<RoundHole> holes = drilled();
        Geometry opened = new GeometryFactory().createPolygon();
        for (RoundHole hole : holes) {
            double radius = hole.diameter() / 2 + removed.filled();
            int quarter = Math.max(8, (int) Math.ceil(Math.PI / 4 / Math.acos(1 - chord / 4 / radius)));
            opened = opened.union(new GeometryFactory().createPoint(new Coordinate(hole.centre().u(), hole.centre().v())).buffer(radius, quarter));
        }
        List<Loop> openings = new ArrayList<>();
        for (int i = 0; i < opened.getNumGeometries(); i++) {
            openings.add(loop((Polygon) opened.getGeometryN(i)));
        }
        openings.sort(Comparator.comparingDouble(loop -> loop.u(0)));
        return openings;
    }

    private List<RoundHole> drilled() {
        List<RoundHole> drilled = new ArrayList<>(List.of(new RoundHole(new FlatPoint(plan.bolt(), 0), BlockPlan.BOLT_HOLE),
            new RoundHole(new FlatPoint(plan.pin(), 0), BlockPlan.BOLT_HOLE)));
        stemHole.ifPresent(diameter -> drilled.add(new RoundHole(new FlatPoint(0, 0), diameter)));
        return drilled;
    }

    private static List<FlatPoint> flat(Loop loop) {
        return IntStream.range(0, loop.size()).mapToObj(i -> new FlatPoint(loop.u(i), loop.v(i))).toList();
    }
}
