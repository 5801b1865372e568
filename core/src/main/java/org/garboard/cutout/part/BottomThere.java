package org.garboard.cutout.part;

import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Lengths;
import org.garboard.cutout.skin.HullSkin;
import org.garboard.cutout.skin.Skin;
import org.garboard.hull.Hull;
import org.garboard.units.Angle;

/** Whether there is a bottom to go through at a place. */
public final class BottomThere {
    /** Steeper skin is topside, not bottom [deg]; our choice. */
    private static final double STEEPEST_DEG = 45;

    private BottomThere() {
    }

    /** The skin of a hull, if a hole can go through it at x, y [m]. */
    public static Skin require(Hull hull, double x, double y) throws CannotBeBuilt {
        Skin skin = new HullSkin(hull);
        double[] face = new double[Skin.SIZE];
        if (!skin.at(x, y, face)) {
            throw new CannotBeBuilt("there is no skin at x = " + Lengths.mm(x) + ", y = " + Lengths.mm(y),
                "x from " + Lengths.mm(hull.firstSection()) + " to " + Lengths.mm(hull.afterEnd()) + ", inside the sheer");
        }
        double slope = Math.atan(Math.hypot(face[1], face[2]));
        if (!(slope <= Math.toRadians(STEEPEST_DEG))) {
            throw new CannotBeBuilt("the skin stands at " + Lengths.deg(Angle.ofRadians(slope)) + " to the level there",
                "a site where it stands at 45.0 deg or less");
        }
        return skin;
    }
}
