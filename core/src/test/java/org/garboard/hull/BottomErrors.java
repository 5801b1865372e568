package org.garboard.hull;

/**
 * Root mean squares of what a drawn bottom does against what its closed form does.
 *
 * @param deadriseDegrees of the local deadrise [deg]
 * @param buttockSlopeDegrees of the slope fore and aft [deg]
 * @param curvature of the section's curvature d2z/dy2 / (1 + (dz/dy)^2)^1.5 [1/m]
 */
record BottomErrors(double deadriseDegrees, double buttockSlopeDegrees, double curvature) {
    private static final int ALONG = 80;
    private static final int ACROSS = 47;
    private static final double SMALL = 1e-4;
    /** Between the heights from which curvature is taken [m]. */
    private static final double STEP = 0.01;

    /** @param from and to, the stretch of the length that counts, 0 to 1 from forward */
    static BottomErrors of(Hull hull, Bottoms form, double from, double to) {
        double deadrise = 0;
        double slope = 0;
        double curvature = 0;
        int count = 0;
        int curved = 0;
        for (int i = 1; i < ALONG; i++) {
            double x = Bottoms.LENGTH * i / ALONG;
            for (int k = 0; k < ACROSS && x >= from * Bottoms.LENGTH && x <= to * Bottoms.LENGTH; k++) {
                double y = form.chineHalfBreadth(x) * (0.04 + 0.92 * k / (ACROSS - 1));
                SkinPoint point = hull.at(x, y).orElseThrow();
                deadrise += square(point.deadrise().radians() - Math.atan(form.slope(x, y)));
                slope += square(point.buttockSlope().radians()
                        - Math.atan((form.z(x + SMALL, y) - form.z(x - SMALL, y)) / (2 * SMALL)));
                if (y > STEP && y + STEP < 0.98 * form.chineHalfBreadth(x)) {
                    curvature += square(bend(hull.height(x, y - STEP), hull.height(x, y), hull.height(x, y + STEP))
                            - bend(form.z(x, y - STEP), form.z(x, y), form.z(x, y + STEP)));
                    curved++;
                }
                count++;
            }
        }
        return new BottomErrors(Math.toDegrees(Math.sqrt(deadrise / count)),
                Math.toDegrees(Math.sqrt(slope / count)), Math.sqrt(curvature / curved));
    }

    private static double square(double value) {
        return value * value;
    }

    /** Curvature of a curve from three heights. */
    private static double bend(double before, double here, double after) {
        double slope = (after - before) / (2 * STEP);
        return (after - 2 * here + before) / (STEP * STEP) / Math.pow(1 + slope * slope, 1.5);
    }
}
