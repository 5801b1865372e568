package org.garboard.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class InkTest {

    private static final List<Point> SQUARE = List.of(new Point(0, 0), new Point(10, 0), new Point(10, 10), new Point(0, 10));

    private static boolean crosses(double x1, double y1, double x2, double y2) {
        return Ink.meets(SQUARE, List.of(new Point(x1, y1), new Point(x2, y2)));
    }

    @Test
    void exact_strokeAcrossASquare() {
        assertTrue(crosses(-5, 5, 15, 5));
        assertTrue(crosses(2, 2, 3, 3), "inside");
        assertTrue(crosses(-1, 8, 3, 12), "over a corner");
        assertFalse(crosses(-3, 8, 3, 14), "past a corner, though their boxes overlap");
        assertFalse(crosses(0, -5, 0, 15), "along an edge");
        assertFalse(crosses(12, 0, 12, 10));
    }

    /** Chords of a circle of radius 10: each 10 · 2 sin(2.5°) long, together nearly its way round. */
    @Test
    void exact_curvesAsChords() {
        List<List<Point>> circle = Ink.of(new Circle(Layer.HULL, new Point(0, 0), 10));
        double round = circle.stream().mapToDouble(chord -> chord.get(0).distanceTo(chord.get(1))).sum();
        assertEquals(72 * 20 * Math.sin(Math.toRadians(2.5)), round, 1e-9);
        List<List<Point>> half = Ink.of(new Polyline(Layer.HULL, Polyline.Run.OPEN,
                List.of(new Vertex(new Point(-10, 0), -1), Vertex.corner(new Point(10, 0)))));
        assertEquals(36, half.size());
        assertTrue(half.stream().allMatch(chord -> chord.get(0).y() > -1e-9), "a bulge to the right of a run to the right is above it");
    }

    @Test
    void exact_hatchesLeaveNone() {
        assertEquals(List.of(), Ink.of(new Hatch(Layer.HATCH, List.of(SQUARE), 45, 2)));
    }
}
