package org.garboard.cutout.fairing;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.solid.Loop;

/** The block in plan: the smallest planform that holds the body, a bolt abaft of it and a pin ahead of it. */
final class BlockPlan {
    /** Holes for bolt and pin [m]; our choice, for 10 mm rod. */
    static final double BOLT_HOLE = 0.0105;
    /** Wood or plastic beside a hole or the body [m]; our choice. */
    private static final double WALL = 0.008;
    /** No block is wider [m]. */
    static final double WIDEST = 3;
    private static final double WHOLE = 0.001;
    private static final double SEARCH_CHORD = 2e-4;

    private final Planform planform;
    private final double slenderness;
    private final BodyOutline recess;
    private final Loop recessLoop;
    private final double width;

    BlockPlan(Planform planform, double slenderness, BodyOutline recess) throws CannotBeBuilt {
        this.planform = planform;
        this.slenderness = slenderness;
        this.recess = recess;
        this.recessLoop = recess.loop(SEARCH_CHORD, 1);
        if (!fits(WIDEST)) {
            throw new CannotBeBuilt("no block up to 3 m wide takes in a body " + Lengths.mm(recess.length()) + " by " + Lengths.mm(recess.width()),
                "a smaller body, or another slenderness");
        }
        double small = 0;
        double large = WIDEST;
        while (large - small > WHOLE / 2) {
            double middle = (small + large) / 2;
            if (fits(middle)) {
                large = middle;
            } else {
                small = middle;
            }
        }
        this.width = Math.ceil(large / WHOLE - 1e-9) * WHOLE;
    }

    private boolean fits(double wide) {
        double lengthwise = slenderness * wide;
        for (int i = 0; i < recessLoop.size(); i++) {
            for (int k = 0; k < 4; k++) {
                double away = k * Math.PI / 2;
                double u = recessLoop.u(i) + WALL * Math.cos(away);
                double v = recessLoop.v(i) + WALL * Math.sin(away);
                if (Math.abs(v) > planform.halfBreadth(lengthwise, wide, u)) {
                    return false;
                }
            }
        }
        double near = recess.length() / 2 + WALL + BOLT_HOLE / 2;
        return planform.halfBreadth(lengthwise, wide, near + BOLT_HOLE / 2 + WALL) > BOLT_HOLE / 2 + WALL
            && planform.halfBreadth(lengthwise, wide, -near - BOLT_HOLE / 2 - WALL) > BOLT_HOLE / 2 + WALL;
    }

    double width() {
        return width;
    }

    double length() {
        return slenderness * width;
    }

    double nose() {
        return -planform.widest() * length();
    }

    double tail() {
        return nose() + length();
    }

    /** From the nose to what is left whole ahead of the body [m]. */
    double roomAtNose() {
        return -recess.length() / 2 - WALL - nose();
    }

    /** Where the bolt goes, abaft of the body: half way to where the block grows too narrow for it [m]. */
    double bolt() {
        return between(1);
    }

    /** Where the pin goes, ahead of the body [m], below 0. */
    double pin() {
        return -between(-1);
    }

    private double between(int direction) {
        double near = recess.length() / 2 + WALL + BOLT_HOLE / 2;
        double low = near;
        double high = direction > 0 ? tail() : -nose();
        while (high - low > WHOLE / 10) {
            double middle = (low + high) / 2;
            double away = direction * (middle + BOLT_HOLE / 2);
            if (planform.halfBreadth(length(), width, away) > BOLT_HOLE / 2 + WALL) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (near + low) / 2;
    }

    /** Within half the chord error, because its chords all lie inside the form and their losses add up. */
    Loop outline(double chord, double step) {
        return planform.loop(length(), width, chord / 2, step);
    }

    /** Bolt and pin. */
    List<Loop> holes(double chord) {
        return new ArrayList<>(List.of(Loop.circle(bolt(), 0, BOLT_HOLE / 2, chord), Loop.circle(pin(), 0, BOLT_HOLE / 2, chord)));
    }

    double halfBreadth(double aft) {
        return planform.halfBreadth(length(), width, aft);
    }
}
