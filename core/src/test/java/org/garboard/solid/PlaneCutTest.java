package org.garboard.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class PlaneCutTest {
    private static final double[] CORNERS = {0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1};
    private static final int[] FACES = {0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3};

    private static double round(List<Vector3D> loop) {
        double length = 0;
        for (int i = 0; i < loop.size(); i++) {
            length += loop.get(i).distance(loop.get((i + 1) % loop.size()));
        }
        return length;
    }

    /** A corner of a cube cut off: at a height z the triangle's legs are 1 - z. */
    @Test
    void exact_triangleOfATetrahedron() {
        Solid solid = Solid.of(CORNERS, FACES);
        for (double z : new double[] {0.25, 0.5, 0.9}) {
            List<List<Vector3D>> loops = PlaneCut.of(solid, Vector3D.of(0, 0, z), Vector3D.Unit.PLUS_Z);
            assertEquals(1, loops.size());
            assertEquals(3, loops.get(0).size());
            assertEquals((1 - z) * (2 + Math.sqrt(2)), round(loops.get(0)), 1e-9);
        }
    }

    /** Through three of its corners the plane is moved aside by a ten-thousandth of a millimetre. */
    @Test
    void exact_planeThroughCorners() {
        List<List<Vector3D>> loops = PlaneCut.of(Solid.of(CORNERS, FACES), Vector3D.ZERO, Vector3D.Unit.PLUS_Z);
        assertEquals(2 + Math.sqrt(2), round(loops.get(0)), 1e-6);
    }

    @Test
    void exact_planeThatMisses() {
        assertEquals(List.of(), PlaneCut.of(Solid.of(CORNERS, FACES), Vector3D.of(0, 0, 2), Vector3D.Unit.PLUS_Z));
    }

    /** A plate with a hole, cut level: two loops of known length; cut upright through the hole: two rectangles. */
    @Test
    void exact_plateWithAHole() {
        Draft draft = new Draft(Placement.unmoved());
        Loop outer = Loop.circle(0, 0, 0.5, 1e-5);
        Loop hole = Loop.circle(0, 0, 0.2, 1e-5);
        Fill fill = Fill.of(outer, List.of(hole), 0.1);
        List<Draft.Rim> below = List.of(draft.rim(outer, Height.level(0)), draft.rim(hole, Height.level(0)));
        List<Draft.Rim> above = List.of(draft.rim(outer, Height.level(0.1)), draft.rim(hole, Height.level(0.1)));
        draft.face(Draft.Looks.DOWN, fill, Height.level(0), below);
        draft.face(Draft.Looks.UP, fill, Height.level(0.1), above);
        draft.wallOutside(below.get(0), above.get(0));
        draft.wallInside(below.get(1), above.get(1));
        Solid plate = draft.solid();
        List<Double> level = PlaneCut.of(plate, Vector3D.of(0, 0, 0.05), Vector3D.Unit.PLUS_Z).stream().map(PlaneCutTest::round).sorted().toList();
        assertEquals(2, level.size());
        assertEquals(2 * Math.PI * 0.2, level.get(0), 1e-3);
        assertEquals(2 * Math.PI * 0.5, level.get(1), 1e-3);
        List<List<Vector3D>> upright = PlaneCut.of(plate, Vector3D.of(0, 0.001, 0), Vector3D.Unit.PLUS_Y);
        assertEquals(2, upright.size());
        upright.forEach(loop -> assertEquals(2 * (0.1 + 0.3), round(loop), 1e-3));
    }
}
