package org.garboard.hydrostatics;

import java.util.ArrayList;
import java.util.List;

/** A convex figure in a plane, cut by straight lines; integrals over it of what is at most quadratic are exact. */
final class Polygon {
    private final List<double[]> corners;

    private Polygon(List<double[]> corners) {
        this.corners = corners;
    }

    /** A function of the two coordinates. */
    interface Field {
        double at(double u, double v);
    }

    static Polygon rectangle(double u0, double u1, double v0, double v1) {
        return new Polygon(List.of(new double[] {u0, v0}, new double[] {u1, v0}, new double[] {u1, v1}, new double[] {u0, v1}));
    }

    /** What of it lies where a linear function is not negative. */
    Polygon where(Field linear) {
        List<double[]> kept = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            double[] here = corners.get(i);
            double[] next = corners.get((i + 1) % corners.size());
            double a = linear.at(here[0], here[1]);
            double b = linear.at(next[0], next[1]);
            if (a >= 0) {
                kept.add(here);
            }
            if (a < 0 != b < 0) {
                double share = a / (a - b);
                kept.add(new double[] {here[0] + share * (next[0] - here[0]), here[1] + share * (next[1] - here[1])});
            }
        }
        return new Polygon(kept);
    }

    /** Triangles from the first corner, each by the middles of its sides. */
    double integral(Field quadratic) {
        double sum = 0;
        for (int i = 1; i + 1 < corners.size(); i++) {
            double[] a = corners.get(0);
            double[] b = corners.get(i);
            double[] c = corners.get(i + 1);
            double area = 0.5 * ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]));
            sum += area / 3 * (middle(quadratic, a, b) + middle(quadratic, b, c) + middle(quadratic, c, a));
        }
        return sum;
    }

    private static double middle(Field field, double[] a, double[] b) {
        return field.at(0.5 * (a[0] + b[0]), 0.5 * (a[1] + b[1]));
    }
}
