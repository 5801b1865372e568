package org.garboard.cutout.part;

import org.garboard.solid.Height;
import org.garboard.solid.Loop;

/**
 * The plane w = c + a u + b v that lies best, in squares, in a face under a loop.
 *
 * @param left largest distance between plane and face [m]
 */
public record SawPlane(double a, double b, double c, double left) {

    public static SawPlane under(Height face, Loop loop) {
        int n = 2 * loop.size() + 1;
        double[] u = new double[n];
        double[] v = new double[n];
        double[] w = new double[n];
        double[] mean = new double[3];
        for (int i = 0; i < n; i++) {
            double share = i % 2 == 0 ? 0.5 : 1;
            u[i] = i == n - 1 ? 0 : share * loop.u(i / 2);
            v[i] = i == n - 1 ? 0 : share * loop.v(i / 2);
            w[i] = face.at(u[i], v[i]);
            mean[0] += u[i] / n;
            mean[1] += v[i] / n;
            mean[2] += w[i] / n;
        }
        double uu = 0;
        double uv = 0;
        double vv = 0;
        double uw = 0;
        double vw = 0;
        for (int i = 0; i < n; i++) {
            double du = u[i] - mean[0];
            double dv = v[i] - mean[1];
            double dw = w[i] - mean[2];
            uu += du * du;
            uv += du * dv;
            vv += dv * dv;
            uw += du * dw;
            vw += dv * dw;
        }
        double determinant = uu * vv - uv * uv;
        double a = (uw * vv - vw * uv) / determinant;
        double b = (vw * uu - uw * uv) / determinant;
        double c = mean[2] - a * mean[0] - b * mean[1];
        double left = 0;
        for (int i = 0; i < n; i++) {
            left = Math.max(left, Math.abs(w[i] - c - a * u[i] - b * v[i]) / Math.sqrt(1 + a * a + b * b));
        }
        return new SawPlane(a, b, c, left);
    }

    /** Its height [m]. */
    public double at(double u, double v) {
        return c + a * u + b * v;
    }
}
