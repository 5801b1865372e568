package org.garboard.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class RingTest {

    /** A triangle of base 3 and height 4, far from the origin. */
    @Test
    void exact_area() {
        Ring ring = new Ring(List.of(Vector2D.of(1000, 1000), Vector2D.of(1003, 1000), Vector2D.of(1001, 1004)));
        assertEquals(6, ring.area(), 1e-12);
        assertEquals(-6, new Ring(List.of(ring.points().get(2), ring.points().get(1), ring.points().get(0))).area(), 1e-12);
    }

    @Test
    void exact_pointsOnStraightSidesAreDropped() {
        List<Vector2D> points = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            points.add(Vector2D.of(i, 0));
        }
        for (int i = 0; i < 50; i++) {
            points.add(Vector2D.of(100, i));
        }
        points.add(Vector2D.of(100, 50));
        points.add(Vector2D.of(0, 50));
        Ring few = new Ring(points).simplified(1e-9);
        assertEquals(4, few.points().size());
        assertEquals(5000, few.area(), 1e-9);
    }

    /** A circle of radius 1 keeps chords with at most the tolerance as sagitta, so its area within pi times twice that. */
    @Test
    void law_simplifiedStaysWithinTheTolerance() {
        List<Vector2D> points = new ArrayList<>();
        for (int i = 0; i < 3600; i++) {
            points.add(Vector2D.of(Math.cos(i * Math.PI / 1800), Math.sin(i * Math.PI / 1800)));
        }
        Ring few = new Ring(points).simplified(1e-3);
        assertTrue(few.points().size() < 200, few.points().size() + " points");
        assertEquals(Math.PI, few.area(), 2 * Math.PI * 1e-3);
        for (Vector2D point : points) {
            assertTrue(distance(few, point) <= 1e-3 + 1e-12);
        }
    }

    private static double distance(Ring ring, Vector2D point) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ring.points().size(); i++) {
            Vector2D from = ring.points().get(i);
            Vector2D side = ring.points().get((i + 1) % ring.points().size()).subtract(from);
            double along = Math.max(0, Math.min(1, point.subtract(from).dot(side) / side.normSq()));
            least = Math.min(least, point.distance(from.add(side.multiply(along))));
        }
        return least;
    }

    @Test
    void badInput_twoPoints() {
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class,
            () -> new Ring(List.of(Vector2D.of(0, 0), Vector2D.of(1, 0))));
        assertEquals("a ring of 2 point(s); three are the least", refusal.getMessage());
    }
}
