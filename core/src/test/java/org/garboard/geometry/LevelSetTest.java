package org.garboard.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Regions of fields whose zero lines are known. */
class LevelSetTest {
    private static final double STEP = 0.01;

    private static LevelSet of(int along, int across, DoubleBinaryOperator field) {
        double[] values = new double[along * across];
        for (int i = 0; i < along; i++) {
            for (int j = 0; j < across; j++) {
                values[i * across + j] = field.applyAsDouble(i * STEP, j * STEP);
            }
        }
        return new LevelSet(values, across, STEP);
    }

    private static double area(LevelSet level, int part) {
        return level.rings(part).stream().mapToDouble(Ring::area).sum();
    }

    /** Sides cross the cells off their nodes; each corner may lose a triangle inside its cell. */
    @Test
    void exact_rectangle() {
        LevelSet level = of(120, 80, (x, y) -> Math.max(Math.abs(x - 0.6) - 0.3033, Math.abs(y - 0.4) - 0.2077));
        assertEquals(1, level.parts());
        assertEquals(1, level.rings(0).size());
        List<Vector2D> points = level.rings(0).get(0).points();
        assertEquals(0.6 - 0.3033, points.stream().mapToDouble(Vector2D::getX).min().orElseThrow(), 1e-12);
        assertEquals(0.6 + 0.3033, points.stream().mapToDouble(Vector2D::getX).max().orElseThrow(), 1e-12);
        assertEquals(0.4 - 0.2077, points.stream().mapToDouble(Vector2D::getY).min().orElseThrow(), 1e-12);
        assertEquals(0.4 + 0.2077, points.stream().mapToDouble(Vector2D::getY).max().orElseThrow(), 1e-12);
        double lost = 4 * 0.3033 * 0.2077 - area(level, 0);
        assertTrue(lost >= 0 && lost <= 4 * STEP * STEP / 2, "lost " + lost);
    }

    /** Chords lose pi h2 / 3 at most, straight interpolation of the distance pi h2 / 4. */
    @Test
    void exact_circleWithAHole() {
        LevelSet level = of(120, 120, (x, y) -> {
            double r = Math.hypot(x - 0.6, y - 0.6);
            return Math.max(r - 0.5, 0.2 - r);
        });
        assertEquals(1, level.parts());
        assertEquals(2, level.rings(0).size());
        assertEquals(Math.PI * 0.25, level.rings(0).get(0).area(), Math.PI * STEP * STEP);
        assertEquals(-Math.PI * 0.04, level.rings(0).get(1).area(), Math.PI * STEP * STEP);
    }

    /** JTS as second opinion: the rings form a valid polygon of the same area. */
    @Test
    void exact_areaAndValidityAgreeWithJts() {
        LevelSet level = of(150, 130, (x, y) -> Math.sin(9 * x + 0.2) * Math.cos(7 * y) + 0.3 * Math.sin(31 * x * y));
        GeometryFactory factory = new GeometryFactory();
        assertTrue(level.parts() > 3);
        for (int part = 0; part < level.parts(); part++) {
            List<Ring> rings = level.rings(part);
            LinearRing[] holes = rings.stream().skip(1).map(ring -> jts(factory, ring)).toArray(LinearRing[]::new);
            Polygon polygon = factory.createPolygon(jts(factory, rings.get(0)), holes);
            assertTrue(polygon.isValid(), "part " + part);
            assertEquals(polygon.getArea(), area(level, part), 1e-12);
        }
    }

    private static LinearRing jts(GeometryFactory factory, Ring ring) {
        List<Coordinate> coordinates = new ArrayList<>();
        ring.points().forEach(point -> coordinates.add(new Coordinate(point.getX(), point.getY())));
        coordinates.add(coordinates.get(0));
        return factory.createLinearRing(coordinates.toArray(Coordinate[]::new));
    }

    /** Every node lies inside a ring of its own part, or in none when its value is above zero. */
    @Test
    void law_partsHoldTheirNodes() {
        DoubleBinaryOperator field = (x, y) -> Math.sin(9 * x) * Math.cos(7 * y) + 0.1;
        LevelSet level = of(150, 130, field);
        double[] nodes = new double[level.parts()];
        for (int i = 0; i < 150; i++) {
            for (int j = 0; j < 130; j++) {
                int part = level.part(i * 130 + j);
                assertEquals(field.applyAsDouble(i * STEP, j * STEP) <= 0, part >= 0);
                if (part >= 0) {
                    nodes[part] += STEP * STEP;
                }
            }
        }
        for (int part = 0; part < nodes.length; part++) {
            double rim = level.rings(part).get(0).points().size() * STEP * STEP;
            assertEquals(nodes[part], area(level, part), rim);
        }
    }

    @Test
    void exact_partsThatTouchAtACornerStayApart() {
        LevelSet level = new LevelSet(new double[] {
            1, 1, 1, 1,
            1, -1, 1, 1,
            1, 1, -1, 1,
            1, 1, 1, 1}, 4, 1);
        assertEquals(2, level.parts());
        assertEquals(0.5, level.rings(0).get(0).area(), 1e-15);
        assertEquals(0.5, level.rings(1).get(0).area(), 1e-15);
    }

    @Test
    void exact_theGridsEdgeClosesARegion() {
        LevelSet level = of(11, 21, (x, y) -> -1);
        assertEquals(1, level.parts());
        assertEquals(0.1 * 0.2, area(level, 0), 1e-15);
    }

    @Test
    void exact_aSinglePointBoundsNothing() {
        LevelSet level = new LevelSet(new double[] {1, 1, 1, 1, 0, 1, 1, 1, 1}, 3, 1);
        assertEquals(1, level.parts());
        assertTrue(level.rings(0).isEmpty());
    }
}
