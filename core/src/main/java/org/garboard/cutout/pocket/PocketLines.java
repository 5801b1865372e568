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

/** Lines round an outline that lies flat, at a distance outside it. */
final class PocketLines {
    private static final GeometryFactory FLAT = new GeometryFactory();
    /** Chords of a quarter round: a hundredth of a millimetre within at 50 mm. */
    private static final int QUARTER = 40;

    private PocketLines() {
    }

    /** The line at a distance [m], corners rounded; the outline itself at none. */
    static List<FlatPoint> outside(List<FlatPoint> outline, double distance) {
        if (!(distance > 0)) {
            return outline;
        }
        Polygon grown = (Polygon) new BufferOp(polygon(outline), new BufferParameters(QUARTER)).getResultGeometry(distance);
        Coordinate[] ring = grown.getExteriorRing().getCoordinates();
        List<FlatPoint> points = new ArrayList<>();
        for (int i = 0; i + 1 < ring.length; i++) {
            points.add(new FlatPoint(ring[i].x, ring[i].y));
        }
        return points;
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
