package org.garboard.cutout.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.cutout.skin.Skin;
import org.garboard.cutout.template.Template.Kind;
import org.garboard.cutout.template.Template.Mark;
import org.garboard.solid.Loop;
import org.garboard.solid.Parting;

/**
 * A stretch of skin laid flat: exactly where the skin is developable, folded along its edges where they lie straight; else
 * with the least distortion, in squares, of the sides of a net over it. Places of the skin are given in a frame, as they are
 * seen along its axis; u of the flat lies along the skin in the plane y = constant at the origin.
 */
public final class Development {
    /** Sides of the net to the outline's length, our choice. */
    private static final double NET = 0.12;
    /** Pieces of the cross to the outline's size, our choice: an arc of a tenth of its radius strays by a thousandth of itself. */
    private static final double PIECE = 0.1;
    /** So near the outline the cross ends [m]. */
    private static final double SHORTEST = 5e-4;
    private static final int MOST_ROUNDS = 60;
    private static final double CLOSE = 1e-7;

    private final AxisFrame frame;
    private final FirstLay first;
    private final SkinNet net;
    private final Loop edge;
    /** How far the net's points have moved from where they were laid first. */
    private final double[] moved;
    private final double[] settled;
    private final List<FlatPoint> laidOutline = new ArrayList<>();
    private final double stretch;

    private Development(AxisFrame frame, FirstLay first, Loop outline, List<Parting.Line> creases) throws CannotBeBuilt {
        this.frame = frame;
        this.first = first;
        this.edge = Parting.crossed(outline, creases);
        this.net = SkinNet.of(edge, creases, NET * Math.sqrt(edge.area()));
        NetSides sides = new NetSides(net, frame);
        double[] laid = new double[2 * net.points()];
        for (int i = 0; i < net.points(); i++) {
            FlatPoint flat = first.of(sides.place(i)).orElseThrow(NetSides::offSkin);
            laid[2 * i] = flat.u();
            laid[2 * i + 1] = flat.v();
        }
        this.settled = laid.clone();
        new Relaxation(net, settled, sides).settle();
        this.moved = new double[laid.length];
        for (int i = 0; i < laid.length; i++) {
            moved[i] = settled[i] - laid[i];
        }
        for (int i = 0; i < edge.size(); i++) {
            laidOutline.add(new FlatPoint(settled[2 * i], settled[2 * i + 1]));
        }
        Ruler ruler = new Ruler(frame, net, settled);
        this.stretch = creases.isEmpty() ? ruler.straightest(edge.size()) : ruler.underLines(edge.size());
    }

    /**
     * Skin without an edge, from the frame's origin.
     *
     * @param outline round all that is to be laid flat
     */
    public static Development of(AxisFrame frame, Loop outline) throws CannotBeBuilt {
        Sprawl sprawl = Sprawl.from(frame.skin(), frame.origin().getX(), frame.origin().getY());
        return new Development(frame, place -> sprawl.layFlat(place.getX(), place.getY())
            ? Optional.of(new FlatPoint(sprawl.u(), sprawl.v())) : Optional.empty(), outline, List.of());
    }

    /**
     * Skin that may have edges fore and aft.
     *
     * @param creases all edges that run through the outline, v over u of the frame
     */
    public static Development over(AxisFrame frame, Loop outline, List<Parting.Line> creases) throws CannotBeBuilt {
        return new Development(frame, new KeelLay(frame, creases), outline, creases);
    }

    /** Where a place goes that is seen at u, v. */
    public FlatPoint flat(double u, double v) throws CannotBeBuilt {
        double w = frame.outside(u, v);
        if (w != w) {
            throw NetSides.offSkin();
        }
        FlatPoint laid = first.of(frame.toHull(u, v, w)).orElseThrow(NetSides::offSkin);
        double[] shift = net.at(u, v, moved);
        return new FlatPoint(laid.u() + shift[0], laid.v() + shift[1]);
    }

    /** The outline laid flat, with points where edges of the skin cross it. */
    public List<FlatPoint> outline() {
        return List.copyOf(laidOutline);
    }

    /** A loop laid flat, point for point. */
    public List<FlatPoint> flat(Loop loop) throws CannotBeBuilt {
        List<FlatPoint> flat = new ArrayList<>();
        for (int i = 0; i < loop.size(); i++) {
            flat.add(flat(loop.u(i), loop.v(i)));
        }
        return flat;
    }

    /** The other way: where in the frame a place is seen that lies flat there. */
    public FlatPoint plan(FlatPoint wanted) throws CannotBeBuilt {
        double[] seen = net.seen(settled, wanted.u(), wanted.v());
        double u = seen[0];
        double v = seen[1];
        for (int i = 0; i < MOST_ROUNDS; i++) {
            FlatPoint flat = flat(u, v);
            double missU = wanted.u() - flat.u();
            double missV = wanted.v() - flat.v();
            u += missU;
            v += missV;
            if (Math.abs(missU) + Math.abs(missV) < CLOSE) {
                break;
            }
        }
        return new FlatPoint(u, v);
    }

    /** The lines fore and aft and athwart through the middle, as they are snapped on the skin, from edge to edge. */
    public List<Mark> cross() throws CannotBeBuilt {
        return List.of(new Mark(Kind.FORE_AND_AFT, line(1, 0)), new Mark(Kind.STATION, line(0, 1)));
    }

    private List<FlatPoint> line(int aft, int starboard) throws CannotBeBuilt {
        List<FlatPoint> line = new ArrayList<>(List.of(flat(0, 0)));
        double[] face = new double[Skin.SIZE];
        for (int end = -1; end <= 1; end += 2) {
            double out = 0;
            double step = PIECE * Math.sqrt(edge.area());
            while (step > SHORTEST) {
                double next = out + step;
                double x = frame.origin().getX() + end * next * aft;
                double y = frame.origin().getY() + end * next * starboard;
                boolean found = frame.skin().at(x, y, face);
                Vector3D from = Vector3D.of(x, y, face[0]).subtract(frame.origin());
                double u = from.dot(frame.along());
                double v = from.dot(frame.across());
                if (found && edge.holds(u, v)) {
                    line.add(end < 0 ? 0 : line.size(), flat(u, v));
                    out = next;
                } else {
                    step /= 2;
                }
            }
        }
        return line;
    }

    /** Largest difference between a length along the skin and the same length laid flat [m]. */
    public double stretch() {
        return stretch;
    }
}
