package org.garboard.flow.streams;

/** The flow along the long axis of an ellipsoid in closed form: x = -a cos(u / columns π), round it v / rows of a right angle. */
final class EllipsoidSkin implements SurfaceMotion {
    private final double a;
    private final double b;
    private final double c;

    EllipsoidSkin(double a, double b, double c) {
        this.a = a;
        this.b = b;
        this.c = c;
    }

    @Override
    public int columns() {
        return 100;
    }

    @Override
    public int rows() {
        return 10;
    }

    double u(double x) {
        return columns() / Math.PI * Math.acos(-x / a);
    }

    double v(double y, double z) {
        return rows() * 2 / Math.PI * Math.atan2(y / b, -z / c);
    }

    @Override
    public void position(double u, double v, double[] out) {
        double theta = Math.PI * u / columns();
        double phi = 0.5 * Math.PI * v / rows();
        out[0] = -a * Math.cos(theta);
        out[1] = b * Math.sin(theta) * Math.sin(phi);
        out[2] = -c * Math.sin(theta) * Math.cos(phi);
    }

    /** The surface flow is the part of the stream that lies in the skin: w - (w.n) n, to scale. */
    @Override
    public void rate(double u, double v, double[] out) {
        double theta = Math.PI * u / columns();
        double phi = 0.5 * Math.PI * v / rows();
        double[] along = {a * Math.sin(theta), b * Math.cos(theta) * Math.sin(phi), -c * Math.cos(theta) * Math.cos(phi)};
        double[] round = {0, b * Math.sin(theta) * Math.cos(phi), c * Math.sin(theta) * Math.sin(phi)};
        double aa = dot(along, along);
        double ab = dot(along, round);
        double bb = dot(round, round);
        double by = aa * bb - ab * ab;
        double p = along[0] * bb / by;
        double q = -along[0] * ab / by;
        double speed = Math.sqrt(p * p * aa + 2 * p * q * ab + q * q * bb);
        out[0] = p / speed * columns() / Math.PI;
        out[1] = q / speed * rows() * 2 / Math.PI;
    }

    private static double dot(double[] one, double[] other) {
        return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
    }
}
