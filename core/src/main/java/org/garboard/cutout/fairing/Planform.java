package org.garboard.cutout.fairing;

import java.util.Arrays;
import org.garboard.solid.Loop;

/**
 * A streamlined outline in plan, its widest place at the origin, its nose forward. Half-breadths are those of a form
 * one wide and one long, by the distance from the nose.
 */
public enum Planform {
    /**
     * Thickness form of the NACA four-digit sections: y = 5 t (0.2969 sqrt x - 0.1260 x - 0.3516 x^2 + 0.2843 x^3 -
     * 0.1015 x^4), widest at x = 0.3, its after edge blunt.
     *
     * @see "I. H. Abbott and A. E. von Doenhoff, Theory of Wing Sections, 1959, chapter 6 and appendix I"
     */
    NACA_00XX("NACA 00xx thickness form") {
        @Override
        double halfBreadth(double x) {
            return 5 * (0.2969 * Math.sqrt(x) - 0.1260 * x - 0.3516 * x * x + 0.2843 * x * x * x - 0.1015 * x * x * x * x);
        }

        /** Where the form's own derivative is 0, not the round 0.3 of its name. */
        @Override
        double widest() {
            return 0.299_827_878;
        }
    },
    /** A half ellipse forward over 40 % of the length, another aft over the rest; our choice of form. */
    HALF_ELLIPSES("two half ellipses, the widest place at 40 %") {
        @Override
        double halfBreadth(double x) {
            double from = x < 0.4 ? (0.4 - x) / 0.4 : (x - 0.4) / 0.6;
            return 0.5 * Math.sqrt(Math.max(0, 1 - from * from));
        }

        @Override
        double widest() {
            return 0.4;
        }
    };

    private final String words;

    Planform(String words) {
        this.words = words;
    }

    /** As it stands on sheets. */
    public String words() {
        return words;
    }

    /** Half-breadth of the unit form at a share of its length from the nose. */
    abstract double halfBreadth(double x);

    /** Share of the length at which it is widest. */
    abstract double widest();

    /** Half-breadth of a form at a distance aft of its widest place [m]; 0 beyond its ends. */
    public double halfBreadth(double length, double width, double aft) {
        double x = widest() + aft / length;
        return x < 0 || x > 1 ? 0 : width * halfBreadth(x);
    }

    /** As a loop that strays by chord at most, by halving, with sides no longer than a step. */
    Loop loop(double length, double width, double chord, double step) {
        double[] half = {0, 0};
        double[] along = {0, 1};
        boolean finer = true;
        // t from 0 to 1: x = (1 - cos pi t) / 2 crowds points at both ends, where the form is round
        while (finer) {
            finer = false;
            double[] next = new double[2 * along.length];
            int count = 0;
            for (int i = 0; i + 1 < along.length; i++) {
                next[count++] = along[i];
                double middle = (along[i] + along[i + 1]) / 2;
                if (along.length < 5 || sag(along[i], along[i + 1], length, width) > chord) {
                    next[count++] = middle;
                    finer = true;
                }
            }
            next[count++] = 1;
            along = Arrays.copyOf(next, count);
        }
        half = along;
        double tail = y(1, width);
        int n = half.length;
        double[] points = new double[4 * n];
        int count = 0;
        for (int i = 0; i < n; i++) {
            points[count++] = u(half[i], length);
            points[count++] = -y(half[i], width);
        }
        for (int i = n - (tail > 0 ? 1 : 2); i > 0; i--) {
            points[count++] = u(half[i], length);
            points[count++] = y(half[i], width);
        }
        return Loop.of(Arrays.copyOf(points, count)).parted(step);
    }

    private double u(double t, double length) {
        return ((1 - Math.cos(Math.PI * t)) / 2 - widest()) * length;
    }

    private double y(double t, double width) {
        double y = width * halfBreadth(t == 1 ? 1 : (1 - Math.cos(Math.PI * t)) / 2);
        return y < 1e-6 ? 0 : y;
    }

    private double sag(double from, double to, double length, double width) {
        double du = u(to, length) - u(from, length);
        double dv = y(to, width) - y(from, width);
        double side = Math.hypot(du, dv);
        double most = 0;
        for (int k = 1; k < 4; k++) {
            double t = from + k * (to - from) / 4;
            most = Math.max(most, Math.abs((u(t, length) - u(from, length)) * dv - (y(t, width) - y(from, width)) * du) / side);
        }
        return most;
    }
}
