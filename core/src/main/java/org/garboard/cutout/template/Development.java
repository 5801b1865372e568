package org.garboard.cutout.template;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.cutout.skin.Skin;
import org.garboard.cutout.template.Template.Kind;
import org.garboard.cutout.template.Template.Mark;
import org.garboard.solid.Fill;
import org.garboard.solid.Loop;

/**
 * Curves on the skin laid flat: exactly where the skin is developable, else with the least distortion, in squares,
 * of the sides of a net between them; how much that is gets measured along straightest lines of the skin.
 */
public final class Development {
    /** Points of the outline between which lengths are compared; our choice, 120 lengths. */
    private static final int COMPARED = 16;
    /** Sides of the net to the outline's length, our choice. */
    private static final double NET = 0.12;
    /** Pieces of the cross to the outline's size, our choice: an arc of a tenth of its radius strays by a thousandth of itself. */
    private static final double PIECE = 0.1;
    /** So near the outline the cross ends [m]. */
    private static final double SHORTEST = 5e-4;

    private final List<List<FlatPoint>> loops;
    private final List<Mark> cross;
    private final double stretch;

    private Development(List<List<FlatPoint>> loops, List<Mark> cross, double stretch) {
        this.loops = loops;
        this.cross = cross;
        this.stretch = stretch;
    }

    /**
     * Loops of a frame carried along its axis to the skin, and flattened from the frame's origin; u lies along
     * the skin in the plane y = constant there.
     *
     * @param loops the outer first, the others inside it and beside each other
     */
    public static Development of(AxisFrame frame, List<Loop> loops) throws CannotBeBuilt {
        Skin skin = frame.skin();
        Sprawl sprawl = Sprawl.from(skin, frame.origin().getX(), frame.origin().getY());
        List<Loop> flat = new ArrayList<>();
        double[] spot = new double[3];
        List<double[]> plan = new ArrayList<>();
        for (Loop loop : loops) {
            double[] points = new double[2 * loop.size()];
            for (int i = 0; i < loop.size(); i++) {
                double w = frame.outside(loop.u(i), loop.v(i));
                frame.place(loop.u(i), loop.v(i), w, spot, 0);
                if (!(w == w && sprawl.layFlat(spot[0], spot[1]))) {
                    throw new CannotBeBuilt("a template runs off the skin", "a smaller part, or a site farther inside the bottom");
                }
                points[2 * i] = sprawl.u();
                points[2 * i + 1] = sprawl.v();
                plan.add(new double[] {spot[0], spot[1]});
            }
            flat.add(Loop.of(points));
        }
        Fill net = Fill.of(flat.get(0), flat.subList(1, flat.size()), NET * Math.sqrt(flat.get(0).area()));
        double[] places = relaxed(skin, sprawl, net, plan);
        List<List<FlatPoint>> laid = new ArrayList<>();
        int at = 0;
        for (Loop loop : loops) {
            List<FlatPoint> ring = new ArrayList<>();
            for (int i = 0; i < loop.size(); i++, at++) {
                ring.add(new FlatPoint(places[2 * at], places[2 * at + 1]));
            }
            laid.add(ring);
        }
        FlatNet onNet = new FlatNet(net, places);
        Loop edge = flat.get(0);
        double x = frame.origin().getX();
        double y = frame.origin().getY();
        List<Mark> cross = List.of(new Mark(Kind.FORE_AND_AFT, line(sprawl, onNet, edge, x, y, 1, 0)), new Mark(Kind.STATION, line(sprawl, onNet, edge, x, y, 0, 1)));
        return new Development(laid, cross, stretch(skin, plan, laid.get(0)));
    }

    /** Where a plumb plane through the middle meets the skin, laid flat from edge to edge. */
    private static List<FlatPoint> line(Sprawl sprawl, FlatNet net, Loop edge, double x, double y, int aft, int starboard) {
        List<FlatPoint> line = new ArrayList<>(List.of(net.at(0, 0)));
        for (int end = -1; end <= 1; end += 2) {
            double out = 0;
            double step = PIECE * Math.sqrt(edge.area());
            while (step > SHORTEST) {
                double next = out + step;
                if (sprawl.layFlat(x + end * next * aft, y + end * next * starboard) && edge.holds(sprawl.u(), sprawl.v())) {
                    line.add(end < 0 ? 0 : line.size(), net.at(sprawl.u(), sprawl.v()));
                    out = next;
                } else {
                    step /= 2;
                }
            }
        }
        return line;
    }

    private static double[] relaxed(Skin skin, Sprawl sprawl, Fill net, List<double[]> plan) throws CannotBeBuilt {
        double[] flat = new double[2 * net.points()];
        double[] face = new double[Skin.SIZE];
        // x, y, z and the unit normal of each point
        double[] onSkin = new double[6 * net.points()];
        for (int i = 0; i < net.points(); i++) {
            flat[2 * i] = net.u(i);
            flat[2 * i + 1] = net.v(i);
            boolean found = i < plan.size() || sprawl.spread(net.u(i), net.v(i));
            double x = i < plan.size() ? plan.get(i)[0] : sprawl.x();
            double y = i < plan.size() ? plan.get(i)[1] : sprawl.y();
            if (!found || !skin.at(x, y, face)) {
                throw new CannotBeBuilt("a template runs off the skin", "a smaller part, or a site farther inside the bottom");
            }
            double size = Math.sqrt(1 + face[1] * face[1] + face[2] * face[2]);
            onSkin[6 * i] = x;
            onSkin[6 * i + 1] = y;
            onSkin[6 * i + 2] = face[0];
            onSkin[6 * i + 3] = -face[1] / size;
            onSkin[6 * i + 4] = -face[2] / size;
            onSkin[6 * i + 5] = 1 / size;
        }
        new Relaxation(net, flat, (a, b) -> arc(onSkin, 6 * a, 6 * b)).settle();
        return flat;
    }

    /** Length of the arc over a short chord, from how far the normal turns along it. */
    private static double arc(double[] p, int a, int b) {
        double dx = p[b] - p[a];
        double dy = p[b + 1] - p[a + 1];
        double dz = p[b + 2] - p[a + 2];
        double chord = Math.sqrt(dx * dx + dy * dy + dz * dz);
        double turn = ((p[b + 3] - p[a + 3]) * dx + (p[b + 4] - p[a + 4]) * dy + (p[b + 5] - p[a + 5]) * dz) / chord;
        double half = Math.asin(Math.max(-1, Math.min(1, turn / 2)));
        return Math.abs(half) < 1e-6 ? chord : chord * half / Math.sin(half);
    }

    private static double stretch(Skin skin, List<double[]> plan, List<FlatPoint> outline) throws CannotBeBuilt {
        double most = 0;
        int count = Math.min(COMPARED, outline.size());
        for (int i = 0; i < count; i++) {
            for (int k = i + 1; k < count; k++) {
                int a = i * outline.size() / count;
                int b = k * outline.size() / count;
                double there = Sprawl.length(skin, plan.get(a)[0], plan.get(a)[1], plan.get(b)[0], plan.get(b)[1]);
                double here = Math.hypot(outline.get(a).u() - outline.get(b).u(), outline.get(a).v() - outline.get(b).v());
                if (there != there) {
                    throw new CannotBeBuilt("no straight line along the skin joins two points of a template",
                        "a smaller part, or a site on flatter skin");
                }
                most = Math.max(most, Math.abs(there - here));
            }
        }
        return most;
    }

    /** A loop laid flat, in the order they were given. */
    public List<FlatPoint> loop(int i) {
        return loops.get(i);
    }

    /** The lines fore and aft and athwart through the middle, as they are snapped on the skin. */
    public List<Mark> cross() {
        return cross;
    }

    /** Largest difference between a length along the skin and the same length laid flat [m]. */
    public double stretch() {
        return stretch;
    }
}
