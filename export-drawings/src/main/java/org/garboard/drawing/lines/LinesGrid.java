package org.garboard.drawing.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.garboard.drawing.sheets.Figures;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish.Units;
import org.garboard.lines.DrawnLine;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.HullOffsets;

/**
 * Where the hull is cut on a lines drawing.
 *
 * @param sections from forward aft
 * @param buttocks from the centreline outward
 * @param waterlines from the base line up
 * @param diagonals in the order in which they are numbered
 */
record LinesGrid(List<GridLine> sections, List<GridLine> buttocks, List<GridLine> waterlines,
                 List<DrawnLine.Diagonal> diagonals) {
    /** A table without waterlines or buttocks gets so many at most; common practice is three to six. */
    private static final int MOST_BUTTOCKS = 4;
    private static final int MOST_WATERLINES = 6;
    private static final double[] METRIC_STEPS = {0.05, 0.1, 0.2, 0.25, 0.5, 1, 2, 5};
    /** Of a foot: from an inch and a half up. */
    private static final double[] FEET_STEPS = {0.0381, 0.0762, 0.1524, 0.3048, 0.6096, 1.2192, 2.4384};

    /** The wish's places; where it has none the table's; where that has none even ones. */
    static LinesGrid of(LinesWish wish, HullOffsets table, Hull hull, HullExtent extent, Figures figures) {
        List<GridLine> sections = wish.sections().isEmpty()
                ? table.skinStations().stream().filter(station -> within(hull, station.x()))
                        .map(station -> new GridLine(station.name() + ": " + figures.aftOfOrigin(station.x()), station.x())).toList()
                : named(wish.sections(), x -> "x " + figures.brief(x));
        double[] steps = figures.units() == Units.MILLIMETRES ? METRIC_STEPS : FEET_STEPS;
        List<Double> buttocks = wish.buttocks().isEmpty() ? table.levels(LineKind.BUTTOCK) : wish.buttocks();
        List<Double> waterlines = wish.waterlines().isEmpty() ? table.levels(LineKind.WATERLINE) : wish.waterlines();
        return new LinesGrid(sections,
                named(buttocks.isEmpty() ? even(0, extent.halfBeam(), steps, MOST_BUTTOCKS) : buttocks, y -> "B " + figures.brief(y)),
                named(waterlines.isEmpty() ? even(extent.lowest(), extent.highest(), steps, MOST_WATERLINES) : waterlines,
                        z -> "WL " + figures.brief(z)),
                wish.diagonals());
    }

    private static boolean within(Hull hull, double x) {
        return x >= hull.forwardEnd() && x <= hull.afterEnd();
    }

    private static List<GridLine> named(List<Double> places, DoubleFunction<String> words) {
        return places.stream().sorted().distinct().map(place -> new GridLine(words.apply(place), place)).toList();
    }

    /** Multiples of a round step between two bounds, neither of them among them. */
    private static List<Double> even(double from, double to, double[] steps, int most) {
        for (double step : steps) {
            List<Double> places = new ArrayList<>();
            for (double i = Math.floor(from / step) + 1; i * step < to - 1e-6; i++) {
                places.add(i * step);
            }
            if (places.size() <= most) {
                return places;
            }
        }
        return List.of();
    }
}
