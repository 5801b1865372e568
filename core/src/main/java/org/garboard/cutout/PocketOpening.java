package org.garboard.cutout;

/** Where a pocket and its ramps come out through the skin, in the pocket's frame; metres. */
final class PocketOpening {
    private static final double CLOSE = 1e-10;

    private final PocketFrame frame;
    private final PocketForm form;

    PocketOpening(PocketFrame frame, PocketForm form) {
        this.frame = frame;
        this.form = form;
    }

    /** Distance aft at which the cut's after end comes out at a distance off the centreline; NaN off the skin. */
    double after(double across) {
        return end(across, 1);
    }

    /** The same of the forward end, negative. */
    double fore(double across) {
        return -end(across, -1);
    }

    /**
     * Bisection on ramp less skin: the ramp falls and, where a pocket can be, stays above the skin up
     * to one crossing. Beyond the end of the skin counts as outside, so that a first step too long does no harm.
     */
    private double end(double across, int direction) {
        if (!form.ramped()) {
            return form.reach(across);
        }
        double inside = form.halfLength();
        if (clearance(inside, across, direction) <= 0) {
            return form.reach(across);
        }
        double outside = inside + form.faceDepth() * form.rampRatio();
        for (int i = 0; i < 8 && clearance(outside, across, direction) > 0; i++) {
            outside += Math.max(0.1, outside - inside);
        }
        while (outside - inside > CLOSE) {
            double middle = 0.5 * (inside + outside);
            if (clearance(middle, across, direction) > 0) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return clearance(outside, across, direction) <= 0 ? 0.5 * (inside + outside) : Double.NaN;
    }

    private double clearance(double along, double across, int direction) {
        return form.rampLevel(along) - frame.rise(direction * along, across);
    }
}
