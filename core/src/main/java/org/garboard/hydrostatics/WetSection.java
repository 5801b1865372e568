package org.garboard.hydrostatics;

import java.util.Arrays;
import java.util.List;
import org.garboard.geometry.GaussRule;
import org.garboard.geometry.HermiteCubic;
import org.garboard.geometry.KnotVector;
import org.garboard.hull.Hull;
import org.garboard.hull.Panel;
import org.garboard.hull.PanelSweep;
import org.garboard.hull.SkinRun;

/**
 * The wet part of one starboard section: the sums whose integrals along x are the hull's figures.
 *
 * <p>Over the wet skin of the section the integral of y dz is its area, of z y dz the moment of
 * that area, of dy the half-breadth of the waterplane and of d(y^3) its cube, since centreline and
 * water add nothing. Each cell of a panel is cut exactly where the water crosses it.
 */
final class WetSection {
    static final int AREA = 0;
    static final int HEIGHT_MOMENT = 1;
    static final int SKIN = 2;
    static final int HALF_BREADTH = 3;
    static final int CUBE = 4;
    static final int SIZE = 5;

    /** Area and its moment are polynomials of degree 5 and 8, met exactly; skin is a smooth root. */
    private static final GaussRule RULE = GaussRule.of(8);

    private final Hull hull;
    private final List<Panel> panels;
    private final List<PanelSweep> sweeps;
    private final WaterSurface water;
    private final double[] place = new double[PanelSweep.FIRST_DERIVATIVES];
    private final double[] next = new double[PanelSweep.FIRST_DERIVATIVES];
    private final double[] at = new double[PanelSweep.FIRST_DERIVATIVES];

    WetSection(Hull hull, WaterSurface water) {
        this.hull = hull;
        this.panels = hull.panels();
        this.sweeps = panels.stream().map(PanelSweep::new).toList();
        this.water = water;
    }

    /** Fills in the sums at x. */
    void sum(double x, double[] out) {
        Arrays.fill(out, 0, SIZE, 0);
        boolean cut = false;
        for (int i = 0; i < panels.size(); i++) {
            Panel panel = panels.get(i);
            if (x >= panel.knotsAlong().start() && x <= panel.knotsAlong().end()) {
                cut |= !panel.isWhole();
                if (!cut) {
                    sum(i, x, 0, 1, out);
                }
            }
        }
        if (cut) {
            Arrays.fill(out, 0, SIZE, 0);
            sumOfCut(x, out);
        }
    }

    /** A section that faces cut: runs of skin, closed by the steps between them and the transom. */
    private void sumOfCut(double x, double[] out) {
        FaceOfSection faces = new FaceOfSection(x, water.at(x), out);
        SkinRun before = null;
        for (SkinRun run : hull.runs(x)) {
            if (before == null) {
                faces.toFirst(run);
            } else {
                faces.between(before, run);
            }
            sum(panels.indexOf(run.panel()), x, run.from(), run.to(), out);
            before = run;
        }
        if (before != null && !(before.to() == 1 && hull.isOutermost(before.panel()))) {
            faces.fromLast(before);
        }
    }

    /** The wet part of a panel between two places across. */
    private void sum(int panel, double x, double first, double last, double[] out) {
        KnotVector across = panels.get(panel).knotsAcross();
        PanelSweep sweep = sweeps.get(panel);
        sweep.to(x);
        double level = water.at(x);
        sweep.differentiate(across.cellStart(0), place);
        for (int cell = 0; cell < across.cells(); cell++) {
            double start = across.cellStart(cell);
            double width = across.cellStart(cell + 1) - start;
            sweep.differentiate(across.cellStart(cell + 1), next);
            HermiteCubic height = new HermiteCubic(place[1] - level, place[5] * width, next[1] - level, next[5] * width);
            System.arraycopy(next, 0, place, 0, next.length);
            double from = 0;
            for (double to : height.partings()) {
                double begin = Math.max(first, start + from * width);
                double end = Math.min(last, start + to * width);
                if (height.value(0.5 * (from + to)) < 0 && end > begin) {
                    stretch(sweep, begin, end, out);
                }
                from = to;
            }
        }
    }

    /** A wet stretch of a cell, from v to v. */
    private void stretch(PanelSweep sweep, double from, double to, double[] out) {
        for (int i = 0; i < RULE.size(); i++) {
            sweep.differentiate(from + (to - from) * RULE.at(i), at);
            double weight = (to - from) * RULE.weight(i);
            double area = weight * at[0] * at[5];
            out[AREA] += area;
            out[HEIGHT_MOMENT] += area * at[1];
            double nx = at[2] * at[5] - at[3] * at[4];
            out[SKIN] += weight * Math.sqrt(nx * nx + at[4] * at[4] + at[5] * at[5]);
        }
        sweep.differentiate(from, at);
        double inner = at[0];
        sweep.differentiate(to, at);
        out[HALF_BREADTH] += at[0] - inner;
        out[CUBE] += at[0] * at[0] * at[0] - inner * inner * inner;
    }
}
