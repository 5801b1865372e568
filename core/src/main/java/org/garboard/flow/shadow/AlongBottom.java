package org.garboard.flow.shadow;

import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.hull.Hull;
import org.garboard.units.Angle;

/**
 * Straight lines aft along a planing bottom: there the flow is "predominantly aft with some transverse flow along the
 * chines" (D. Savitsky, Marine Technology 1(1), 1964).
 *
 * @param outward how far they run outboard, seen in plan: 0 is straight aft, at most 30 degrees
 */
public record AlongBottom(Hull hull, Angle outward) implements FlowLines {
    private static final double MOST = 30;
    /** The edge of the bottom is met within this [m]. */
    private static final double WITHIN = 1e-4;

    public AlongBottom {
        if (!(outward.degrees() >= 0 && outward.degrees() <= MOST)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "water that runs %.2f degrees outboard: from 0 to %.0f is possible",
                outward.degrees(), MOST));
        }
    }

    @Override
    public Found downFrom(double x, double y) {
        double edge = x >= hull.firstSection() && x <= hull.afterEnd() ? hull.bottomEdge().y(x) : Double.NaN;
        if (Double.isNaN(edge)) {
            return new OffTheBottom(String.format(Locale.ROOT, "x = %.3f m is off the hull, which is from %.3f to %.3f m", x,
                hull.firstSection(), hull.afterEnd()));
        }
        if (Math.abs(y) > edge + WITHIN) {
            return new OffTheBottom(String.format(Locale.ROOT, "y = %.3f m at x = %.3f m is off the bottom, which is %.3f m to either side there",
                y, x, edge));
        }
        double end = hull.afterEnd();
        double aside = y + Math.copySign((end - x) * Math.tan(outward.radians()), y < 0 ? -1 : 1);
        return new Line(List.of(Vector2D.of(x, y), Vector2D.of(end, aside)));
    }
}
