package org.garboard.takeoff;

/**
 * From what was measured to the boat's own frame: trim turns about the athwartship level, heel about her own
 * fore-and-aft line, and the stretched line lies beside her centreline by so much here and so much more aft.
 *
 * @param trim bow-up [rad]
 * @param heel starboard side down [rad]
 * @param beside of the centreline: the stretched line's y at x = 0 [m]
 * @param yaw growth of that with x, small
 * @param aft what x is moved by [m]
 * @param up what z is moved by [m]
 */
record Pose(double trim, double heel, double beside, double yaw, double aft, double up) {
    static final Pose UPRIGHT = new Pose(0, 0, 0, 0, 0, 0);

    /** {x, y, z} in the boat's own frame [m]. */
    double[] own(double x, double y, double z) {
        double alongX = x * Math.cos(trim) - z * Math.sin(trim);
        double plumb = x * Math.sin(trim) + z * Math.cos(trim);
        double acrossY = y * Math.cos(heel) - plumb * Math.sin(heel) - beside - yaw * alongX;
        return new double[] {alongX + yaw * acrossY + aft, acrossY, plumb * Math.cos(heel) + y * Math.sin(heel) + up};
    }

    Pose withTrim(double other) {
        return new Pose(other, heel, beside, yaw, aft, up);
    }

    Pose withHeel(double other) {
        return new Pose(trim, other, beside, yaw, aft, up);
    }

    Pose beside(double other, double growth) {
        return new Pose(trim, heel, other, growth, aft, up);
    }

    Pose movedBy(double moreAft, double moreUp) {
        return new Pose(trim, heel, beside, yaw, aft + moreAft, up + moreUp);
    }
}
