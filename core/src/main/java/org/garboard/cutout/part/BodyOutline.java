package org.garboard.cutout.part;

import java.util.Arrays;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Lengths;
import org.garboard.solid.Loop;

/**
 * A rectangle with rounded corners round a part's middle [m].
 *
 * @param length along
 * @param width across
 * @param radius of the corners, at most half the lesser side
 */
public record BodyOutline(double length, double width, double radius) {

    /** A transducer's outline in plan. */
    public static BodyOutline of(Transducer body) throws CannotBeBuilt {
        double most = Math.min(body.length(), body.width()) / 2;
        if (body.cornerRadius() > most + 1e-9) {
            throw new CannotBeBuilt("a corner radius of " + Lengths.mm(body.cornerRadius()) + " is more than half the body's lesser side of "
                + Lengths.mm(2 * most), "a corner radius of the body of " + Lengths.mmDown(most) + " at most");
        }
        return new BodyOutline(body.length(), body.width(), Math.min(body.cornerRadius(), most));
    }

    /** The outline at a distance outside this one; round corners stay round, square ones become round. */
    public BodyOutline widened(double by) {
        return new BodyOutline(length + 2 * by, width + 2 * by, radius > 0 || by > 0 ? radius + by : 0);
    }

    /** The same with square corners kept square. */
    public BodyOutline widenedSquare(double by) {
        return radius > 0 ? widened(by) : new BodyOutline(length + 2 * by, width + 2 * by, 0);
    }

    public double area() {
        return length * width - (4 - Math.PI) * radius * radius;
    }

    /**
     * As a loop that strays by chord at most, its round corners of their own area; sides no longer than a step.
     */
    public Loop loop(double chord, double step) {
        if (!(radius > 0)) {
            return Loop.of(-length / 2, -width / 2, length / 2, -width / 2, length / 2, width / 2, -length / 2, width / 2)
                .parted(step);
        }
        int pieces = Math.max(3, (int) Math.ceil(Math.PI / 4 / Math.acos(Math.max(0, 1 - chord / radius))));
        double turn = Math.PI / 2 / pieces;
        double[] points = new double[8 * (pieces + 1)];
        int at = 0;
        for (int quarter = 0; quarter < 4; quarter++) {
            double u = (quarter == 0 || quarter == 3 ? 1 : -1) * (length / 2 - radius);
            double v = (quarter < 2 ? 1 : -1) * (width / 2 - radius);
            for (int i = 0; i <= pieces; i++) {
                double angle = quarter * Math.PI / 2 + i * turn;
                double out = i == 0 || i == pieces ? radius : radius * bulge(pieces, turn);
                points[at++] = u + out * Math.cos(angle);
                points[at++] = v + out * Math.sin(angle);
            }
        }
        return Loop.of(apart(points)).parted(step);
    }

    /** By how much the inner points of a quarter round stand out so that its chords enclose the quarter's own area. */
    private static double bulge(int pieces, double turn) {
        // sum of triangles: 2 sides with one end on the circle and one out, the rest out: sin(turn) / 2 (2 k + (n - 2) k^2) = pi / 4
        double n = pieces - 2;
        double wanted = Math.PI / 2 / Math.sin(turn);
        return n == 0 ? wanted / 2 : (Math.sqrt(1 + n * wanted) - 1) / n;
    }

    /** Where straight sides have no length their ends fall together. */
    private static double[] apart(double[] points) {
        double[] kept = new double[points.length];
        int count = 0;
        for (int i = 0; i < points.length; i += 2) {
            int next = (i + 2) % points.length;
            if (Math.hypot(points[next] - points[i], points[next + 1] - points[i + 1]) > 1e-6) {
                kept[count++] = points[i];
                kept[count++] = points[i + 1];
            }
        }
        return Arrays.copyOf(kept, count);
    }
}
