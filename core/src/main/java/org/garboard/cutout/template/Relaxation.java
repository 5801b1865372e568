package org.garboard.cutout.template;

import java.util.Arrays;

/**
 * Moves the points of a flat net until its sides differ least, in squares, from what they measure along the
 * skin: each goes to the mean of where its neighbours want it (stress majorisation; de Leeuw, 1977, from memory).
 * Where all sides are right already nothing moves.
 */
final class Relaxation {
    private static final int MOST_SWEEPS = 400;
    private static final double STILL = 1e-9;

    private final double[] flat;
    private final int[] from;
    private final int[] to;
    private final double[] length;
    private int sides;

    /** @param lengths along the skin of the net's sides */
    Relaxation(SkinNet net, double[] flat, Length lengths) {
        this.flat = flat;
        this.from = new int[3 * net.triangles()];
        this.to = new int[3 * net.triangles()];
        this.length = new double[3 * net.triangles()];
        for (int t = 0; t < net.triangles(); t++) {
            for (int k = 0; k < 3; k++) {
                from[sides] = net.corner(t, k);
                to[sides] = net.corner(t, (k + 1) % 3);
                length[sides++] = lengths.of(t, k);
            }
        }
    }

    /** The length along the skin of a triangle's side, from its corner k to the next [m]. */
    @FunctionalInterface
    interface Length {
        double of(int triangle, int k);
    }

    /** Settles the net, then turns and shifts it back onto where it lay. */
    void settle() {
        double[] start = flat.clone();
        double[] wanted = new double[flat.length];
        int[] voices = new int[flat.length / 2];
        for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
            Arrays.fill(wanted, 0);
            Arrays.fill(voices, 0);
            for (int side = 0; side < sides; side++) {
                hear(from[side], to[side], length[side], wanted, voices);
                hear(to[side], from[side], length[side], wanted, voices);
            }
            double most = 0;
            for (int i = 0; i < voices.length; i++) {
                for (int k = 0; k < 2; k++) {
                    double next = voices[i] == 0 ? flat[2 * i + k] : wanted[2 * i + k] / voices[i];
                    most = Math.max(most, Math.abs(next - flat[2 * i + k]));
                    flat[2 * i + k] = next;
                }
            }
            if (most < STILL) {
                break;
            }
        }
        layBack(start);
    }

    private void hear(int point, int other, double far, double[] wanted, int[] voices) {
        double du = flat[2 * point] - flat[2 * other];
        double dv = flat[2 * point + 1] - flat[2 * other + 1];
        double now = Math.hypot(du, dv);
        wanted[2 * point] += flat[2 * other] + du * far / now;
        wanted[2 * point + 1] += flat[2 * other + 1] + dv * far / now;
        voices[point]++;
    }

    private void layBack(double[] start) {
        int points = flat.length / 2;
        double[] mean = new double[4];
        for (int i = 0; i < flat.length; i++) {
            mean[i % 2] += start[i] / points;
            mean[2 + i % 2] += flat[i] / points;
        }
        double dot = 0;
        double cross = 0;
        for (int i = 0; i < points; i++) {
            double su = start[2 * i] - mean[0];
            double sv = start[2 * i + 1] - mean[1];
            double fu = flat[2 * i] - mean[2];
            double fv = flat[2 * i + 1] - mean[3];
            dot += fu * su + fv * sv;
            cross += fu * sv - fv * su;
        }
        double turn = Math.atan2(cross, dot);
        for (int i = 0; i < points; i++) {
            double fu = flat[2 * i] - mean[2];
            double fv = flat[2 * i + 1] - mean[3];
            flat[2 * i] = mean[0] + fu * Math.cos(turn) - fv * Math.sin(turn);
            flat[2 * i + 1] = mean[1] + fu * Math.sin(turn) + fv * Math.cos(turn);
        }
    }
}
