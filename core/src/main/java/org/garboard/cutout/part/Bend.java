package org.garboard.cutout.part;

import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.solid.Loop;

/** How round the skin is under a part, and so how fine its triangles must be. */
public final class Bend {
    /**
     * Largest radius of an empty circle between lattice and loops, in steps (0.58 in the lattice, more where it keeps
     * clear of a loop), with some for curvature that is looked at in few places; measured.
     */
    private static final double EMPTY = 1.1;
    private static final double FINEST = 0.001;
    private static final double COARSEST = 0.12;
    /** A skin thicker than so much of its radius has no inside worth the name; our choice. */
    private static final double MOST = 0.5;

    private final AxisFrame frame;
    private final Loop loop;
    private final double largest;

    private Bend(AxisFrame frame, Loop loop, double largest) {
        this.frame = frame;
        this.loop = loop;
        this.largest = largest;
    }

    /** The largest curvature under a loop, on it and in steps to its middle. */
    public static Bend under(AxisFrame frame, Loop loop) {
        double largest = frame.bend(0, 0);
        for (int i = 0; i < loop.size(); i += Math.max(1, loop.size() / 48)) {
            for (double share = 0.25; share <= 1; share += 0.25) {
                largest = Math.max(largest, frame.bend(share * loop.u(i), share * loop.v(i)));
            }
        }
        return new Bend(frame, loop, largest);
    }

    /** Whether a skin of that thickness has an inside face here. */
    public void require(double thickness) throws CannotBeBuilt {
        if (!(thickness * largest <= MOST)) {
            throw new CannotBeBuilt("the skin is " + Lengths.mm(thickness) + " thick where it bends to a radius of "
                + Lengths.mm(1 / largest), "a thickness of " + Lengths.mmDown(MOST / largest) + " at most, or a site on flatter skin");
        }
        if (!hasInside(thickness)) {
            double there = 0;
            double gone = thickness;
            while (gone - there > 1e-4) {
                double middle = (there + gone) / 2;
                there = hasInside(middle) ? middle : there;
                gone = there == middle ? gone : middle;
            }
            throw new CannotBeBuilt("the skin is " + Lengths.mm(thickness) + " thick, and square to its inside lies no skin under all of the part",
                "a thickness of " + Lengths.mmDown(there) + " at most, or a site farther from the ends of the skin");
        }
    }

    private boolean hasInside(double thickness) {
        for (int i = 0; i < loop.size(); i++) {
            if (Double.isNaN(frame.inside(loop.u(i), loop.v(i), thickness))) {
                return false;
            }
        }
        return true;
    }

    /**
     * Step of triangles whose middles lie within chord of a face so far inside the skin [m]: one in a circle of radius
     * r strays by r^2 / 2 of the curvature.
     */
    public double step(double chord, double thickness) {
        double inside = largest / (1 - thickness * largest);
        return Math.max(FINEST, Math.min(COARSEST, Math.sqrt(2 * chord / inside) / EMPTY));
    }
}
