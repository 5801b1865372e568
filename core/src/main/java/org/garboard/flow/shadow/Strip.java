package org.garboard.flow.shadow;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.units.Angle;

/** A flow line and the water on both sides of it that a feature has disturbed, from the feature on. */
final class Strip {
    private final List<Vector2D> line = new ArrayList<>();
    private final List<Double> run = new ArrayList<>();
    private final Growth growth;

    /**
     * How a strip widens along its line.
     *
     * @param half angle to either side
     * @param cap most growth [m]
     * @param outboard how many times as much outboard as inboard, 1 or more
     */
    record Growth(Angle half, double cap, double outboard) {
        static final Growth NONE = new Growth(Angle.ofDegrees(0), 0, 1);

        double at(double run) {
            return Math.min(cap, run * Math.tan(half.radians()));
        }

        /** Where growth ends [m]. */
        double capped() {
            return cap / Math.tan(half.radians());
        }
    }

    /** @param length beyond which the wake has faded [m] */
    Strip(List<Vector2D> flow, Growth growth, double length) {
        this.growth = growth;
        line.add(flow.get(0));
        run.add(0.0);
        double gone = 0;
        for (int i = 1; i < flow.size(); i++) {
            double piece = flow.get(i - 1).distance(flow.get(i));
            if (piece > 0) {
                stop(flow, i, gone, piece, growth.capped());
                if (gone + piece >= length) {
                    stop(flow, i, gone, piece, length);
                    return;
                }
                add(flow.get(i), gone + piece);
                gone += piece;
            }
        }
    }

    /** A point of its own where growth ends within a piece, or the wake does. */
    private void stop(List<Vector2D> flow, int i, double gone, double piece, double at) {
        if (at > gone && at <= gone + piece) {
            add(flow.get(i - 1).lerp(flow.get(i), (at - gone) / piece), at);
        }
    }

    private void add(Vector2D point, double at) {
        if (at > run.get(run.size() - 1)) {
            line.add(point);
            run.add(at);
        }
    }

    List<Vector2D> line() {
        return line;
    }

    /** Its edge to starboard from forward aft, then that to port back; nothing for a line of one point. */
    List<Vector2D> outline() {
        List<Vector2D> outline = new ArrayList<>();
        if (line.size() < 2) {
            return outline;
        }
        for (int i = 0; i < line.size(); i++) {
            outline.add(line.get(i).add(across(i).multiply(growth.outboard() * growth.at(run.get(i)))));
        }
        for (int i = line.size() - 1; i >= 0; i--) {
            outline.add(line.get(i).subtract(across(i).multiply(growth.at(run.get(i)))));
        }
        return outline;
    }

    /** Unit vector to starboard of the flow: outboard, as all is drawn to starboard. */
    private Vector2D across(int i) {
        Vector2D along = line.get(Math.min(i + 1, line.size() - 1)).subtract(line.get(Math.max(i - 1, 0))).normalize();
        return Vector2D.of(-along.getY(), along.getX());
    }

    /** How far down the line the water is that passes nearest to a place [m]. */
    double runNear(Vector2D place) {
        double nearest = line.get(0).distance(place);
        double at = 0;
        for (int i = 1; i < line.size(); i++) {
            Vector2D piece = line.get(i).subtract(line.get(i - 1));
            double t = Math.max(0, Math.min(1, place.subtract(line.get(i - 1)).dot(piece) / piece.normSq()));
            double off = line.get(i - 1).add(piece.multiply(t)).distance(place);
            if (off < nearest) {
                nearest = off;
                at = run.get(i - 1) + t * (run.get(i) - run.get(i - 1));
            }
        }
        return at;
    }

    double distance(Vector2D place) {
        double nearest = line.get(0).distance(place);
        for (int i = 1; i < line.size(); i++) {
            Vector2D piece = line.get(i).subtract(line.get(i - 1));
            double t = Math.max(0, Math.min(1, place.subtract(line.get(i - 1)).dot(piece) / piece.normSq()));
            nearest = Math.min(nearest, line.get(i - 1).add(piece.multiply(t)).distance(place));
        }
        return nearest;
    }
}
