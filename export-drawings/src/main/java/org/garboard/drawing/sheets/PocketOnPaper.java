package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.Pocket;
import org.garboard.drawing.Point;
import org.garboard.drawing.Scale;

/**
 * A pocket's places on paper at one scale, seen square to its floor; its middle on the skin is
 * the origin.
 *
 * <p>Below: bow to the right, starboard up. Lengthwise: bow to the right, into the boat up.
 * Looking forward: starboard to the right, into the boat up.
 */
final class PocketOnPaper {

    private final Pocket pocket;
    private final Scale scale;

    PocketOnPaper(Pocket pocket, Scale scale) {
        this.pocket = pocket;
        this.scale = scale;
    }

    /** Distance aft of the middle along the floor [m]. */
    double along(Vector3D place) {
        return place.subtract(pocket.site()).dot(pocket.along());
    }

    /** Distance to starboard of the middle along the floor [m]. */
    double across(Vector3D place) {
        return place.subtract(pocket.site()).dot(pocket.across());
    }

    /** Distance from the middle into the boat, square to the floor [m]. */
    double up(Vector3D place) {
        return place.subtract(pocket.site()).dot(pocket.up());
    }

    double paper(double metres) {
        return scale.paper(metres);
    }

    /** A place given by its distances aft and to starboard or upward [m]. */
    Point lengthwise(double along, double other) {
        return new Point(-scale.paper(along), scale.paper(other));
    }

    Point lookingForward(double across, double up) {
        return new Point(scale.paper(across), scale.paper(up));
    }

    Point below(Vector3D place) {
        return lengthwise(along(place), across(place));
    }

    Point lengthwise(Vector3D place) {
        return lengthwise(along(place), up(place));
    }

    Point lookingForward(Vector3D place) {
        return lookingForward(across(place), up(place));
    }

    /** A run of places without points that fall together on paper. */
    static List<Point> run(List<Vector3D> places, Function<Vector3D, Point> view) {
        List<Point> points = new ArrayList<>();
        for (Vector3D place : places) {
            Point point = view.apply(place);
            if (points.isEmpty() || points.get(points.size() - 1).distanceTo(point) > 1e-6) {
                points.add(point);
            }
        }
        return points;
    }

    /** A closed run, the end not repeating the start. */
    static List<Point> ring(List<Vector3D> places, Function<Vector3D, Point> view) {
        List<Point> points = run(places, view);
        if (points.size() > 1 && points.get(0).distanceTo(points.get(points.size() - 1)) <= 1e-6) {
            points.remove(points.size() - 1);
        }
        return points;
    }
}
