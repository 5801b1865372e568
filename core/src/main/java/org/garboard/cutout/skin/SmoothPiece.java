package org.garboard.cutout.skin;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Lengths;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hull.Step;
import org.garboard.solid.Loop;

/**
 * The piece of skin round a place that bends without an edge: to one side of the keel line, between two
 * knuckles, short of steps and of the table's ends.
 */
public final class SmoothPiece {
    /** Parts keep so far from an edge [m]; our choice, a marked line is that wide. */
    private static final double CLEAR = 0.001;
    /** Sites are moved by steps that a yard marks [m]; our choice. */
    private static final double MARK = 0.005;
    /** What skin that bends may add to the way to move [m]; our choice, tried on warped bottoms. */
    private static final double BEND = 0.0005;

    private final Hull hull;
    private final double x;
    private final double y;

    public SmoothPiece(Hull hull, double x, double y) {
        this.hull = hull;
        this.x = x;
        this.y = y;
    }

    /**
     * Whether a loop of a frame, carried along its axis, meets this piece all round.
     *
     * @param part as it stands in the refusal, "the backing block"
     */
    public void require(AxisFrame frame, Loop loop, String part) throws CannotBeBuilt {
        double inboard = 0;
        double outboard = 0;
        double forward = 0;
        double aft = 0;
        String inner = "the keel line";
        String outer = "the edge of the bottom";
        for (int i = 0; i < loop.size(); i++) {
            double w = frame.outside(loop.u(i), loop.v(i));
            if (!(Math.abs(w) < 1)) {
                throw new CannotBeBuilt(part + " runs off the skin", "a smaller part, or a site farther inside the bottom");
            }
            Vector3D at = frame.toHull(loop.u(i), loop.v(i), w);
            double side = side(at);
            // beyond an edge the skin turns away: how far to move is told by the plane that touches it at the site
            double flat = side(frame.toHull(loop.u(i), loop.v(i), frame.touching(loop.u(i), loop.v(i))));
            double overKeel = over(CLEAR - side, CLEAR - flat);
            if (overKeel > inboard) {
                inboard = overKeel;
                inner = "the keel line";
            }
            for (HullLine line : lines()) {
                double edge = line.y(at.getX());
                double over = over(side + CLEAR - edge, flat + CLEAR - edge);
                double under = over(edge + CLEAR - side, edge + CLEAR - flat);
                if (Math.abs(y) < line.y(x) && over > outboard) {
                    outboard = over;
                    outer = line.name();
                } else if (Math.abs(y) >= line.y(x) && under > inboard) {
                    inboard = under;
                    inner = line.name();
                }
            }
            forward = Math.max(forward, hull.firstSection() + CLEAR - at.getX());
            aft = Math.max(aft, at.getX() + CLEAR - hull.afterEnd());
            for (Step step : hull.steps()) {
                double edge = step.x(side);
                if (edge == edge && side <= step.outer()) {
                    if (x < edge) {
                        aft = Math.max(aft, at.getX() + CLEAR - edge);
                    } else {
                        forward = Math.max(forward, edge + CLEAR - at.getX());
                    }
                }
            }
        }
        refuse(part, inner, inboard, outboard > 0 ? outer : "", outboard, "farther outboard", "farther inboard");
        refuse(part, "a step or the table's forward end", forward, aft > 0 ? "a step or the table's after end" : "", aft,
            "farther aft", "farther forward");
    }

    private double side(Vector3D at) {
        return y < 0 ? -at.getY() : at.getY();
    }

    private static double over(double onSkin, double flat) {
        return onSkin > 0 && flat > 0 ? flat : onSkin;
    }

    private List<HullLine> lines() {
        return hull.lines().subList(1, hull.lines().size());
    }

    private static String marked(double over) {
        return Lengths.mmUp(Math.ceil((over + BEND) / MARK) * MARK);
    }

    private static void refuse(String part, String low, double lowOver, String high, double highOver, String up, String down)
            throws CannotBeBuilt {
        if (lowOver > 0 && highOver > 0) {
            throw new CannotBeBuilt(part + " reaches over " + low + " by " + Lengths.mm(lowOver) + " and over " + high
                + " by " + Lengths.mm(highOver), "a part smaller by " + Lengths.mmUp(lowOver + highOver));
        }
        if (lowOver > 0) {
            throw new CannotBeBuilt(part + " reaches over " + low + " by " + Lengths.mm(lowOver),
                "a site at least " + marked(lowOver) + " " + up);
        }
        if (highOver > 0) {
            throw new CannotBeBuilt(part + " reaches over " + high + " by " + Lengths.mm(highOver),
                "a site at least " + marked(highOver) + " " + down);
        }
    }
}
