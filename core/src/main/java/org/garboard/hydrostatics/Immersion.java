package org.garboard.hydrostatics;

import java.util.List;
import java.util.TreeSet;
import java.util.function.BiFunction;
import org.garboard.geometry.HermiteCubic;
import org.garboard.geometry.KnotVector;
import org.garboard.hull.Hull;
import org.garboard.hull.Panel;

/** From wet sections to the figures of the whole: where the skin meets the water, and the sums along x. */
final class Immersion {
    /** Water so little above the sheer is at the sheer, and heights so little apart are alike [m]. */
    private static final double AT_SHEER = 1e-9;
    /** Less displacement than a cubic millimetre a side is none [m3]. */
    private static final double NONE = 1e-9;
    private static final int VOLUME = 0;
    private static final int MOMENT = 1;
    private static final int HEIGHT_MOMENT = 2;
    private static final int SKIN = 3;
    private static final int BREADTH = 4;
    private static final int BREADTH_MOMENT = 5;
    private static final int BREADTH_SQUARE = 6;
    private static final int CUBE = 7;
    private static final int SUMS = 8;

    private final WaterSurface water;
    private final WetSection section;
    private final double[] place = new double[Panel.DERIVATIVES];
    private final double[] next = new double[Panel.DERIVATIVES];
    private final double[] wet = new double[WetSection.SIZE];
    /** Every x at which the wet part of a section changes its make-up, and the stations' cells. */
    private final TreeSet<Double> partings = new TreeSet<>();
    private double lowest = Double.POSITIVE_INFINITY;
    private double[] sheer = {Double.NaN, Double.POSITIVE_INFINITY};

    private Immersion(Hull hull, List<PanelEdges> edges, WaterSurface water) {
        this.water = water;
        this.section = new WetSection(hull, water);
        for (int i = 0; i < edges.size(); i++) {
            edges.get(i).part(water, partings);
            Panel panel = hull.panels().get(i);
            int lines = panel.knotsAcross().cells();
            for (int line = 0; line <= lines; line++) {
                meet(panel, edges.get(i), line, hull.isOutermost(panel) && line == lines);
            }
        }
    }

    /** @param summed how the sums along x are made */
    static Floating of(Hull hull, List<PanelEdges> edges, WaterSurface water, BiFunction<LengthwiseSum, double[], double[]> summed) {
        Immersion immersion = new Immersion(hull, edges, water);
        if (immersion.sheer[1] < -AT_SHEER) {
            return new Floating.Swamped(immersion.sheer[0], -immersion.sheer[1]);
        }
        double[] bounds = immersion.partings.stream().mapToDouble(Double::doubleValue).toArray();
        double[] sums = summed.apply(new LengthwiseSum(immersion::moments, SUMS), bounds);
        return sums[VOLUME] > NONE ? immersion.figures(bounds, sums) : new Floating.ClearOfWater(immersion.lowest);
    }

    /** Where a line of constant v goes in and out of the water: its height is a cubic in every cell. */
    private void meet(Panel panel, PanelEdges edges, int line, boolean isSheer) {
        KnotVector along = panel.knotsAlong();
        double v = panel.knotsAcross().cellStart(line);
        double first = edges.from(line);
        double last = edges.to(line);
        for (int cell = 0; cell < along.cells(); cell++) {
            double start = Math.max(first, along.cellStart(cell));
            double end = Math.min(last, along.cellStart(cell + 1));
            if (!(end > start)) {
                continue;
            }
            panel.differentiate(start, v, place, 0);
            panel.differentiate(end, v, next, 0);
            HermiteCubic height = new HermiteCubic(place[1] - water.at(start), (place[3] - water.slope()) * (end - start),
                next[1] - water.at(end), (next[3] - water.slope()) * (end - start));
            partings.add(start);
            partings.add(end);
            for (double share : height.partings()) {
                if (share < 1) {
                    partings.add(start + share * (end - start));
                }
            }
            double[] least = height.least(AT_SHEER);
            lowest = Math.min(lowest, least[1]);
            if (isSheer && least[1] < sheer[1] - AT_SHEER) {
                sheer = new double[] {start + least[0] * (end - start), least[1]};
            }
        }
    }

    private void moments(double x, double[] out) {
        section.sum(x, wet);
        double arm = x - water.about();
        out[VOLUME] = wet[WetSection.AREA];
        out[MOMENT] = arm * wet[WetSection.AREA];
        out[HEIGHT_MOMENT] = wet[WetSection.HEIGHT_MOMENT];
        out[SKIN] = wet[WetSection.SKIN];
        out[BREADTH] = wet[WetSection.HALF_BREADTH];
        out[BREADTH_MOMENT] = arm * wet[WetSection.HALF_BREADTH];
        out[BREADTH_SQUARE] = arm * arm * wet[WetSection.HALF_BREADTH];
        out[CUBE] = wet[WetSection.CUBE];
    }

    private Hydrostatics figures(double[] bounds, double[] sums) {
        double half = sums[VOLUME];
        return new Hydrostatics(water, wetEnd(bounds, 0, 1), wetEnd(bounds, bounds.length - 1, -1),
            2 * half, water.about() + sums[MOMENT] / half, sums[HEIGHT_MOMENT] / half, 2 * sums[SKIN],
            waterplane(sums));
    }

    /** Lengths in the water's surface are longer than along the base line by 1 / cos(trim). */
    private Waterplane waterplane(double[] sums) {
        double stretch = 1 / Math.cos(water.trim().radians());
        double arm = sums[BREADTH_MOMENT] / sums[BREADTH];
        double square = sums[BREADTH_SQUARE] - arm * sums[BREADTH_MOMENT];
        return new Waterplane(2 * stretch * sums[BREADTH], water.about() + arm,
            2.0 / 3 * stretch * sums[CUBE], 2 * Math.pow(stretch, 3) * square);
    }

    /** The outer end of the first wet stretch, counted from an end of the hull. */
    private double wetEnd(double[] bounds, int from, int step) {
        int i = from;
        while (i + step >= 0 && i + step < bounds.length) {
            section.sum(0.5 * (bounds[i] + bounds[i + step]), wet);
            if (wet[WetSection.SKIN] > 0) {
                break;
            }
            i += step;
        }
        return bounds[i];
    }
}
