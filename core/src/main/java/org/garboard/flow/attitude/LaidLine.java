package org.garboard.flow.attitude;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.geometry.GaussRule;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hydrostatics.WaterSurface;

/**
 * The stagnation line on the true surface. In each section the bottom is wet out to the half-breadth c at which
 * the level water's height over the keel is (2/pi) times the integral of the section's rise f(c sin t) for t from
 * 0 to pi/2: H. Wagner's condition of water entry (1932, from memory). For straight sections it is equation (3) of
 * Savitsky 1964 exactly.
 */
final class LaidLine {
    private static final GaussRule RULE = GaussRule.of(24);
    private static final int POINTS = 33;
    private static final double STEP = 0.05;
    private static final int HALVINGS = 50;

    private final Hull hull;
    private final HullLine keel;
    private final WaterSurface water;

    LaidLine(Hull hull, WaterSurface water) {
        this.hull = hull;
        this.keel = hull.keel();
        this.water = water;
    }

    /** Empty where the water does not cross keel and chine within the hull. */
    Optional<StagnationLine> line(double end) {
        Optional<Double> atKeel = firstDry(end, x -> water.at(x) - keel.z(x));
        Optional<Double> atChine = firstDry(end, x -> water.at(x) - keel.z(x) - needed(x, hull.bottomEdge().y(x)));
        if (atKeel.isEmpty() || atChine.isEmpty() || atChine.get() < atKeel.get()) {
            return Optional.empty();
        }
        List<Vector2D> points = new ArrayList<>();
        double least = 0;
        for (int i = 0; i < POINTS; i++) {
            double x = atKeel.get() + (atChine.get() - atKeel.get()) * i / (POINTS - 1);
            double edge = hull.bottomEdge().y(x);
            double y = i == 0 ? 0 : i == POINTS - 1 ? edge : wetTo(x, edge);
            least = Math.max(least, y);
            points.add(Vector2D.of(x, least));
        }
        return Optional.of(new StagnationLine(points));
    }

    /** Going forward from the end, the first x at which a wet depth is used up. */
    private Optional<Double> firstDry(double end, DoubleUnaryOperator wet) {
        double aft = end;
        if (!(wet.applyAsDouble(aft) > 0)) {
            return Optional.empty();
        }
        for (double fore = end - STEP; fore > hull.forwardEnd(); fore -= STEP) {
            if (!(wet.applyAsDouble(fore) > 0)) {
                return Optional.of(crossing(fore, aft, wet));
            }
            aft = fore;
        }
        return Optional.empty();
    }

    private static double crossing(double dry, double wetSide, DoubleUnaryOperator wet) {
        double fore = dry;
        double aft = wetSide;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (fore + aft);
            if (wet.applyAsDouble(middle) > 0) {
                aft = middle;
            } else {
                fore = middle;
            }
        }
        return 0.5 * (fore + aft);
    }

    private double wetTo(double x, double edge) {
        double depth = water.at(x) - keel.z(x);
        return crossing(edge, 0, y -> depth - needed(x, y));
    }

    /** Height of level water over the keel at which a section is wet out to a half-breadth [m]. */
    private double needed(double x, double y) {
        double sum = 0;
        for (int i = 0; i < RULE.size(); i++) {
            double at = y * Math.sin(0.5 * Math.PI * RULE.at(i));
            sum += RULE.weight(i) * (hull.height(x, at) - keel.z(x));
        }
        return sum;
    }
}
