package org.garboard.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.garboard.solid.Draft.Looks;
import org.garboard.solid.Draft.Rim;
import org.junit.jupiter.api.Test;

/** Bodies of closed form, and meshes that are none. */
class SolidTest {
    private static final double[] CORNERS = {0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1};
    private static final int[] FACES = {0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3};

    private static Solid plate(Loop outer, List<Loop> holes, double step, Height lower, Height upper) {
        Draft draft = new Draft(Placement.unmoved());
        Fill fill = Fill.of(outer, holes, step);
        List<Rim> below = rims(draft, outer, holes, lower);
        List<Rim> above = rims(draft, outer, holes, upper);
        draft.face(Looks.DOWN, fill, lower, below);
        draft.face(Looks.UP, fill, upper, above);
        draft.wallOutside(below.get(0), above.get(0));
        for (int i = 1; i < below.size(); i++) {
            draft.wallInside(below.get(i), above.get(i));
        }
        return draft.solid();
    }

    private static List<Rim> rims(Draft draft, Loop outer, List<Loop> holes, Height height) {
        return Stream.concat(Stream.of(outer), holes.stream())
            .map(loop -> draft.rim(loop, height)).toList();
    }

    @Test
    void exact_tetrahedron() {
        Solid solid = Solid.of(CORNERS, FACES);
        assertEquals(1 / 6.0, solid.volume(), 1e-15);
        assertEquals(1.5 + Math.sqrt(3) / 2, solid.area(), 1e-15);
        assertEquals(2, solid.eulerCharacteristic());
        assertEquals(0, solid.holes());
    }

    /** A box with two square holes: volume, faces and walls; Euler characteristic 2 - 2 x 2. */
    @Test
    void exact_boxWithTwoHoles() {
        Loop outer = Loop.of(0, 0, 1, 0, 1, 0.5, 0, 0.5).parted(0.05);
        List<Loop> holes = List.of(Loop.of(0.1, 0.1, 0.3, 0.1, 0.3, 0.3, 0.1, 0.3).parted(0.05),
            Loop.of(0.6, 0.1, 0.9, 0.1, 0.9, 0.2, 0.6, 0.2));
        Solid solid = plate(outer, holes, 0.06, Height.level(-0.1), (u, v) -> 0.2 * u + 0.1 * v);
        double plan = 0.5 - 0.04 - 0.03;
        double moments = 0.2 * (0.5 * 0.5 - 0.04 * 0.2 - 0.03 * 0.75) + 0.1 * (0.5 * 0.25 - 0.04 * 0.2 - 0.03 * 0.15);
        assertEquals(0.1 * plan + moments, solid.volume(), 1e-12);
        assertEquals(-2, solid.eulerCharacteristic());
        assertEquals(2, solid.holes());
    }

    /** A cap of a ball, pi h^2 (3 R - h) / 3, on a polygon of the circle's own area: nearer as the triangles grow finer. */
    @Test
    void exact_capOfABallInTheLimit() {
        double ball = 0.3;
        double r = 0.1;
        double height = ball - Math.sqrt(ball * ball - r * r);
        double exact = Math.PI * height * height * (3 * ball - height) / 3 + 0.01 * Math.PI * r * r;
        Height cap = (u, v) -> Math.sqrt(ball * ball - u * u - v * v) - ball + height + 0.01;
        double[] steps = {0.02, 0.01, 0.005};
        double[] miss = new double[3];
        for (int i = 0; i < 3; i++) {
            Loop circle = Loop.circle(0, 0, r, 0.05 * steps[i] * steps[i] / r);
            miss[i] = exact - plate(circle, List.of(), steps[i], Height.level(0), cap).volume();
        }
        assertEquals(0, miss[2] / exact, 1e-3);
        assertEquals(0.25, miss[1] / miss[0], 0.1);
        assertEquals(0.25, miss[2] / miss[1], 0.1);
    }

    @Test
    void exact_circleHasItsOwnArea() {
        assertEquals(Math.PI * 0.02 * 0.02, Loop.circle(1, 2, 0.02, 1e-4).area(), 1e-15);
    }

    @Test
    void brokenMeshesCannotBeMade() {
        refused(new double[] {0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1, 1, 1, 1}, new int[] {0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 4}, "the mesh is open");
        refused(CORNERS, new int[] {0, 2, 1, 0, 1, 3, 1, 2, 3, 0, 2, 3}, "bounds two triangles on the same hand");
        refused(CORNERS, new int[] {0, 1, 2, 0, 3, 1, 1, 3, 2, 2, 3, 0}, "the mesh is inside out");
        refused(new double[] {0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1, 5, 5, 5}, FACES, "vertex 4 belongs to no triangle");
        refused(new double[] {0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, Double.NaN}, FACES, "NaN");
        refused(new double[] {20, 0, 0, 21, 0, 0, 20, 1, 0, 20, 0, 1e-50}, FACES, "fall together");
    }

    /** Two tetrahedra that touch in a vertex, and two that do not touch. */
    @Test
    void severalPiecesAreNone() {
        double[] two = new double[24];
        System.arraycopy(CORNERS, 0, two, 0, 12);
        for (int i = 0; i < 12; i++) {
            two[12 + i] = CORNERS[i] + 3;
        }
        int[] faces = IntStream.concat(Arrays.stream(FACES),
            Arrays.stream(FACES).map(i -> i + 4)).toArray();
        refused(two, faces, "in several pieces");
        double[] touching = {0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1, 2, 0, 0, 2, 1, 0, 2, 0, 1};
        int[] both = {0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3, 1, 5, 4, 1, 4, 6, 4, 5, 6, 5, 1, 6};
        refused(touching, both, "joins parts of the mesh");
    }

    private static void refused(double[] places, int[] corners, String words) {
        Supplier<Solid> make = () -> Solid.of(places, corners);
        String message = assertThrows(IllegalArgumentException.class, make::get).getMessage();
        assertTrue(message.contains(words), message);
    }
}
