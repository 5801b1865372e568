package org.garboard.drawing.dxf;

import java.util.List;
import org.garboard.drawing.Hatch;
import org.garboard.drawing.HatchStrokes;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Scale;

/**
 * The codes of a hatch after its layer. Their order is part of the format: a reader that meets
 * another order drops the drawing.
 */
final class HatchTags {

    /** A pattern that every program has: strokes at 45 degrees, an eighth of an inch apart. */
    private static final String PATTERN = "ANSI31";
    private static final double PATTERN_DEG = 45;
    private static final double PATTERN_SPACING = 3.175;

    private static final int EXTERNAL_POLYLINE = 3;
    private static final int INNER_POLYLINE = 2;

    private HatchTags() {
    }

    static void write(Tags tags, Hatch hatch, Scale scale) {
        tags.tag(100, "AcDbHatch").point(10, 0, 0).number(210, 0).number(220, 0).number(230, 1)
                .tag(2, PATTERN).tag(70, 0).tag(71, 0).tag(91, hatch.rings().size());
        for (int ring = 0; ring < hatch.rings().size(); ring++) {
            boundary(tags, hatch.rings().get(ring), ring == 0 ? EXTERNAL_POLYLINE : INNER_POLYLINE, scale);
        }
        double spacing = scale.trueMm(hatch.spacing());
        double radians = Math.toRadians(hatch.angleDeg());
        tags.tag(75, 0).tag(76, 1).number(52, hatch.angleDeg() - PATTERN_DEG)
                .number(41, spacing / PATTERN_SPACING).tag(77, 0).tag(78, 1)
                .number(53, hatch.angleDeg()).number(43, 0).number(44, 0)
                .number(45, -Math.sin(radians) * spacing).number(46, Math.cos(radians) * spacing).tag(79, 0);
        Point seed = seed(hatch);
        tags.tag(98, 1).flat(10, scale.trueMm(seed.x()), scale.trueMm(seed.y()));
    }

    private static void boundary(Tags tags, List<Point> ring, int type, Scale scale) {
        tags.tag(92, type).tag(72, 0).tag(73, 1).tag(93, ring.size());
        ring.forEach(point -> tags.flat(10, scale.trueMm(point.x()), scale.trueMm(point.y())));
        tags.tag(97, 0);
    }

    /** A place inside the region: the middle of one of its strokes, or a corner of a sliver without any. */
    private static Point seed(Hatch hatch) {
        List<Line> strokes = HatchStrokes.of(hatch);
        if (strokes.isEmpty()) {
            return hatch.rings().get(0).get(0);
        }
        Line stroke = strokes.get(strokes.size() / 2);
        return stroke.from().midwayTo(stroke.to());
    }
}
