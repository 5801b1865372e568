package org.garboard.cutout.skin;

/**
 * The inside of a skin: square to the outside everywhere, so far from it. It faces as the outside does; a radius is
 * less inside a round bottom by the thickness. Not for several threads at once.
 */
public final class InsideSkin implements Skin {
    private static final int MOST_STEPS = 60;
    private static final double CLOSE = 1e-12;

    private final Skin outside;
    private final double thickness;

    /** @param thickness [m], less than the skin's radius anywhere */
    public InsideSkin(Skin outside, double thickness) {
        this.outside = outside;
        this.thickness = thickness;
    }

    /** Looks for the place outside whose normal comes by. */
    @Override
    public boolean at(double x, double y, double[] out) {
        double footX = x;
        double footY = y;
        for (int i = 0; i < MOST_STEPS; i++) {
            if (!outside.at(footX, footY, out)) {
                return false;
            }
            double size = Math.sqrt(1 + out[1] * out[1] + out[2] * out[2]);
            double missX = x - footX + thickness * out[1] / size;
            double missY = y - footY + thickness * out[2] / size;
            if (Math.abs(missX) + Math.abs(missY) < CLOSE) {
                out[0] += thickness / size;
                out[3] = out[3] / (1 - thickness * out[3]);
                return true;
            }
            footX += missX;
            footY += missY;
        }
        return false;
    }
}
