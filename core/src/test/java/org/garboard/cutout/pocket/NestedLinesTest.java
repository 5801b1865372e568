package org.garboard.cutout.pocket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.Transducer;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.LaidLine;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketOutcome;
import org.garboard.hull.Hull;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.Floor;
import org.garboard.mount.pocket.PocketLayup;
import org.garboard.mount.pocket.PocketLayup.Layer;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.siting.Boats;
import org.garboard.solid.Loop;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Hull cut and end of taper stand off the opening by their lengths along the skin, not in plan. */
class NestedLinesTest {
    private static final double LAMINATE = 0.009;

    private static PocketOutcome cut(Hull hull, double scarf, double lowerDeg, double x) {
        Transducer body = new Transducer("test body", 0.3, 0.16, 0.06, 0, 0.02, Angle.ofDegrees(0));
        PocketMake make = PocketMake.USUAL.with(new PocketLayup(0, List.of(new Layer("glass", LAMINATE)), scarf, 0.003))
            .with(new Floor(Floor.Lies.LEVEL_ATHWART, Angle.ofDegrees(lowerDeg)));
        return KeelPocketCut.cut(hull, body, new PocketWish(OptionalDouble.empty(), 0.0025, 8, make), BoatTold.NOTHING, x, 0);
    }

    private static Pocket built(Hull hull, double scarf, double lowerDeg) {
        PocketOutcome outcome = cut(hull, scarf, lowerDeg, 3);
        return assertInstanceOf(PocketOutcome.Built.class, outcome, outcome.toString()).pocket();
    }

    /** All points of a line so far outside the opening, both unrolled by the bottom's closed form. */
    private static void standsOff(Pocket pocket, LaidLine line, double distance, Function<Vector3D, double[]> unrolled, double within) {
        Loop opening = loop(pocket.opening(), unrolled);
        for (Vector3D place : line.onSkin()) {
            double[] at = unrolled.apply(place);
            assertEquals(distance, opening.distance(at[0], at[1]), within, place.toString());
            assertTrue(!opening.holds(at[0], at[1]));
        }
    }

    private static Loop loop(List<Vector3D> places, Function<Vector3D, double[]> unrolled) {
        return Loop.of(places.stream().map(unrolled).flatMapToDouble(Arrays::stream).toArray());
    }

    private static void nested(Hull hull, double lowerDeg, Function<Vector3D, double[]> unrolled) {
        Pocket pocket = built(hull, 12, lowerDeg);
        assertEquals(0, pocket.developmentStretch(), 1e-6);
        standsOff(pocket, pocket.details().hullCut(), LAMINATE + 0.003, unrolled, 3e-5);
        standsOff(pocket, pocket.details().taperEnd(), LAMINATE + 0.003 + 12 * LAMINATE, unrolled, 3e-5);
        List<FlatPoint> flat = pocket.developedOpening();
        for (int i = 0; i < flat.size(); i += 7) {
            double[] one = unrolled.apply(pocket.opening().get(i));
            for (int k = 0; k < i; k += 5) {
                double[] other = unrolled.apply(pocket.opening().get(k));
                assertEquals(Math.hypot(one[0] - other[0], one[1] - other[1]),
                    Math.hypot(flat.get(i).u() - flat.get(k).u(), flat.get(i).v() - flat.get(k).v()), 1e-6);
            }
        }
    }

    /** A V folds flat over its keel; so too where the floor does not run along the keel. */
    @Test
    void exact_onAV() {
        double cos = Math.cos(Math.toRadians(20));
        for (double lower : new double[] {0, 1.5}) {
            nested(Boats.prismaticV(20), lower, place -> new double[] {place.getX(), place.getY() / cos});
        }
    }

    @Test
    void exact_onACylinder() {
        double r = 3;
        nested(Boats.cylinder(r), 0, place -> new double[] {place.getX(), r * Math.asin(place.getY() / r)});
    }

    /** To one side, square to the skin. */
    @Test
    void exact_offTheCentreline() {
        Transducer body = new Transducer("test body", 0.3, 0.16, 0.06, 0, 0.02, Angle.ofDegrees(0));
        PocketMake make = PocketMake.USUAL.with(new PocketLayup(0, List.of(new Layer("glass", LAMINATE)), 12, 0.003))
            .with(new Floor(Floor.Lies.SQUARE_TO_SKIN, Angle.ofDegrees(0)));
        PocketOutcome outcome = KeelPocketCut.cut(Boats.prismaticV(20), body, new PocketWish(OptionalDouble.of(0.07), 0.0025, 8, make), BoatTold.NOTHING, 3, -0.5);
        Pocket pocket = assertInstanceOf(PocketOutcome.Built.class, outcome, outcome.toString()).pocket();
        double cos = Math.cos(Math.toRadians(20));
        standsOff(pocket, pocket.details().taperEnd(), LAMINATE + 0.003 + 12 * LAMINATE, place -> new double[] {place.getX(), place.getY() / cos}, 3e-5);
    }

    /** Over a knuckle the lines fold with the skin. */
    @Test
    void exact_overAKnuckle() {
        Hull hull = Boats.brokenV(8, 20);
        double inner = Math.cos(Math.toRadians(8));
        double outer = Math.cos(Math.toRadians(20));
        Function<Vector3D, double[]> unrolled = place -> {
            double y = Math.abs(place.getY());
            return new double[] {place.getX(), Math.signum(place.getY()) * (y < 0.5 ? y / inner : 0.5 / inner + (y - 0.5) / outer)};
        };
        Pocket pocket = built(hull, 50, 1);
        assertTrue(pocket.details().taperEnd().onSkin().stream().anyMatch(place -> place.getY() > 0.55));
        standsOff(pocket, pocket.details().taperEnd(), LAMINATE + 0.003 + 50 * LAMINATE, unrolled, 3e-5);
    }

    /** No taper goes round the upright side of a box keel. */
    @Test
    void law_aBoxKeelsSideEndsIt() {
        PocketOutcome.Refused refused = assertInstanceOf(PocketOutcome.Refused.class, cut(Boats.boxKeel(15), 30, 0, 3));
        double works = Double.parseDouble(refused.remedy().split("1:")[1].split(" ")[0]);
        Pocket pocket = assertInstanceOf(PocketOutcome.Built.class, cut(Boats.boxKeel(15), works, 0, 3)).pocket();
        assertTrue(pocket.details().taperEnd().onSkin().stream().allMatch(place -> Math.abs(place.getY()) < 0.15));
    }

    /** What the refusal names is built, and a tenth more is not. */
    @Test
    void law_theScarfThatIsNamedWorks() {
        Hull hull = Boats.prismaticV(20);
        PocketOutcome outcome = cut(hull, 90, 0, 0.8);
        PocketOutcome.Refused refused = assertInstanceOf(PocketOutcome.Refused.class, outcome);
        assertTrue(refused.reason().startsWith("the hull would be ground to a taper of 1:90.0, 822.0 mm outside the opening, and there the bottom ends"), refused.reason());
        double works = Double.parseDouble(refused.remedy().split("1:")[1].split(" ")[0]);
        assertInstanceOf(PocketOutcome.Built.class, cut(hull, works, 0, 0.8));
        assertInstanceOf(PocketOutcome.Refused.class, cut(hull, works + 0.2, 0, 0.8));
    }

    /** On a bottom that bends both ways the sheet is told by how much lengths are off. */
    @Test
    void law_aWarpedBottomIsStretched() {
        double stretch = built(Boats.warpedV(28, 16), 12, 0).developmentStretch();
        assertTrue(stretch > 1e-6 && stretch < 2e-3, "stretch " + stretch);
    }
}
