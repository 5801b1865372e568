package org.garboard.lines;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.Curve;
import org.garboard.hull.Hull;
import org.garboard.hull.SkinRun;

/**
 * Sections laid out flat: the girth along the skin from the keel line stands where the half-breadth did, x and the
 * height stay. Set out over x, the girths of many sections are the skin's expansion.
 */
public final class ExpandedSection {
    private static final int TURNS = 60;
    private static final double CLOSE = 1e-12;

    private ExpandedSection() {
    }

    /** A curve for each run of skin, from the keel outward, its points (x, girth, z) within chord [m] of the skin. */
    public static List<Curve> at(Hull hull, double x, double chord) {
        return of(hull, x, run -> run.places(chord).stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** The same with points at even girth on each run, at most a step [m] apart. */
    public static List<Curve> evenlyAt(Hull hull, double x, double step) {
        return of(hull, x, run -> evenly(run, step));
    }

    /**
     * Girth from the keel line to each named line, from keel to sheer [m], over the face of a step where the
     * section crosses one; empty off the hull's length. A line that a face cuts away has the girth of where
     * the skin goes on. Negative inboard of a rabbet.
     */
    public static double[] girths(Hull hull, double x) {
        List<SkinRun> runs = hull.runs(x);
        if (runs.isEmpty()) {
            return new double[0];
        }
        double[] girths = new double[hull.panelsAcross() + 1];
        SkinRun before = null;
        double girth = hull.skinLine() == 0 ? 0 : -runs.get(0).girthTo(1);
        girths[0] = girth;
        for (SkinRun run : runs) {
            girth += (before == null ? 0 : before.gapTo(run)) + run.girthTo(run.to());
            girths[1 + hull.panels().indexOf(run.panel()) % hull.panelsAcross()] = girth;
            before = run;
        }
        for (int line = 1; line < girths.length; line++) {
            girths[line] = Math.max(girths[line], girths[line - 1]);
        }
        return girths;
    }

    /** Chooses places v on a run of skin. */
    private interface Places {
        double[] on(SkinRun run);
    }

    private static List<Curve> of(Hull hull, double x, Places places) {
        List<Curve> curves = new ArrayList<>();
        SkinRun before = null;
        List<SkinRun> runs = hull.runs(x);
        double inner = hull.skinLine() == 0 || runs.isEmpty() ? 0 : -runs.get(0).girthTo(1);
        for (SkinRun run : runs) {
            double start = inner + (before == null ? 0 : before.gapTo(run));
            curves.add(new Curve(hull.panels().indexOf(run.panel()), Arrays.stream(places.on(run))
                .mapToObj(v -> Vector3D.of(x, start + run.girthTo(v), run.z(v))).toList()));
            inner = start + run.girthTo(run.to());
            before = run;
        }
        return curves;
    }

    private static double[] evenly(SkinRun run, double step) {
        double girth = run.girthTo(run.to());
        int spans = (int) Math.max(1, Math.ceil(girth / step * (1 - 1e-12)));
        double[] places = new double[spans + 1];
        places[0] = run.from();
        for (int i = 1; i < spans; i++) {
            places[i] = across(run, girth * i / spans);
        }
        places[spans] = run.to();
        return places;
    }

    /** v at a girth, by bisection: girth rises with v. */
    private static double across(SkinRun run, double girth) {
        double low = run.from();
        double high = run.to();
        for (int turn = 0; turn < TURNS && high - low > CLOSE; turn++) {
            double middle = 0.5 * (low + high);
            if (run.girthTo(middle) < girth) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }
}
