package org.garboard.flow.doublebody;

import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.offsets.LineKind;

/** Wigley's hull, B/L = 0.1, T/L = 0.0625, drawn on beyond the water at T by its own formula to 1.2 T. */
public final class WigleyHull {
    public static final double L = 12;
    public static final double B = 1.2;
    public static final double T = 0.75;

    private WigleyHull() {
    }

    public static double halfBreadth(double x, double z) {
        double xi = 2 * x / L - 1;
        double zeta = 1 - z / T;
        return B / 2 * (1 - xi * xi) * (1 - zeta * zeta);
    }

    public static Hull hull() {
        double top = 1.2 * T;
        Forms forms = new Forms(0, Forms.even(0, L, 25)).keel(x -> 0)
            .named(LineKind.SHEER, "Sheer", x -> halfBreadth(x, top), x -> top);
        for (int i = 1; i < 16; i++) {
            forms.waterline(top * i / 16, WigleyHull::halfBreadth);
        }
        return Hull.through(forms.table());
    }
}
