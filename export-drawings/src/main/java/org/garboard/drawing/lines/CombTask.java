package org.garboard.drawing.lines;

import java.util.List;
import org.garboard.drawing.Scale;
import org.garboard.lines.Comb;
import org.garboard.lines.DrawnLine;

/**
 * A line whose curvature is to be drawn, at one scale.
 *
 * @param combs a view each
 */
record CombTask(LinesPaper lines, DrawnLine line, List<Comb> combs, CombScale teeth) {
    /** Between teeth [mm on paper]: our choice, they can be told apart and counted. */
    private static final double SPACING = 2;

    static CombTask of(LinesTask task, DrawnLine line, Scale scale) {
        List<Comb> combs = Comb.of(task.hull(), line, scale.trueMm(SPACING) / 1000);
        return new CombTask(task.at(scale), line, combs, CombScale.of(combs));
    }
}
