package org.garboard.cutout.pocket;

import java.util.Arrays;

/**
 * The face so far behind ramps, blends and the skin round them, as height over the plan. Each point of the blends' net
 * is moved square to the face; where what comes of it lies over itself the highest counts, which is the boundary of all
 * places nearer to the face than the thickness. Triangles are found by the cells of a grid.
 */
final class BlendBehind {
    /** A place so little beside a triangle is on it, as a part of its size. */
    private static final double BESIDE = 1e-9;
    /** Between the two faces of a ridge: pieces of its arc. */
    private static final int ARC = 4;

    private final PocketForm form;
    private final PocketSurface surface;
    private final double[] net;
    private final double behind;
    private final boolean[] crease;
    private double[] places = new double[9 * 4096];
    private int filled;
    private double lowU = Double.POSITIVE_INFINITY;
    private double lowV = Double.POSITIVE_INFINITY;
    private double cell;
    private int across;
    private int[] starts = {0, 0};
    private int[] listed = {};

    /** @param net of the finished face */
    BlendBehind(PocketForm form, PocketSurface surface, double[] net, double behind) {
        this.form = form;
        this.surface = surface;
        this.net = net;
        this.behind = behind;
        int rays = surface.rays().count();
        this.crease = new boolean[rays];
        for (int i = 0; i < form.creases().size(); i++) {
            crease[surface.rays().aft(i)] = true;
            crease[surface.rays().fore(i)] = true;
        }
        if (surface.rings() - 1 > surface.mouthRing()) {
            for (int ray = 0; ray < rays; ray++) {
                int next = (ray + 1) % rays;
                band(column(ray, crease[ray] ? ray : (ray + rays - 1) % rays, next),
                    column(next, ray, crease[next] ? next : (next + 1) % rays));
                if (crease[ray]) {
                    ridge(ray);
                }
            }
        }
        list();
    }

    /**
     * The moved points of a ray, first one farther in along the plane that touches the mouth.
     *
     * @param before and after: rays whose points tell how the face runs across
     */
    private double[] column(int ray, int before, int after) {
        int mouth = surface.mouthRing();
        int rings = surface.rings();
        double[] column = new double[3 * (rings - mouth + 1)];
        double[] normal = new double[3];
        for (int ring = mouth; ring < rings; ring++) {
            normal(ray, ring, before, after, normal);
            for (int k = 0; k < 3; k++) {
                column[3 * (ring - mouth + 1) + k] = net[surface.at(ray, ring) + k] + behind * normal[k];
            }
        }
        extend(ray, column);
        return column;
    }

    private void extend(int ray, double[] column) {
        double run = 2 * behind;
        column[0] = column[3] - run * surface.rays().alongU(ray);
        column[1] = column[4] - run * surface.rays().alongV(ray);
        column[2] = column[5] - run * Math.tan(surface.mouths().slope(ray));
    }

    private void normal(int ray, int ring, int before, int after, double[] out) {
        int in = surface.at(ray, Math.max(surface.mouthRing(), ring - 1));
        int beyond = surface.at(ray, Math.min(surface.rings() - 1, ring + 1));
        int one = surface.at(before, ring);
        int other = surface.at(after, ring);
        double a0 = net[beyond] - net[in];
        double a1 = net[beyond + 1] - net[in + 1];
        double a2 = net[beyond + 2] - net[in + 2];
        double b0 = net[other] - net[one];
        double b1 = net[other + 1] - net[one + 1];
        double b2 = net[other + 2] - net[one + 2];
        if (a0 * a0 + a1 * a1 == 0) {
            a0 = surface.rays().alongU(ray);
            a1 = surface.rays().alongV(ray);
            a2 = Math.tan(surface.mouths().slope(ray));
        }
        double x = a1 * b2 - a2 * b1;
        double y = a2 * b0 - a0 * b2;
        double z = a0 * b1 - a1 * b0;
        double size = Math.sqrt(x * x + y * y + z * z);
        out[0] = size > 0 && z != 0 ? Math.signum(z) * x / size : 0;
        out[1] = size > 0 && z != 0 ? Math.signum(z) * y / size : 0;
        out[2] = size > 0 && z != 0 ? Math.abs(z) / size : 1;
    }

    /** Between the faces on both sides of an edge of the skin: an arc where they gape. */
    private void ridge(int ray) {
        int rays = surface.rays().count();
        double[] one = column(ray, (ray + rays - 1) % rays, ray);
        double[] other = column(ray, ray, (ray + 1) % rays);
        double[] last = one;
        for (int piece = 1; piece <= ARC; piece++) {
            double[] here = piece == ARC ? other : turned(ray, one, other, (double) piece / ARC);
            band(last, here);
            last = here;
        }
    }

    private double[] turned(int ray, double[] one, double[] other, double share) {
        double[] here = new double[one.length];
        for (int ring = surface.mouthRing(); ring < surface.rings(); ring++) {
            int at = 3 * (ring - surface.mouthRing() + 1);
            int own = surface.at(ray, ring);
            double size = 0;
            for (int k = 0; k < 3; k++) {
                here[at + k] = (1 - share) * one[at + k] + share * other[at + k] - net[own + k];
                size += here[at + k] * here[at + k];
            }
            for (int k = 0; k < 3; k++) {
                here[at + k] = net[own + k] + here[at + k] * behind / Math.sqrt(size);
            }
        }
        extend(ray, here);
        return here;
    }

    private void band(double[] one, double[] other) {
        for (int at = 0; at + 3 < one.length; at += 3) {
            triangle(one, at, other, at, other, at + 3);
            triangle(one, at, other, at + 3, one, at + 3);
        }
    }

    private void triangle(double[] a, int atA, double[] b, int atB, double[] c, int atC) {
        if (9 * filled + 9 > places.length) {
            places = Arrays.copyOf(places, 2 * places.length);
        }
        System.arraycopy(a, atA, places, 9 * filled, 3);
        System.arraycopy(b, atB, places, 9 * filled + 3, 3);
        System.arraycopy(c, atC, places, 9 * filled + 6, 3);
        filled++;
    }

    private void list() {
        double highU = Double.NEGATIVE_INFINITY;
        double highV = Double.NEGATIVE_INFINITY;
        for (int at = 0; at < 9 * filled; at += 3) {
            lowU = Math.min(lowU, places[at]);
            lowV = Math.min(lowV, places[at + 1]);
            highU = Math.max(highU, places[at]);
            highV = Math.max(highV, places[at + 1]);
        }
        if (filled == 0) {
            return;
        }
        cell = Math.max(1e-6, Math.sqrt((highU - lowU) * (highV - lowV) / filled));
        across = 1 + (int) ((highV - lowV) / cell);
        int cells = across * (1 + (int) ((highU - lowU) / cell));
        starts = new int[cells + 1];
        for (int pass = 0; pass < 2; pass++) {
            for (int t = 0; t < filled; t++) {
                double[] p = places;
                int at = 9 * t;
                int fromU = (int) ((Math.min(p[at], Math.min(p[at + 3], p[at + 6])) - lowU) / cell);
                int toU = (int) ((Math.max(p[at], Math.max(p[at + 3], p[at + 6])) - lowU) / cell);
                int fromV = (int) ((Math.min(p[at + 1], Math.min(p[at + 4], p[at + 7])) - lowV) / cell);
                int toV = (int) ((Math.max(p[at + 1], Math.max(p[at + 4], p[at + 7])) - lowV) / cell);
                for (int i = fromU; i <= toU; i++) {
                    for (int k = fromV; k <= toV; k++) {
                        int number = i * across + k;
                        if (pass == 0) {
                            starts[number + 1]++;
                        } else {
                            listed[starts[number]++] = t;
                        }
                    }
                }
            }
            if (pass == 0) {
                for (int i = 0; i < cells; i++) {
                    starts[i + 1] += starts[i];
                }
                listed = new int[starts[cells]];
            }
        }
        System.arraycopy(starts, 0, starts, 1, cells);
        starts[0] = 0;
    }

    /** Height at a place of the plan [m]; NaN off the skin. */
    double height(double u, double v) {
        double most = form.inside(u, v, behind);
        int row = (int) Math.floor((u - lowU) / cell);
        int column = (int) Math.floor((v - lowV) / cell);
        if (filled == 0 || row < 0 || column < 0 || column >= across || row * across + column + 1 >= starts.length) {
            return most;
        }
        int number = row * across + column;
        for (int i = starts[number]; i < starts[number + 1]; i++) {
            double over = over(9 * listed[i], u, v);
            if (over > most) {
                most = over;
            }
        }
        return most;
    }

    /** Height of a triangle over a place of the plan; NaN beside it. */
    private double over(int at, double u, double v) {
        double au = places[at + 3] - places[at];
        double av = places[at + 4] - places[at + 1];
        double bu = places[at + 6] - places[at];
        double bv = places[at + 7] - places[at + 1];
        double turn = au * bv - av * bu;
        double pu = u - places[at];
        double pv = v - places[at + 1];
        double one = (pu * bv - pv * bu) / turn;
        double other = (au * pv - av * pu) / turn;
        boolean on = one >= -BESIDE && other >= -BESIDE && one + other <= 1 + BESIDE;
        return on ? places[at + 2] + one * (places[at + 5] - places[at + 2]) + other * (places[at + 8] - places[at + 2]) : Double.NaN;
    }
}
