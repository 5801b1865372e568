package org.garboard.takeoff;

import java.util.List;
import org.garboard.offsets.LineKind;

/**
 * The points of a take-off in the boat's own frame, folded over to starboard: where each was measured, and where
 * on the skin it comes to lie when it is moved fore or aft into its station. A station is plumb when it is
 * measured, so it leans in a boat that is trimmed. Owns its arrays.
 */
final class PlacedPoints {
    private final TakeOff takeOff;
    /** By point: x, half-breadth, z as measured [m]. */
    private final double[][] own;
    /** By point: what moving into the station adds to half-breadth and z [m]. */
    private final double[][] moved;

    PlacedPoints(TakeOff takeOff, Pose pose, double[][] moved) {
        this.takeOff = takeOff;
        this.moved = moved;
        this.own = new double[takeOff.points().size()][];
        for (int i = 0; i < own.length; i++) {
            TakenPoint point = takeOff.points().get(i);
            double[] place = pose.own(takeOff.stations().get(point.station()).x(), point.y(), point.z());
            place[1] = point.side().outward(place[1]);
            own[i] = place;
        }
    }

    double x(int point) {
        return own[point][0];
    }

    /** Half-breadth where it was measured [m]. */
    double measuredY(int point) {
        return own[point][1];
    }

    /** Height where it was measured [m]. */
    double measuredZ(int point) {
        return own[point][2];
    }

    /** Half-breadth in the station [m]. */
    double y(int point) {
        return own[point][1] + moved[point][0];
    }

    /** Height in the station [m]. */
    double z(int point) {
        return own[point][2] + moved[point][1];
    }

    /**
     * Where the stations stand: at their keel points, the two at the ends so far in that all their points lie at
     * or beyond them, for nothing is known of the skin past them.
     */
    double[] stations(List<MarkedLine> lines) {
        MarkedLine keel = MarkedLine.first(lines, LineKind.KEEL).orElseThrow();
        double[] x = new double[takeOff.stations().size()];
        for (int j = 0; j < x.length; j++) {
            x[j] = keel.stations().get(j).stream().mapToDouble(this::x).average().orElseThrow();
        }
        for (int i = 0; i < own.length; i++) {
            int station = takeOff.points().get(i).station();
            if (station == 0) {
                x[0] = Math.max(x[0], x(i));
            } else if (station == x.length - 1) {
                x[station] = Math.min(x[station], x(i));
            }
        }
        return x;
    }
}
