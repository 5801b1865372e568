package org.garboard.drawing.flow;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.drawing.water.PlanCurve;
import org.garboard.flow.streams.HullStreams;
import org.garboard.flow.streams.Streamline;
import org.garboard.flow.streams.SweepDown;

/** Streamlines as lines of a picture. */
public final class StreamCurves {
    /** Of the lines that a share is counted from, one in so many is drawn. */
    private static final int ONE_IN = 10;

    private StreamCurves() {
    }

    /** So many lines through even depths at a station, from the surface to the keel. */
    public static List<PlanCurve> through(HullStreams streams, double station, int count) {
        List<PlanCurve> curves = new ArrayList<>();
        double deep = streams.keelDepth(station);
        for (int i = 0; i < count; i++) {
            if (streams.atDepth(station, deep * (i + 0.5) / count) instanceof Streamline line) {
                add(curves, PlanCurve.Kind.STREAMLINE, line);
            }
        }
        return curves;
    }

    /** Water from the surface at the bow. */
    public static List<PlanCurve> sweptDown(SweepDown sweep) {
        List<PlanCurve> curves = new ArrayList<>();
        for (int i = ONE_IN / 2; i < sweep.lines().size(); i += ONE_IN) {
            add(curves, PlanCurve.Kind.UPPER_WATER, sweep.lines().get(i));
        }
        return curves;
    }

    private static void add(List<PlanCurve> curves, PlanCurve.Kind kind, Streamline line) {
        if (line.points().size() > 1) {
            curves.add(new PlanCurve(kind, line.points().stream().map(point -> Vector2D.of(point.x(), point.y())).toList()));
        }
    }
}
