package org.garboard.cutout.pocket;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.FlatPoint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/** Lines round an outline that lies flat, at a distance outside it. */
final class PocketLines {
    private static final GeometryFactory FLAT = new GeometryFactory();
    /** Corners are rounded by chords within this [m]: a tenth of what an outline may stray; our choice. */
    private static final double TRUE = 1e-5;

    private PocketLines() {
    }

    /** The line at a distance [m], corners rounded; the outline itself at none. */
    static List<FlatPoint> outside(List<FlatPoint> outline, double distance) {
        if (!(distance > 0)) {
            return outline;
        }
        BufferParameters round = new BufferParameters((int) Math.ceil(Math.PI / 4 / Math.acos(Math.max(0, 1 - TRUE / distance))));
        round.setSimplifyFactor(Math.min(0.01, TRUE / distance));
        Geometry inner = polygon(outline);
        return points((Polygon) new BufferOp(inner, round).getResultGeometry(distance)).stream().map(at -> squared(inner, at, distance)).toList();
    }

    private static List<FlatPoint> points(Polygon polygon) {
        Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
        List<FlatPoint> points = new ArrayList<>();
        for (int i = 0; i + 1 < ring.length; i++) {
            points.add(new FlatPoint(ring[i].x, ring[i].y));
        }
        return points;
    }

    /** In hollows the buffer's corners may fall short by a thousandth of the distance: moved out to it. */
    private static FlatPoint squared(Geometry inner, FlatPoint at, double distance) {
        Coordinate[] nearest = DistanceOp.nearestPoints(inner, FLAT.createPoint(new Coordinate(at.u(), at.v())));
        double farther = distance / nearest[0].distance(nearest[1]);
        return new FlatPoint(nearest[0].x + farther * (at.u() - nearest[0].x), nearest[0].y + farther * (at.v() - nearest[0].y));
    }

    /** Without points that lie so near the line between others [m]. */
    static List<FlatPoint> thinned(List<FlatPoint> outline, double within) {
        return points((Polygon) DouglasPeuckerSimplifier.simplify(polygon(outline), within));
    }

    /** Area inside an outline [m2]. */
    static double area(List<FlatPoint> outline) {
        return polygon(outline).getArea();
    }

    private static Geometry polygon(List<FlatPoint> outline) {
        Coordinate[] ring = new Coordinate[outline.size() + 1];
        for (int i = 0; i <= outline.size(); i++) {
            FlatPoint point = outline.get(i % outline.size());
            ring[i] = new Coordinate(point.u(), point.v());
        }
        return FLAT.createPolygon(ring);
    }
}
