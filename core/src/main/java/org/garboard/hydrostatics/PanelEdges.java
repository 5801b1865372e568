package org.garboard.hydrostatics;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.garboard.geometry.KnotVector;
import org.garboard.hull.EndFace;
import org.garboard.hull.Panel;
import org.garboard.hull.PlanFace;

/**
 * Where a panel's skin begins and ends, and where along the edges that faces cut it a section changes what it is made of: all of it
 * that does not depend on the water. Owns its arrays.
 */
final class PanelEdges {
    private static final int LOOKS_PER_CELL = 32;
    private static final int HALVINGS = 60;

    private final Panel panel;
    private final double[] from;
    private final double[] to;
    /** Every x at which an edge turns, or a face or a cell of it ends [m]. */
    private final List<Double> turns = new ArrayList<>();
    private final List<Edge> cut = new ArrayList<>();

    /** An edge looked at across: where it stands, and how high, at each v. */
    private record Edge(DoubleUnaryOperator end, double[] v, double[] x, double[] z) {
    }

    private PanelEdges(Panel panel) {
        this.panel = panel;
        KnotVector across = panel.knotsAcross();
        this.from = IntStream.rangeClosed(0, across.cells()).mapToDouble(line -> panel.from(across.cellStart(line))).toArray();
        this.to = IntStream.rangeClosed(0, across.cells()).mapToDouble(line -> panel.to(across.cellStart(line))).toArray();
        if (!panel.isWhole()) {
            cut(panel.fore(), panel::from);
            cut(panel.aft(), panel::to);
        }
    }

    static PanelEdges of(Panel panel) {
        return new PanelEdges(panel);
    }

    /** x at which the skin begins on a line of the net across [m]. */
    double from(int line) {
        return from[line];
    }

    /** x at which it ends there [m]. */
    double to(int line) {
        return to[line];
    }

    /** Adds every x [m] at which an edge makes a section change, with the water where it is. */
    void part(WaterSurface water, Collection<Double> places) {
        places.addAll(turns);
        for (Edge edge : cut) {
            for (int i = 1; i < edge.v.length; i++) {
                boolean wet = edge.z[i - 1] < water.at(edge.x[i - 1]);
                if (edge.z[i] < water.at(edge.x[i]) != wet) {
                    add(edge.end.applyAsDouble(crossing(edge.end, edge.v[i - 1], edge.v[i], wet, water)), places);
                }
            }
        }
    }

    private void cut(EndFace face, DoubleUnaryOperator end) {
        if (face instanceof PlanFace plan) {
            for (int i = 0; i < plan.size(); i++) {
                add(plan.pointX(i), turns);
            }
        }
        Edge edge = look(end);
        double turned = 0;
        add(edge.x[0], turns);
        for (int i = 1; i < edge.v.length; i++) {
            double way = edge.x[i] - edge.x[i - 1];
            if (way * turned < 0) {
                add(turn(end, edge.v[i - 1] - (edge.v[i] - edge.v[i - 1]), edge.v[i], turned), turns);
            }
            turned = way == 0 ? turned : way;
            if (i % LOOKS_PER_CELL == 0) {
                add(edge.x[i], turns);
            }
        }
        cut.add(edge);
    }

    private Edge look(DoubleUnaryOperator end) {
        KnotVector across = panel.knotsAcross();
        double[] v = new double[1 + LOOKS_PER_CELL * across.cells()];
        v[0] = across.start();
        for (int i = 1; i < v.length; i++) {
            int cell = (i - 1) / LOOKS_PER_CELL;
            double width = across.cellStart(cell + 1) - across.cellStart(cell);
            v[i] = across.cellStart(cell) + width * (i - cell * LOOKS_PER_CELL) / LOOKS_PER_CELL;
        }
        double[] x = new double[v.length];
        double[] z = new double[v.length];
        for (int i = 0; i < v.length; i++) {
            x[i] = end.applyAsDouble(v[i]);
            z[i] = height(x[i], v[i]);
        }
        return new Edge(end, v, x, z);
    }

    private double height(double x, double v) {
        double[] at = new double[Panel.DERIVATIVES];
        panel.differentiate(x, v, at, 0);
        return at[1];
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

    private void add(double x, Collection<Double> places) {
        if (x >= panel.knotsAlong().start() && x <= panel.knotsAlong().end()) {
            places.add(x);
        }
    }

    private double crossing(DoubleUnaryOperator end, double from, double to, boolean wet, WaterSurface water) {
        double one = from;
        double other = to;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (one + other);
            double x = end.applyAsDouble(middle);
            if (height(x, middle) < water.at(x) == wet) {
                one = middle;
            } else {
                other = middle;
            }
        }
        return 0.5 * (one + other);
    }
}
