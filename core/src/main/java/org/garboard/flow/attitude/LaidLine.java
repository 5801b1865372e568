package org.garboard.flow.attitude;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hydrostatics.WaterSurface;

/**
 * The stagnation line on the true surface. In each section the bottom is wet out to the half-breadth at which the level
 * water's height over the keel is {@link WetOut#needed}. For straight sections it is equation (3) of Savitsky 1964 exactly.
 */
final class LaidLine {
    private static final int POINTS = 25;
    private static final double STEP = 0.5;
    private static final double CLOSE = 1e-9;
    /** Of the rough sum: an even number of pieces, and how near the chine's place must be known [m]. */
    private static final int ROUGH_PIECES = 8;
    private static final double ROUGHLY = 1e-5;
    private static final int TURNS = 100;

    private final Hull hull;
    private final HullLine keel;
    private final HullLine edge;
    private final WaterSurface water;
    private final WetOut section;

    LaidLine(Hull hull, WaterSurface water) {
        this.hull = hull;
        this.keel = hull.keel();
        this.edge = hull.bottomEdge();
        this.water = water;
        this.section = new WetOut(hull);
    }

    /** Empty where the water does not cross keel and chine within the hull. */
    Optional<StagnationLine> line(double end) {
        double atKeel = dryKeel(end);
        double atEnd = underChine(end);
        if (Double.isNaN(atKeel) || !(atEnd > 0)) {
            return Optional.empty();
        }
        double atChine = crossing(atKeel, underChine(atKeel), end, atEnd, this::underChine, CLOSE);
        return Optional.of(new StagnationLine(points(atKeel, atChine, edge.y(atChine))));
    }

    /**
     * Mean wetted length of that line [m], by Simpson's rule over few sections, a third of the line's cost; NaN where there is none.
     */
    double roughMean(double end) {
        double atKeel = dryKeel(end);
        double atEnd = underChine(end);
        if (Double.isNaN(atKeel) || !(atEnd > 0)) {
            return Double.NaN;
        }
        double atChine = crossing(atKeel, underChine(atKeel), end, atEnd, this::underChine, ROUGHLY);
        double outermost = edge.y(atChine);
        double piece = (atChine - atKeel) / ROUGH_PIECES;
        double sum = outermost;
        double before = 0;
        double y = 0;
        for (int i = 1; i < ROUGH_PIECES; i++) {
            double x = atKeel + i * piece;
            double drawnOn = i < 2 ? 0 : 2 * y - before;
            before = y;
            y = section.at(x, edge.y(x)).wetTo(overKeel(x), drawnOn);
            sum += (i % 2 == 1 ? 4 : 2) * y;
        }
        return end - atChine + sum * piece / 3 / outermost;
    }

    private List<Vector2D> points(double atKeel, double last, double outermost) {
        List<Vector2D> points = new ArrayList<>();
        double y = 0;
        for (int i = 0; i < POINTS; i++) {
            double x = atKeel + (last - atKeel) * i / (POINTS - 1);
            double drawnOn = i < 2 ? 0 : 2 * y - points.get(i - 2).getY();
            y = i == 0 ? 0 : Math.max(y, i == POINTS - 1 ? outermost : section.at(x, edge.y(x)).wetTo(overKeel(x), drawnOn));
            points.add(Vector2D.of(x, y));
        }
        return points;
    }

    /** Whether the water does not reach out to the chine at the end. */
    boolean isDry(double end) {
        return !(underChine(end) > 0);
    }

    /** Where the chines are dry, as far out as the water reaches at the end; empty where it does not cross the keel within the hull. */
    Optional<StagnationLine> insideChines(double end) {
        double atKeel = dryKeel(end);
        return Double.isNaN(atKeel) || !isDry(end) ? Optional.empty()
            : Optional.of(new StagnationLine(points(atKeel, end, section.at(end, edge.y(end)).wetTo(overKeel(end), 0))));
    }

    /** By how much the water stands higher than the section asks for to be wet to the chine [m]; below 0 where the keel is dry. */
    private double underChine(double x) {
        return overKeel(x) - section.at(x, edge.y(x)).needed(edge.y(x));
    }

    private double overKeel(double x) {
        return water.at(x) - keel.z(x);
    }

    /** Going forward from the end, the first x at which the keel is dry; NaN where there is none. */
    private double dryKeel(double end) {
        double aft = end;
        double atAft = overKeel(aft);
        for (double fore = end - STEP; atAft > 0 && fore > hull.firstSection(); fore -= STEP) {
            double atFore = overKeel(fore);
            if (!(atFore > 0)) {
                return crossing(fore, atFore, aft, atAft, this::overKeel, CLOSE);
            }
            aft = fore;
            atAft = atFore;
        }
        return Double.NaN;
    }

    /** Between a dry and a wet place, by false position with the Illinois halving. */
    static double crossing(double dry, double atDry, double wet, double atWet, DoubleUnaryOperator depth, double close) {
        double low = dry;
        double high = wet;
        double atLow = atDry;
        double atHigh = atWet;
        int kept = 0;
        for (int i = 0; i < TURNS && Math.abs(high - low) > close; i++) {
            double middle = (low * atHigh - high * atLow) / (atHigh - atLow);
            double at = depth.applyAsDouble(middle);
            if (Math.abs(at) <= CLOSE * CLOSE) {
                return middle;
            }
            if (at > 0) {
                high = middle;
                atHigh = at;
                atLow = kept > 0 ? atLow / 2 : atLow;
                kept = 1;
            } else {
                low = middle;
                atLow = at;
                atHigh = kept < 0 ? atHigh / 2 : atHigh;
                kept = -1;
            }
        }
        return Math.abs(atLow) < Math.abs(atHigh) ? low : high;
    }
}
