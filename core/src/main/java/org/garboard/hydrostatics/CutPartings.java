package org.garboard.hydrostatics;

import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.garboard.geometry.KnotVector;
import org.garboard.hull.EndFace;
import org.garboard.hull.Panel;
import org.garboard.hull.PlanFace;

/** Where the edge along which a face cuts a panel changes what a section is made of. */
final class CutPartings {
    private static final int LOOKS_PER_CELL = 32;
    private static final int HALVINGS = 60;

    private final Panel panel;
    private final WaterSurface water;
    private final SortedSet<Double> places = new TreeSet<>();

    CutPartings(Panel panel, WaterSurface water) {
        this.panel = panel;
        this.water = water;
        edge(panel.fore(), panel::from);
        edge(panel.aft(), panel::to);
    }

    /** Every such x [m]. */
    SortedSet<Double> places() {
        return places;
    }

    private void edge(EndFace face, DoubleUnaryOperator end) {
        if (face instanceof PlanFace plan) {
            for (int i = 0; i < plan.size(); i++) {
                add(plan.pointX(i));
            }
        }
        KnotVector across = panel.knotsAcross();
        double turned = 0;
        double before = across.start();
        add(end.applyAsDouble(before));
        for (int cell = 0; cell < across.cells(); cell++) {
            double width = across.cellStart(cell + 1) - across.cellStart(cell);
            for (int look = 1; look <= LOOKS_PER_CELL; look++) {
                double v = across.cellStart(cell) + width * look / LOOKS_PER_CELL;
                double way = end.applyAsDouble(v) - end.applyAsDouble(before);
                if (way * turned < 0) {
                    add(turn(end, before - (v - before), v, turned));
                }
                turned = way == 0 ? turned : way;
                if (isWet(end, v) != isWet(end, before)) {
                    add(end.applyAsDouble(crossing(end, before, v)));
                }
                before = v;
            }
            add(end.applyAsDouble(before));
        }
    }

    /** The most, or the least, between two places across, by thirds. */
    private static double turn(DoubleUnaryOperator end, double from, double to, double rising) {
        double low = from;
        double high = to;
        for (int i = 0; i < 2 * HALVINGS; i++) {
            double one = low + (high - low) / 3;
            double other = high - (high - low) / 3;
            if ((end.applyAsDouble(one) - end.applyAsDouble(other)) * rising < 0) {
                low = one;
            } else {
                high = other;
            }
        }
        return end.applyAsDouble(0.5 * (low + high));
    }

    private void add(double x) {
        if (x >= panel.knotsAlong().start() && x <= panel.knotsAlong().end()) {
            places.add(x);
        }
    }

    private boolean isWet(DoubleUnaryOperator end, double v) {
        double[] at = new double[Panel.DERIVATIVES];
        double x = end.applyAsDouble(v);
        panel.differentiate(x, v, at, 0);
        return at[1] < water.at(x);
    }

    private double crossing(DoubleUnaryOperator end, double from, double to) {
        double one = from;
        double other = to;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (one + other);
            if (isWet(end, middle) == isWet(end, from)) {
                one = middle;
            } else {
                other = middle;
            }
        }
        return 0.5 * (one + other);
    }
}
