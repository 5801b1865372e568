package org.garboard.hull;

/**
 * Where the outside of a panel meets what bounds it in a plane x, found by Newton's method from the inside's
 * own line: the centreline plane, or the outside of the next panel out.
 */
final class FaceMeeting {
    /**
     * Faces that meet farther than so many thicknesses from where the inside line itself comes to lie on them
     * are no knuckle but a knife's edge, steeper than 76 degrees on either side, or a step; our choice.
     */
    private static final double MOST_REACH = 4;

    private static final double NUDGE = 1e-6;
    private static final double MEETS = 1e-9;
    private static final double CLOSE = 1e-12;
    /** Keeps the step finite where two faces lie in one. */
    private static final double FLAT = 1e-12;
    private static final int MOST_ROUNDS = 50;

    private final double x;
    private final double reach;
    private final double[] one = new double[2];
    private final double[] other = new double[2];
    private final double[] alongOne = new double[2];
    private final double[] alongOther = new double[2];
    private double below;
    private double above;

    /** @param thickest skin of the faces [m] */
    FaceMeeting(double x, double thickest) {
        this.x = x;
        this.reach = MOST_REACH * thickest + MEETS;
    }

    /** v of the meeting on the face below the line. */
    double below() {
        return below;
    }

    /** v of the meeting on the face above the line. */
    double above() {
        return above;
    }

    double y() {
        return 0.5 * (one[0] + other[0]);
    }

    double z() {
        return 0.5 * (one[1] + other[1]);
    }

    /** Whether a face meets the centreline plane near its lower edge. */
    boolean ofCentreline(OutsideFace bottom) {
        above = 0;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            if (!bottom.at(x, above, one) || !slope(bottom, above, one, alongOne)) {
                return false;
            }
            if (!(Math.abs(one[0]) > CLOSE)) {
                break;
            }
            above -= one[0] / alongOne[0];
        }
        boolean meets = Math.abs(one[0]) < MEETS;
        one[0] = 0;
        System.arraycopy(one, 0, other, 0, 2);
        return meets && isNear(bottom, 0, one);
    }

    /** Whether a face meets the next one out near the line between them. */
    boolean ofFaces(OutsideFace lower, OutsideFace upper) {
        below = 1;
        above = 0;
        double gap = Double.NaN;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            if (!lower.at(x, below, one) || !upper.at(x, above, other)
                    || !slope(lower, below, one, alongOne) || !slope(upper, above, other, alongOther)) {
                return false;
            }
            gap = Math.hypot(other[0] - one[0], other[1] - one[1]);
            if (!(gap > CLOSE)) {
                break;
            }
            step(other[0] - one[0], other[1] - one[1]);
        }
        return gap < MEETS && isNear(lower, 1, one) && isNear(upper, 0, other);
    }

    /** Least squares for the two ways along the faces that close the gap. */
    private void step(double gapY, double gapZ) {
        double lengthOne = Math.hypot(alongOne[0], alongOne[1]);
        double lengthOther = Math.hypot(alongOther[0], alongOther[1]);
        double cosine = (alongOne[0] * alongOther[0] + alongOne[1] * alongOther[1]) / (lengthOne * lengthOther);
        double onOne = (alongOne[0] * gapY + alongOne[1] * gapZ) / lengthOne;
        double onOther = -(alongOther[0] * gapY + alongOther[1] * gapZ) / lengthOther;
        double determinant = (1 + FLAT) * (1 + FLAT) - cosine * cosine;
        below += ((1 + FLAT) * onOne + cosine * onOther) / determinant / lengthOne;
        above += ((1 + FLAT) * onOther + cosine * onOne) / determinant / lengthOther;
    }

    /** Change of the point with v. */
    private boolean slope(OutsideFace face, double v, double[] point, double[] along) {
        boolean found = face.at(x, v + NUDGE, along);
        along[0] = (along[0] - point[0]) / NUDGE;
        along[1] = (along[1] - point[1]) / NUDGE;
        return found;
    }

    private boolean isNear(OutsideFace face, double edge, double[] meeting) {
        double[] foot = new double[2];
        return face.at(x, edge, foot) && Math.hypot(meeting[0] - foot[0], meeting[1] - foot[1]) < reach;
    }
}
