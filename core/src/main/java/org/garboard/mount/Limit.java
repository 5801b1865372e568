package org.garboard.mount;

/**
 * The figure a check is held to.
 *
 * @param value in metres or radians
 * @param measure how it is shown
 * @param source where it comes from
 */
record Limit(double value, Measure measure, String source) {

    /** How lengths and angles are shown to people. */
    enum Measure {
        LENGTH("mm", 1000), ANGLE("deg", 180 / Math.PI);

        private final String unit;
        private final double scale;

        Measure(String unit, double scale) {
            this.unit = unit;
            this.scale = scale;
        }

        String unit() {
            return unit;
        }

        double shown(double value) {
            return value * scale;
        }
    }

    static Limit ofMillimetres(double millimetres, String source) {
        return ofMetres(millimetres / 1000, source);
    }

    static Limit ofMetres(double metres, String source) {
        return new Limit(metres, Measure.LENGTH, source);
    }

    static Limit ofDegrees(double degrees, String source) {
        return new Limit(Math.toRadians(degrees), Measure.ANGLE, source);
    }
}
