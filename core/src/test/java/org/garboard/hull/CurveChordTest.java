package org.garboard.hull;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Curves keep their promise between their points, on a bottom with its bow: chords within 0.01 mm of the skin. */
class CurveChordTest {
    private static final double CHORD = 1e-5;

    private final Hull hull = Hull.faired(Bottoms.all().get(3).table(0.0254 / 8, 0.125));

    @Test
    void law_buttocksWithinTheChord() {
        int checked = 0;
        for (double y : new double[] {0.1, 0.4, 0.8, 1.2, 1.4}) {
            for (Curve curve : new HullCurves(hull).buttock(y, CHORD)) {
                checked += checkHeights(curve.points());
            }
        }
        assertTrue(checked > 1000, "places " + checked);
    }

    /** Height over the chord, turned square to it, where the bottom is the lowest skin; how many were compared. */
    private int checkHeights(List<Vector3D> points) {
        int compared = 0;
        for (int i = 1; i < points.size(); i++) {
            Vector3D from = points.get(i - 1);
            Vector3D to = points.get(i);
            for (double part : new double[] {0.25, 0.5, 0.75}) {
                Vector3D on = from.lerp(to, part);
                double off = hull.height(on.getX(), on.getY()) - on.getZ();
                if (Math.abs(off) < 0.01) {
                    double slope = (to.getZ() - from.getZ()) / (to.getX() - from.getX());
                    assertEquals(0, off / Math.hypot(1, slope), 1.05 * CHORD, "at " + on);
                    compared++;
                }
            }
        }
        return compared;
    }

    @Test
    void law_waterlinesWithinTheChord() {
        int checked = 0;
        for (double z : new double[] {0.1, 0.3, 0.5, 0.9, 1.4}) {
            for (Curve curve : new HullCurves(hull).waterline(z, CHORD)) {
                List<Vector3D> points = curve.points();
                for (int i = 1; i < points.size(); i++) {
                    Vector3D on = points.get(i - 1).lerp(points.get(i), 0.5);
                    double slope = (points.get(i).getY() - points.get(i - 1).getY())
                            / (points.get(i).getX() - points.get(i - 1).getX());
                    double skin = hull.halfBreadth(on.getX(), z).orElseThrow();
                    assertEquals(0, (skin - on.getY()) / Math.hypot(1, slope), 1.05 * CHORD, "at " + on);
                    checked++;
                }
            }
        }
        assertTrue(checked > 200, "segments " + checked);
    }

    /** A section's points lie on the skin, and so do the middles of its chords. */
    @Test
    void law_sectionsWithinTheChord() {
        for (double x : new double[] {0.7, 2, 5, 9}) {
            for (Curve curve : new HullCurves(hull).section(x, CHORD)) {
                for (int i = 1; i < curve.points().size(); i++) {
                    Vector3D from = curve.points().get(i - 1);
                    Vector3D to = curve.points().get(i);
                    Vector3D on = from.lerp(to, 0.5);
                    double slope = (to.getZ() - from.getZ()) / (to.getY() - from.getY());
                    assertEquals(0, (hull.height(x, on.getY()) - on.getZ()) / Math.hypot(1, slope), 1.05 * CHORD);
                }
            }
        }
    }
}
