package org.garboard.cutout.pocket;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hull.Step;
import org.garboard.solid.Loop;
import org.garboard.solid.Parting;

/**
 * Where a pocket lies on a hull: ends of the table, steps, the edge of the bottom, edges of the skin under it.
 *
 * @param length of the floor [m]
 * @param width of the floor [m]
 */
record PocketPlace(Hull hull, double x, double y, double length, double width) {
    /** An edge keeps so far from a corner of the floor, or from the opening [m]; our choice, a marked line is that wide. */
    private static final double CLEAR = 1e-3;

    void requireOnSkin() throws CannotBeBuilt {
        if (x - length / 2 < hull.firstSection() || x + length / 2 > hull.foot()) {
            throw new CannotBeBuilt("a pocket " + Lengths.mm(length) + " long with its middle at x = " + Lengths.mm(x)
                + " runs beyond the ends of the table", "x from " + Lengths.mm(hull.firstSection() + length / 2)
                + " to " + Lengths.mm(hull.foot() - length / 2));
        }
        if (!(Math.abs(y) + width / 2 < hull.bottomEdge().y(x))) {
            throw offSkin();
        }
    }

    CannotBeBuilt offSkin() {
        return new CannotBeBuilt("a pocket " + Lengths.mm(width) + " wide at x = " + Lengths.mm(x) + (y == 0 ? "" : ", y = " + Lengths.mm(y))
            + " runs off the skin", "a width below " + Lengths.mm(2 * (hull.bottomEdge().y(x) - Math.abs(y))));
    }

    /** The lines of the hull that the skin may bend at, and the centreline, that lie under the floor; from starboard to port. */
    List<Parting.Line> creases(AxisFrame frame) {
        List<Parting.Line> creases = new ArrayList<>();
        if (Math.abs(y) < width / 2) {
            creases.add(line(frame, at -> 0));
        }
        for (HullLine line : bends()) {
            for (int side = 1; side >= -1; side -= 2) {
                int sign = side;
                if (Math.abs(sign * line.y(x) - y) < width / 2) {
                    creases.add(line(frame, at -> sign * line.y(at)));
                }
            }
        }
        creases.sort((a, b) -> Double.compare(b.v(0), a.v(0)));
        return creases;
    }

    /** All lines of the hull that the skin may bend at, and the centreline, that run through a loop of the frame; from starboard to port. */
    List<Parting.Line> creasesThrough(AxisFrame frame, Loop loop) {
        List<Parting.Line> creases = new ArrayList<>(List.of(line(frame, at -> 0)));
        for (HullLine line : bends()) {
            creases.add(line(frame, line::y));
            creases.add(line(frame, at -> -line.y(at)));
        }
        creases.removeIf(line -> IntStream.range(0, loop.size()).noneMatch(i -> loop.v(i) > line.v(loop.u(i)) + CLEAR)
            || IntStream.range(0, loop.size()).noneMatch(i -> loop.v(i) < line.v(loop.u(i)) - CLEAR));
        creases.sort((a, b) -> Double.compare(b.v(0), a.v(0)));
        return creases;
    }

    /** Whether a line, seen along the frame's axis, lies on the bottom all round, no step inside it. */
    boolean isBottom(AxisFrame frame, List<FlatPoint> line) {
        double fore = Double.POSITIVE_INFINITY;
        double after = Double.NEGATIVE_INFINITY;
        double out = 0;
        for (FlatPoint at : line) {
            double w = frame.outside(at.u(), at.v());
            Vector3D place = frame.toHull(at.u(), at.v(), w == w ? w : 0);
            if (w != w || !(Math.abs(place.getY()) < hull.bottomEdge().y(place.getX())) || beyondWall(place)) {
                return false;
            }
            fore = Math.min(fore, place.getX());
            after = Math.max(after, place.getX());
            out = Math.max(out, Math.abs(place.getY()));
        }
        for (Step step : hull.steps()) {
            for (double across : step.halfBreadths(0.01)) {
                if (across <= out && step.x(across) > fore && step.x(across) < after) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether the side of a keel, steeper than 45 degrees, stands between the middle and a place. */
    private boolean beyondWall(Vector3D place) {
        List<HullLine> lines = hull.lines();
        for (int i = 1; i < lines.size(); i++) {
            double inner = lines.get(i - 1).y(place.getX());
            double outer = lines.get(i).y(place.getX());
            double steep = Math.abs(lines.get(i).z(place.getX()) - lines.get(i - 1).z(place.getX()));
            if (steep > Math.abs(outer - inner) + CLEAR && Math.abs(y) < inner && Math.abs(place.getY()) > inner - CLEAR) {
                return true;
            }
        }
        return false;
    }

    /** Lines off the centreline. */
    private List<HullLine> bends() {
        return hull.lines().stream().filter(line -> line.y(x) > 1e-6).toList();
    }

    private interface HalfBreadth {
        double at(double x);
    }

    private Parting.Line line(AxisFrame frame, HalfBreadth breadth) {
        return u -> {
            double v = breadth.at(frame.origin().getX() + u * frame.along().getX()) - y;
            for (int i = 0; i < 2; i++) {
                double w = frame.outside(u, v);
                v = breadth.at(frame.toHull(u, v, w == w ? w : 0).getX()) - y;
            }
            return v;
        };
    }

    /** Edges of the skin go in at one end and out at the other, between the rounds of the corners. */
    void requireCreasesInEnds(PocketForm form) throws CannotBeBuilt {
        double straight = width / 2 - form.floor().radius();
        for (Parting.Line crease : form.creases()) {
            for (double u : new double[] {-length / 2, length / 2}) {
                double v = Math.abs(crease.v(u));
                if (v > straight - (straight > CLEAR ? CLEAR : 0) + 1e-9) {
                    throw new CannotBeBuilt("an edge of the skin runs " + Lengths.mm(v) + " off the pocket's middle, through the round of its corner, which begins at "
                        + Lengths.mm(straight), form.floor().radius() > v ? "a site on smooth skin" : "a pocket wider by " + Lengths.mmUp(2 * (v + CLEAR - straight)) + ", or one narrower than the edges stand apart");
                }
            }
        }
    }

    /** Before anything is worked out on skin that is not there. */
    void requireRampsOnTable(PocketForm form) throws CannotBeBuilt {
        double run = form.walls().run(form.depth() - form.face());
        double reach = length / 2 + run + form.endRatio() * Math.max(0, form.face());
        double room = Math.min(x - hull.firstSection(), hull.foot() - x);
        if (reach > room + CLEAR) {
            double left = room - length / 2 - run;
            if (form.endRatio() == 0 || left < form.face()) {
                throw new CannotBeBuilt("the pocket's walls reach " + Lengths.mm(reach) + " from its middle, and the table ends " + Lengths.mm(room)
                    + " from it", "a site farther from the ends by " + Lengths.mmUp(reach - room));
            }
            throw new CannotBeBuilt(String.format(Locale.ROOT, "ramps of 1:%.1f from a face %s deep run off the ends of the table",
                form.endRatio(), Lengths.mm(form.face())), String.format(Locale.ROOT,
                "ramps of 1:%.1f or steeper, or a site farther from the ends", Math.floor(10 * left / form.face()) / 10));
        }
    }

    /** The finished pocket against steps, the edge of the bottom, edges of the skin. */
    void requireClear(List<Vector3D> opening) throws CannotBeBuilt {
        requireOffSteps("the pocket and its ramps", opening);
        requireSmooth("the opening", opening);
    }

    /** Whether what lies within a line round the pocket runs across no step. */
    void requireOffSteps(String what, List<Vector3D> line) throws CannotBeBuilt {
        double fore = line.stream().mapToDouble(Vector3D::getX).min().orElseThrow();
        double after = line.stream().mapToDouble(Vector3D::getX).max().orElseThrow();
        for (Step step : hull.steps()) {
            for (double across : step.halfBreadths(0.01)) {
                if (across <= Math.abs(y) + width / 2 && step.x(across) > fore && step.x(across) < after) {
                    double ahead = x - (after - step.x(across));
                    throw new CannotBeBuilt(what + " run across the step at station " + step.name()
                        + ", which stands at x = " + Lengths.mm(step.x(across)), "a middle at x = " + Lengths.mm(ahead) + " or farther forward");
                }
            }
        }
    }

    /** Whether a line on the skin keeps off the edge of the bottom and off edges of the skin beside the pocket. */
    void requireSmooth(String what, List<Vector3D> line) throws CannotBeBuilt {
        for (Vector3D place : line) {
            double room = hull.bottomEdge().y(place.getX());
            if (!(Math.abs(place.getY()) < room)) {
                throw new CannotBeBuilt(what + ", round a floor " + Lengths.mm(width) + " wide, crosses the edge of the bottom at x = "
                    + Lengths.mm(place.getX()), "a site or pocket with " + Lengths.mmUp(Math.abs(place.getY()) - room + CLEAR) + " more room there");
            }
            if (y != 0 && place.getY() * Math.signum(y) < CLEAR && Math.abs(y) >= width / 2) {
                throw new CannotBeBuilt(what + " reaches over the keel line by " + Lengths.mm(Math.max(0, -place.getY() * Math.signum(y))),
                    "a site at least " + Lengths.mmUp(CLEAR - place.getY() * Math.signum(y)) + " farther outboard");
            }
            clearOfBends(what, place);
        }
    }

    private void clearOfBends(String what, Vector3D place) throws CannotBeBuilt {
        for (HullLine line : bends()) {
            for (int side = 1; side >= -1; side -= 2) {
                double edge = side * line.y(x) - y;
                double here = side * line.y(place.getX()) - place.getY();
                if (Math.abs(edge) >= width / 2 && here * Math.signum(edge) < CLEAR) {
                    throw new CannotBeBuilt(what + " reaches over " + line.name() + " by " + Lengths.mm(Math.max(0, -here * Math.signum(edge)))
                        + " at x = " + Lengths.mm(place.getX()), "a pocket or blend narrower by " + Lengths.mmUp(CLEAR - here * Math.signum(edge))
                        + " on that side");
                }
            }
        }
    }
}
