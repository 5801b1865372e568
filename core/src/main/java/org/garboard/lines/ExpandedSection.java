package org.garboard.lines;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.Curve;
import org.garboard.hull.Hull;
import org.garboard.hull.Panel;
import org.garboard.hull.PanelSection;
import org.garboard.hull.PanelSection.Coordinate;

/**
 * Sections laid out flat: the girth along the skin from the keel line stands where the half-breadth did, x and the
 * height stay. Set out over x, the girths of many sections are the skin's expansion.
 */
public final class ExpandedSection {
    private static final int TURNS = 60;
    private static final double CLOSE = 1e-12;

    private ExpandedSection() {
    }

    /** A curve for each panel, from the keel outward, its points (x, girth, z) within chord [m] of the skin. */
    public static List<Curve> at(Hull hull, double x, double chord) {
        return of(hull, x, section -> section.places(chord).stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** The same with points at even girth on each panel, at most a step [m] apart. */
    public static List<Curve> evenlyAt(Hull hull, double x, double step) {
        return of(hull, x, section -> evenly(section, step));
    }

    /** Girth from the keel line to each named line, from keel to sheer [m]; empty off the hull's length. */
    public static double[] girths(Hull hull, double x) {
        if (!(x >= hull.forwardEnd() && x <= hull.afterEnd())) {
            return new double[0];
        }
        double[] girths = new double[hull.panels().size() + 1];
        for (int p = 0; p < hull.panels().size(); p++) {
            girths[p + 1] = girths[p] + new PanelSection(hull.panels().get(p), x).girthTo(1);
        }
        return girths;
    }

    /** Chooses places v across a panel. */
    private interface Places {
        double[] on(PanelSection section);
    }

    private static List<Curve> of(Hull hull, double x, Places places) {
        List<Curve> curves = new ArrayList<>();
        double[] inner = girths(hull, x);
        for (int p = 0; p + 1 < inner.length; p++) {
            Panel panel = hull.panels().get(p);
            PanelSection section = new PanelSection(panel, x);
            double start = inner[p];
            curves.add(new Curve(p, Arrays.stream(places.on(section))
                .mapToObj(v -> Vector3D.of(x, start + section.girthTo(v), section.value(Coordinate.Z, v))).toList()));
        }
        return curves;
    }

    private static double[] evenly(PanelSection section, double step) {
        double girth = section.girthTo(1);
        int spans = (int) Math.max(1, Math.ceil(girth / step * (1 - 1e-12)));
        double[] places = new double[spans + 1];
        for (int i = 1; i < spans; i++) {
            places[i] = across(section, girth * i / spans);
        }
        places[spans] = 1;
        return places;
    }

    /** v at a girth, by bisection: girth rises with v. */
    private static double across(PanelSection section, double girth) {
        double low = 0;
        double high = 1;
        for (int turn = 0; turn < TURNS && high - low > CLOSE; turn++) {
            double middle = 0.5 * (low + high);
            if (section.girthTo(middle) < girth) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }
}
