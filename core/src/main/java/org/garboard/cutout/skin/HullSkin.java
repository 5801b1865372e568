package org.garboard.cutout.skin;

import org.garboard.hull.Hull;
import org.garboard.hull.Panel;

/** The lowest skin of a hull. Not for several threads at once. */
public final class HullSkin implements Skin {
    private final Hull hull;
    private final double[] point = new double[Panel.POINT_SIZE];

    public HullSkin(Hull hull) {
        this.hull = hull;
    }

    @Override
    public boolean at(double x, double y, double[] out) {
        if (!hull.evaluate(x, y, point, 0)) {
            return false;
        }
        out[0] = point[Panel.Z];
        out[1] = point[Panel.DZ_DX];
        out[2] = y < 0 ? -point[Panel.DZ_DY] : point[Panel.DZ_DY];
        out[3] = Math.max(Math.abs(point[Panel.K1]), Math.abs(point[Panel.K2]));
        return true;
    }
}
