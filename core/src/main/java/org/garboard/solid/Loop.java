package org.garboard.solid;

import java.util.Arrays;
import java.util.Locale;

/**
 * A closed line in a plane with coordinates (u, v) [m], counter-clockwise, last point not repeated; it does not
 * cross itself.
 */
public final class Loop {
    private final double[] points;

    private Loop(double[] points) {
        this.points = points;
    }

    /** The loop through points u, v, u, v …; turned round where they run clockwise. */
    public static Loop of(double... points) {
        if (points.length < 6 || points.length % 2 != 0) {
            throw new IllegalArgumentException("a loop has three points or more; here are " + points.length + " coordinates");
        }
        Loop loop = new Loop(points.clone());
        double area = loop.area();
        if (!(Math.abs(area) > TriangleMeasure.LEAST)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "a loop encloses %.3g m2", area));
        }
        return area > 0 ? loop : loop.reversed();
    }

    /** A circle as a polygon that strays from it by chord at most, half inside and half outside, of the circle's own area. */
    public static Loop circle(double u, double v, double radius, double chord) {
        int sides = Math.max(12, 4 * (int) Math.ceil(Math.PI / 4 / Math.acos(Math.max(0, 1 - chord / radius))));
        double out = radius * Math.sqrt(2 * Math.PI / sides / Math.sin(2 * Math.PI / sides));
        double[] points = new double[2 * sides];
        for (int i = 0; i < sides; i++) {
            double angle = 2 * Math.PI * i / sides;
            points[2 * i] = u + out * Math.cos(angle);
            points[2 * i + 1] = v + out * Math.sin(angle);
        }
        return Loop.of(points);
    }

    /** The same line with its sides parted so that none is longer than a step [m]. */
    public Loop parted(double step) {
        double[] all = new double[16];
        int count = 0;
        for (int i = 0; i < size(); i++) {
            int next = (i + 1) % size();
            double length = Math.hypot(u(next) - u(i), v(next) - v(i));
            int pieces = Math.max(1, (int) Math.ceil(length / step - 1e-9));
            for (int k = 0; k < pieces; k++) {
                if (2 * count + 2 > all.length) {
                    all = Arrays.copyOf(all, 2 * all.length);
                }
                double share = (double) k / pieces;
                all[2 * count] = u(i) + share * (u(next) - u(i));
                all[2 * count + 1] = v(i) + share * (v(next) - v(i));
                count++;
            }
        }
        return new Loop(Arrays.copyOf(all, 2 * count));
    }

    private Loop reversed() {
        double[] turned = new double[points.length];
        for (int i = 0; i < size(); i++) {
            turned[2 * i] = u(size() - 1 - i);
            turned[2 * i + 1] = v(size() - 1 - i);
        }
        return new Loop(turned);
    }

    public int size() {
        return points.length / 2;
    }

    public double u(int i) {
        return points[2 * i];
    }

    public double v(int i) {
        return points[2 * i + 1];
    }

    /** Area inside [m2], above 0. */
    public double area() {
        double twice = 0;
        for (int i = 0; i < size(); i++) {
            int next = (i + 1) % size();
            twice += (u(i) - u(0)) * (v(next) - v(0)) - (u(next) - u(0)) * (v(i) - v(0));
        }
        return twice / 2;
    }

    public double perimeter() {
        double sum = 0;
        for (int i = 0; i < size(); i++) {
            int next = (i + 1) % size();
            sum += Math.hypot(u(next) - u(i), v(next) - v(i));
        }
        return sum;
    }

    /** Whether a place lies inside, by the crossings of a ray from it. */
    public boolean holds(double u, double v) {
        boolean inside = false;
        for (int i = 0; i < size(); i++) {
            int next = (i + 1) % size();
            if (v(i) > v != v(next) > v && u < u(i) + (v - v(i)) / (v(next) - v(i)) * (u(next) - u(i))) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Distance of a place from the line [m]. */
    public double distance(double u, double v) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < size(); i++) {
            int next = (i + 1) % size();
            double du = u(next) - u(i);
            double dv = v(next) - v(i);
            double share = ((u - u(i)) * du + (v - v(i)) * dv) / (du * du + dv * dv);
            double within = Math.max(0, Math.min(1, share));
            least = Math.min(least, Math.hypot(u - u(i) - within * du, v - v(i) - within * dv));
        }
        return least;
    }

    /** Whether another loop lies wholly inside, at least so far from this one [m]. */
    public boolean clears(Loop inner, double room) {
        for (int i = 0; i < inner.size(); i++) {
            if (!holds(inner.u(i), inner.v(i)) || distance(inner.u(i), inner.v(i)) < room) {
                return false;
            }
        }
        for (int i = 0; i < size(); i++) {
            if (inner.holds(u(i), v(i)) || inner.distance(u(i), v(i)) < room) {
                return false;
            }
        }
        return true;
    }

    /** Whether two loops lie wholly beside each other, at least so far apart [m]. */
    public boolean standsClearOf(Loop other, double room) {
        for (int i = 0; i < size(); i++) {
            if (other.holds(u(i), v(i)) || other.distance(u(i), v(i)) < room) {
                return false;
            }
        }
        for (int i = 0; i < other.size(); i++) {
            if (holds(other.u(i), other.v(i)) || distance(other.u(i), other.v(i)) < room) {
                return false;
            }
        }
        return true;
    }
}
