package org.garboard.drawing.template;

import java.util.Optional;
import org.garboard.drawing.Box;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;

/** The part of a stroke inside a window (Liang and Barsky's parametric clipping, textbook). */
final class Clipped {
    private Clipped() {
    }

    static Optional<Line> of(Line line, Box window) {
        double dx = line.to().x() - line.from().x();
        double dy = line.to().y() - line.from().y();
        double[] range = {0, 1};
        boolean inside = within(-dx, line.from().x() - window.left(), range) && within(dx, window.right() - line.from().x(), range)
                && within(-dy, line.from().y() - window.bottom(), range) && within(dy, window.top() - line.from().y(), range);
        return inside && range[0] < range[1]
                ? Optional.of(new Line(line.layer(), at(line, range[0]), at(line, range[1]))) : Optional.empty();
    }

    private static boolean within(double slope, double room, double[] range) {
        if (slope == 0) {
            return room >= 0;
        }
        double share = room / slope;
        if (slope < 0) {
            range[0] = Math.max(range[0], share);
        } else {
            range[1] = Math.min(range[1], share);
        }
        return range[0] <= range[1];
    }

    private static Point at(Line line, double share) {
        return new Point(line.from().x() + share * (line.to().x() - line.from().x()),
                line.from().y() + share * (line.to().y() - line.from().y()));
    }
}
