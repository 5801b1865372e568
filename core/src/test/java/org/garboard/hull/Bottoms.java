package org.garboard.hull;

import java.util.List;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.OffsetTable;

/**
 * Closed-form bottoms with their bows, 39 ft long: the section from keel to chine is
 * z = keel + (chine - keel) (t - hollow t (1 - t)), t the half-breadth over the chine's.
 *
 * @param deadrise of the chord at the transom [deg]
 * @param twist more deadrise towards the bow, with the square of the distance from the transom [deg]
 * @param bulge of the section at the transom: positive hangs below the chord, negative stands above it
 * @param bulgeForward what is added to it towards the bow
 */
record Bottoms(String name, double deadrise, double twist, double bulge, double bulgeForward) {
    static final double FOOT = 0.3048;
    static final double LENGTH = 39 * FOOT;
    /** With keel, chine and sheer twelve lines. */
    private static final double[] BUTTOCKS_FEET = {1, 2, 3, 4};
    private static final double[] WATERLINES_FEET = {0.5, 1, 1.5, 2, 3};
    private static final double[] STATIONS_FEET = {0, 1.5, 3, 6, 9, 12, 15, 19, 23, 27, 31, 35, 39};

    static List<Bottoms> all() {
        return List.of(new Bottoms("straight", 21, 4, 0, 0), new Bottoms("convex", 20, 4, 0.15, 0.05),
                new Bottoms("concave", 22, 4, -0.12, -0.05), new Bottoms("warped", 16, 18, 0.1, -0.2));
    }

    private static double forward(double x) {
        return 1 - x / LENGTH;
    }

    double keel(double x) {
        return 1.45 * Math.pow(forward(x), 6);
    }

    double chineHalfBreadth(double x) {
        return 0.05 + 1.37 * (1 - Math.pow(forward(x), 4));
    }

    double chine(double x) {
        double g = forward(x);
        double beta = deadrise + twist * g * g + 24 * Math.pow(g, 4);
        return keel(x) + chineHalfBreadth(x) * Math.tan(Math.toRadians(beta));
    }

    private double bulge(double x) {
        return bulge + bulgeForward * forward(x);
    }

    double z(double x, double y) {
        double t = y / chineHalfBreadth(x);
        return keel(x) + (chine(x) - keel(x)) * (t - bulge(x) * t * (1 - t));
    }

    /** Tangent of the deadrise. */
    double slope(double x, double y) {
        double t = y / chineHalfBreadth(x);
        return (chine(x) - keel(x)) / chineHalfBreadth(x) * (1 - bulge(x) * (1 - 2 * t));
    }

    private double halfBreadth(double x, double z) {
        double low = 0;
        double high = chineHalfBreadth(x);
        if (!(z > keel(x) && z < chine(x))) {
            return Double.NaN;
        }
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            if (z(x, middle) < z) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    OffsetTable table(double leastCount, double phase) {
        double[] x = new double[STATIONS_FEET.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = STATIONS_FEET[i] * FOOT;
        }
        Forms forms = new Forms(leastCount, x).phase(phase).keel(this::keel)
                .named(LineKind.CHINE, "Chine", this::chineHalfBreadth, this::chine)
                .named(LineKind.SHEER, "Sheer", at -> chineHalfBreadth(at) + 0.2, at -> 2.2);
        for (double feet : BUTTOCKS_FEET) {
            forms.buttock(feet * FOOT, (at, y) -> y < chineHalfBreadth(at) - 0.03 ? z(at, y) : Double.NaN);
        }
        for (double feet : WATERLINES_FEET) {
            forms.waterline(feet * FOOT, (at, z) -> clear(at, z) ? halfBreadth(at, z) : Double.NaN);
        }
        return forms.table();
    }

    /** Loftsmen leave out what falls within 30 mm of a line. */
    private boolean clear(double x, double z) {
        return z > keel(x) + 0.03 && z < chine(x) - 0.03;
    }
}
