package org.garboard.cutout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.Transducer;
import org.garboard.hull.Hull;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.Walls;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Pockets in a V bottom of plane sides against closed forms. */
class KeelPocketCutTest {
    private static final double TAN = Math.tan(Math.toRadians(20));
    private static final double L = 0.300;
    private static final double W = 0.160;
    private static final double H = 0.060;

    private static TableLine row(LineKind kind, String name, Measure measure, DoubleUnaryOperator value) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i <= 6; i++) {
            entries.add(new Entry(i, value.applyAsDouble(i)));
        }
        return new TableLine(kind, name, 0, measure, entries);
    }

    /** Plane-sided V, keel rising aft at a slope; sides square to the sloping keel have the tangent given. */
    private static Hull wedge(double slope) {
        return hull(x -> slope * x, TAN / Math.cos(Math.atan(slope)));
    }

    /** Plane-sided V on any keel line, sides of one plumb tangent. */
    private static Hull hull(DoubleUnaryOperator keel, double plumb) {
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i <= 6; i++) {
            stations.add(new Station(String.valueOf(i), i));
        }
        return Hull.through(new OffsetTable("wedge", SkinSurface.OUTSIDE_OF_SKIN, 1e-6, stations, List.of(
                row(LineKind.KEEL, "Keel", Measure.HEIGHT, keel),
                row(LineKind.CHINE, "Chine", Measure.HEIGHT, x -> keel.applyAsDouble(x) + plumb),
                row(LineKind.CHINE, "Chine", Measure.HALF_BREADTH, x -> 1),
                row(LineKind.SHEER, "Sheer", Measure.HEIGHT, x -> 1.5),
                row(LineKind.SHEER, "Sheer", Measure.HALF_BREADTH, x -> 1.2))));
    }

    private static Transducer body(double cornerRadius) {
        return new Transducer("test body", L, W, H, cornerRadius, 0.02, Angle.ofDegrees(0));
    }

    /** Distance of the walls' end outside the floor's outline: draft and both radii of the usual walls. */
    private static final double RUN = Walls.USUAL.run(H);

    private static PocketOutcome cut(double slope, double cornerRadius, double depth, double ramp) {
        OptionalDouble wanted = depth > 0 ? OptionalDouble.of(depth) : OptionalDouble.empty();
        return KeelPocketCut.cut(wedge(slope), body(cornerRadius), new PocketWish(wanted, 0, ramp), 3);
    }

    private static Pocket built(double slope, double cornerRadius, double depth, double ramp) {
        return assertInstanceOf(PocketOutcome.Built.class, cut(slope, cornerRadius, depth, ramp)).pocket();
    }

    /**
     * The curve in which the walls meet the two planes: up = |across| tan beta, all round. Amidships the edge turns
     * through a wall of 85 deg and a skin of 20 deg: tangent points lie r tan(105 deg / 2) from the sharp corner, in
     * which the wall, from r' tan(85 deg / 2) outside the floor at the floor's height, meets the plane.
     */
    @Test
    void exact_openingLiesOnThePlanesAndOutsideTheFloor() {
        Pocket pocket = built(0, 0.03, 0.1, 0);
        double reach = 0;
        for (int i = 0; i < pocket.opening().size(); i++) {
            Vector3D point = pocket.opening().get(i);
            assertEquals(Math.abs(point.getY()) * TAN, point.getZ(), 1e-6);
            reach = Math.max(reach, point.getY());
        }
        double start = W / 2 + 0.010 * Math.tan(Math.toRadians(85) / 2);
        double drop = Math.tan(Math.toRadians(5));
        double corner = (start + 0.1 * drop) / (1 + TAN * drop);
        assertEquals(corner + 0.005 * Math.tan(Math.toRadians(105) / 2) * Math.cos(Math.toRadians(20)), reach, 1e-6);
    }

    /**
     * A keel that falls away by c s^2 from the middle: a ramp from a face f deep begins where the walls end, at s0, and
     * runs out over R times its height there, f + c s0^2, beyond the f R of a straight keel.
     */
    @Test
    void exact_rampsRunOnWhereTheKeelFallsAway() {
        double c = 0.001;
        double ratio = 40;
        double face = 0.1 - H;
        Hull hull = hull(x -> -c * (x - 3) * (x - 3), TAN);
        PocketOutcome outcome = KeelPocketCut.cut(hull, body(0), new PocketWish(OptionalDouble.of(0.1), 0, ratio), 3);
        Pocket pocket = assertInstanceOf(PocketOutcome.Built.class, outcome).pocket();
        double from = L / 2 + RUN;
        double exact = ratio * (face + c * from * from) + RUN;
        assertEquals(exact, pocket.aftRamp(), 1e-5);
        assertEquals(exact, pocket.foreRamp(), 1e-5);
    }

    /** A V unrolls without stretch: across lengths grow by 1 / cos beta, along lengths stay. */
    @Test
    void exact_developmentOfAV() {
        Pocket pocket = built(0.03, 0.03, 0.1, 8);
        assertEquals(0, pocket.developmentStretch(), 1e-6);
        double widest = pocket.developedOpening().stream().mapToDouble(FlatPoint::v).max().orElseThrow();
        double across = pocket.opening().stream().mapToDouble(Vector3D::getY).max().orElseThrow();
        assertEquals(across * Math.sqrt(1 + TAN * TAN), widest, 1e-6);
        FlatPoint first = pocket.developedOpening().get(0);
        assertEquals(-(L / 2 + pocket.foreRamp()), first.u(), 1e-9);
        assertEquals(0, first.v(), 1e-12);
    }

    /** By default the face lies level with the skin at its edges, rounded up to a millimetre. */
    @Test
    void exact_defaultDepthPutsTheFaceFlushAtItsEdges() {
        Pocket pocket = built(0, 0, 0, 8);
        double least = W / 2 * TAN + H;
        assertEquals(Math.ceil(least * 1000) / 1000, pocket.depth(), 1e-12);
        assertTrue(pocket.faceDepth() >= W / 2 * TAN);
    }

    @Test
    void law_openingIsSymmetricalPortToStarboard() {
        Pocket pocket = built(0.03, 0.02, 0.1, 6);
        int n = pocket.opening().size();
        for (int i = 1; i < n; i++) {
            Vector3D one = pocket.opening().get(i);
            Vector3D other = pocket.opening().stream()
                    .min(java.util.Comparator.comparingDouble(p -> p.distance(Vector3D.of(one.getX(), -one.getY(), one.getZ()))))
                    .orElseThrow();
            assertEquals(0, other.distance(Vector3D.of(one.getX(), -one.getY(), one.getZ())), 1e-12);
        }
        assertTrue(pocket.opening().get(5).getY() > 0, "starboard first");
    }

    /** Long section: floor at the depth square to the floor, between the ends of its flat; on the skin at both ends. */
    @Test
    void exact_longSectionShowsTheDepth() {
        Pocket pocket = built(0, 0, 0.1, 8);
        PocketSection section = pocket.sections().get(0);
        assertEquals("LONG", section.name());
        List<Vector3D> floor = section.cut().stream().filter(place -> Math.abs(place.getZ() - 0.1) < 1e-9).toList();
        assertEquals(3 - L / 2, floor.get(0).getX(), 1e-6);
        assertEquals(3 + L / 2, floor.get(floor.size() - 1).getX(), 1e-6);
        assertEquals(0, section.cut().get(0).getZ(), 1e-6);
        assertEquals(3 - L / 2 - pocket.foreRamp(), section.cut().get(0).getX(), 1e-6);
        assertEquals(3 + L / 2 + pocket.aftRamp(), section.cut().get(section.cut().size() - 1).getX(), 1e-6);
        PocketSection amidships = pocket.sections().get(2);
        Vector3D foot = amidships.cut().get(0);
        assertTrue(foot.getY() < -W / 2, foot.toString());
        assertEquals(-foot.getY() * TAN, foot.getZ(), 1e-6);
        assertEquals(0.1, amidships.cut().stream().mapToDouble(Vector3D::getZ).max().orElseThrow(), 1e-9);
    }

    @Test
    void badInput_faceProud() {
        PocketOutcome.Refused refused = assertInstanceOf(PocketOutcome.Refused.class, cut(0, 0, 0.08, 8));
        assertEquals("at a depth of 80.0 mm the face stands 9.1 mm proud of the skin at its outer edges",
                refused.reason());
        assertEquals("a depth of 90.0 mm or more", refused.remedy());
        assertInstanceOf(PocketOutcome.Built.class, cut(0, 0, 0.09, 8));
    }

    @Test
    void badInput_rampsOffTheTable() {
        PocketOutcome.Refused refused = assertInstanceOf(PocketOutcome.Refused.class,
                KeelPocketCut.cut(wedge(0), body(0), new PocketWish(OptionalDouble.of(0.1), 0, 8), 5.7));
        assertEquals("ramps of 1:8.0 from a face 40.0 mm deep run off the ends of the table", refused.reason());
        assertEquals("ramps of 1:3.2 or steeper, or a site farther from the ends", refused.remedy());
        assertInstanceOf(PocketOutcome.Built.class,
                KeelPocketCut.cut(wedge(0), body(0), new PocketWish(OptionalDouble.of(0.1), 0, 3.2), 5.7));
    }

    @Test
    void badInput_pocketOffTheTable() {
        PocketOutcome.Refused refused = assertInstanceOf(PocketOutcome.Refused.class,
                KeelPocketCut.cut(wedge(0), body(0), new PocketWish(OptionalDouble.empty(), 0, 0), 5.9));
        assertEquals("a pocket 300.0 mm long with its middle at x = 5900.0 mm runs beyond the ends of the table",
                refused.reason());
        assertEquals("x from 150.0 mm to 5850.0 mm", refused.remedy());
    }
}
