package org.garboard.siting;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hull.Step;
import org.garboard.offsets.LineKind;

/**
 * The lines that bound and divide the bottom.
 *
 * @param keel where the bottom begins: at the centreline, or at the rabbet of a keel below it
 * @param edge the outer edge of the bottom
 * @param chines the knuckles between them that a pocket athwart the keel must keep clear of: of a flat keel not
 *     its edge, which is cut away with the pocket; of a box keel its edge too, for no pocket cuts its side
 * @param knuckles all knuckles between them, the edge of a flat keel included
 * @param steps across it, from forward aft
 * @param forwardEnd of the bottom: where sections begin that reach from the keel outward [m]
 * @param afterEnd of the bottom's skin [m]
 */
record BottomLines(LineTrace keel, LineTrace edge, List<LineTrace> chines, List<LineTrace> knuckles,
                   List<Step> steps, double forwardEnd, double afterEnd) {
    private static final double ON_RABBET = 1e-9;

    BottomLines {
        chines = List.copyOf(chines);
        knuckles = List.copyOf(knuckles);
        steps = List.copyOf(steps);
    }

    /** Of a bottom without steps. */
    BottomLines(LineTrace keel, LineTrace edge, List<LineTrace> chines, List<LineTrace> knuckles,
                double forwardEnd, double afterEnd) {
        this(keel, edge, chines, knuckles, List.of(), forwardEnd, afterEnd);
    }

    /** The number of the first step that lies abaft of a place, which is how many lie ahead of it. */
    int nextStep(double x, double y) {
        int next = 0;
        while (next < steps.size() && steps.get(next).x(y) < x) {
            next++;
        }
        return next;
    }

    /**
     * How far ahead of a step a place in plan lies, straight along [m]; infinite where there is no such step; negative abaft of it, and
     * ahead of the one before it.
     */
    double toStep(int step, double x, double y) {
        double ahead = step < steps.size() ? steps.get(step).x(y) - x : Double.POSITIVE_INFINITY;
        double before = step > 0 ? x - steps.get(step - 1).x(y) : Double.POSITIVE_INFINITY;
        return before < 0 ? before : ahead;
    }

    static BottomLines of(Hull hull) {
        List<LineTrace> chines = new ArrayList<>();
        List<LineTrace> knuckles = new ArrayList<>();
        HullLine edge = hull.bottomEdge();
        boolean isBoxKeel = hull.lines().stream().anyMatch(line -> line.kind() == LineKind.KEEL_TOP);
        for (HullLine line : hull.lines()) {
            if (line == edge) {
                break;
            }
            if (hull.lines().indexOf(line) > hull.skinLine()) {
                LineTrace trace = trace(hull, line);
                knuckles.add(trace);
                if (line.kind() != LineKind.HALF_SIDING || isBoxKeel) {
                    chines.add(trace);
                }
            }
        }
        return new BottomLines(trace(hull, hull.lines().get(hull.skinLine())), trace(hull, edge), chines, knuckles,
            hull.steps(), hull.firstSection(), hull.bottomEnd());
    }

    private static LineTrace trace(Hull hull, HullLine line) {
        return new LineTrace(line::y, line::z, hull.firstSection(), hull.bottomEnd());
    }

    /** Height of the skin [m]; NaN off it, on a keel where it is unsure, and inboard of a rabbet, where a keel hangs. */
    DoubleBinaryOperator skin(Hull hull) {
        UnsureKeel unsure = UnsureKeel.of(hull);
        boolean hangs = hull.skinLine() != 0;
        return (x, y) -> {
            double side = Math.abs(y);
            boolean off = side <= unsure.halfBreadth(x) || hangs && side < keel.y(x) - ON_RABBET;
            return off ? Double.NaN : hull.height(x, y);
        };
    }
}
