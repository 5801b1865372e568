package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.Pocket;
import org.garboard.drawing.Box;
import org.garboard.drawing.Point;

/**
 * The developed opening as it is cut, outside up: bow to the right, starboard up, true millimetres
 * from the middle of the pocket on the keel line.
 *
 * @param corners closed, without corners that fall together
 */
record CutOutline(List<Point> corners) {

    /** Corners nearer than this are one [mm]: a tenth of what an outline may stray from true. */
    private static final double TOGETHER = 0.005;

    CutOutline {
        corners = List.copyOf(corners);
    }

    /** What is cut through the hull: of a tray the hull cut, else the finished edge. */
    static CutOutline of(Pocket pocket) {
        return new CutOutline(flat(pocket.details().hullCut().isEmpty() ? pocket.developedOpening() : pocket.details().hullCut().flat()));
    }

    /** What a bench and sheet 2 know: the edge that stands once all is done, whose corners are the marks 1 to 4. */
    static CutOutline finishedEdge(Pocket pocket) {
        return new CutOutline(flat(pocket.developedOpening()));
    }

    /** Points of a development in the frame of the stock. */
    static List<Point> flat(List<FlatPoint> development) {
        return apart(development.stream().map(place -> new Point(-1000 * place.u(), 1000 * place.v())).toList());
    }

    /** Without points that fall together with the one before, the last with the first [mm]. */
    static List<Point> apart(List<Point> line) {
        List<Point> points = new ArrayList<>();
        for (Point point : line) {
            if (points.isEmpty() || points.get(points.size() - 1).distanceTo(point) > TOGETHER) {
                points.add(point);
            }
        }
        if (points.get(0).distanceTo(points.get(points.size() - 1)) <= TOGETHER) {
            points.remove(points.size() - 1);
        }
        return points;
    }

    Box extents() {
        return Box.around(corners);
    }

    double perimeter() {
        double sum = 0;
        for (int i = 0; i < corners.size(); i++) {
            sum += corners.get(i).distanceTo(corners.get((i + 1) % corners.size()));
        }
        return sum;
    }

    /**
     * The outline's corner towards a corner of its extents: the point farthest out both ways, each
     * way as a share of the extents, so that long pointed ramps do not count as corners.
     *
     * @param forward 1 towards the bow, -1 aft
     * @param starboard 1 to starboard, -1 to port
     */
    Point corner(int forward, int starboard) {
        Box box = extents();
        ToDoubleFunction<Point> out = point -> forward * (point.x() - box.centre().x()) / box.width()
                + starboard * (point.y() - box.centre().y()) / box.height();
        return corners.stream().max(Comparator.comparingDouble(out)).orElseThrow();
    }

    /** From the forward starboard corner to the after port corner [mm]. */
    double diagonalFromStarboard() {
        return corner(1, 1).distanceTo(corner(-1, -1));
    }

    /** From the forward port corner to the after starboard corner [mm]. */
    double diagonalFromPort() {
        return corner(1, -1).distanceTo(corner(-1, 1));
    }

    /** Distance of a place from the outline's line [mm]. */
    double distance(Point place) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < corners.size(); i++) {
            least = Math.min(least, square(place, corners.get(i), corners.get((i + 1) % corners.size())));
        }
        return Math.sqrt(least);
    }

    /** Square of the distance from a side [mm2]. */
    private static double square(Point place, Point from, Point to) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double share = ((place.x() - from.x()) * dx + (place.y() - from.y()) * dy) / (dx * dx + dy * dy);
        double within = Math.max(0, Math.min(1, share));
        double x = place.x() - from.x() - within * dx;
        double y = place.y() - from.y() - within * dy;
        return x * x + y * y;
    }
}
