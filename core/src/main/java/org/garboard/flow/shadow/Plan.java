package org.garboard.flow.shadow;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.geometry.Ring;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Figures in plan put together and cut, by the library JTS. */
final class Plan {
    /** Smaller pieces are left over from rounding [m2]. */
    private static final double CRUMB = 1e-8;

    private final GeometryFactory factory = new GeometryFactory();

    /** A figure that may cross itself; nothing for fewer than three points. */
    Geometry figure(List<Vector2D> points) {
        if (points.size() < 3) {
            return factory.createPolygon();
        }
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < points.size(); i++) {
            ring[i] = new Coordinate(points.get(i).getX(), points.get(i).getY());
        }
        ring[points.size()] = ring[0].copy();
        return GeometryFixer.fix(factory.createPolygon(ring));
    }

    Geometry together(List<Geometry> figures) {
        return figures.isEmpty() ? factory.createPolygon() : OverlayNGRobust.union(figures, factory);
    }

    Geometry common(Geometry one, Geometry other) {
        return OverlayNGRobust.overlay(one, other, OverlayNG.INTERSECTION);
    }

    Geometry toPort(Geometry starboard) {
        return AffineTransformation.scaleInstance(1, -1).transform(starboard);
    }

    Geometry figure(PlanRegion region) {
        Geometry holes = together(region.holes().stream().map(hole -> figure(hole.points())).toList());
        return without(figure(region.outline().points()), holes);
    }

    Vector2D inside(PlanRegion region) {
        Coordinate place = figure(region).getInteriorPoint().getCoordinate();
        return Vector2D.of(place.x, place.y);
    }

    Geometry without(Geometry one, Geometry other) {
        return OverlayNGRobust.overlay(one, other, OverlayNG.DIFFERENCE);
    }

    /** What is drawn to starboard, and its mirror to port. */
    Geometry bothSides(List<Geometry> starboard) {
        Geometry all = together(starboard);
        return together(List.of(all, toPort(all)));
    }

    List<PlanRegion> regions(Geometry geometry) {
        List<PlanRegion> regions = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon && polygon.getArea() > CRUMB) {
                List<Ring> holes = new ArrayList<>();
                for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                    holes.add(ring(polygon.getInteriorRingN(hole)));
                }
                regions.add(new PlanRegion(ring(polygon.getExteriorRing()), holes));
            }
        }
        return regions;
    }

    private static Ring ring(LinearRing ring) {
        List<Vector2D> points = new ArrayList<>();
        Coordinate[] coordinates = ring.getCoordinates();
        for (int i = 0; i + 1 < coordinates.length; i++) {
            points.add(Vector2D.of(coordinates[i].x, coordinates[i].y));
        }
        return new Ring(points);
    }
}
