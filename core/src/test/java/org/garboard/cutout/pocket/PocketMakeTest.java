package org.garboard.cutout.pocket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.craft.Sides;
import org.garboard.craft.Transducer;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketOutcome;
import org.garboard.cutout.SelfCrossing;
import org.garboard.hull.Hull;
import org.garboard.inside.Inside;
import org.garboard.inside.InsideDatum;
import org.garboard.inside.LaidInside;
import org.garboard.inside.Room;
import org.garboard.inside.Span;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.Floor;
import org.garboard.mount.pocket.FormerWish;
import org.garboard.mount.pocket.FormerWish.Mold;
import org.garboard.mount.pocket.PocketLayup;
import org.garboard.mount.pocket.PocketLayup.Layer;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.mount.pocket.PocketMake.Into;
import org.garboard.mount.pocket.Walls;
import org.garboard.siting.Boats;
import org.garboard.skin.HullSkin;
import org.garboard.skin.Layup;
import org.garboard.skin.SkinMaterial;
import org.garboard.solid.Solid;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Formers, laminate, the lines that are cut, and what refuses a pocket. */
class PocketMakeTest {
    private static final double L = 0.300;
    private static final double W = 0.160;
    private static final double H = 0.060;
    private static final Hull FLAT = Boats.prismaticV(0);
    private static final Hull VEE = Boats.prismaticV(20);
    private static final PocketMake SHARP = PocketMake.USUAL.with(new Walls(Angle.ofDegrees(5), 0, 0, Optional.empty()));

    private static PocketOutcome cut(Hull hull, PocketMake make, BoatTold boat, double depth, double ratio) {
        Transducer body = new Transducer("test body", L, W, H, 0, 0.02, Angle.ofDegrees(0));
        return KeelPocketCut.cut(hull, body, new PocketWish(OptionalDouble.of(depth), 0, ratio, make), boat, 3, 0);
    }

    private static Pocket built(Hull hull, PocketMake make, double depth, double ratio) {
        PocketOutcome outcome = cut(hull, make, BoatTold.NOTHING, depth, ratio);
        return assertInstanceOf(PocketOutcome.Built.class, outcome, outcome.toString()).pocket();
    }

    private static String refused(Hull hull, PocketMake make, BoatTold boat, double depth) {
        PocketOutcome.Refused refused = assertInstanceOf(PocketOutcome.Refused.class, cut(hull, make, boat, depth, 0));
        return refused.reason() + "; what works: " + refused.remedy();
    }

    private static Solid solid(Pocket pocket, String name) {
        return pocket.solids().stream().filter(part -> part.name().equals(name)).findFirst().orElseThrow().solid();
    }

    /** Larger by its shrinkage, and its two pieces make the whole; no face of theirs crosses another. */
    @Test
    void exact_formersAcrossASplit() {
        FormerWish split = new FormerWish(Mold.SPLIT_ON_CENTRELINE, Angle.ofDegrees(0), 0.002, 0);
        Pocket pocket = built(VEE, PocketMake.USUAL.into(Into.NEW_MOLD, split), 0.1, 8);
        double whole = pocket.volume() * Math.pow(1.002, 3);
        Solid starboard = solid(pocket, "pocket-former-starboard");
        Solid port = solid(pocket, "pocket-former-port");
        assertEquals(whole, starboard.volume() + port.volume(), 1e-9 * whole);
        assertEquals(whole / 2, port.volume(), 1e-3 * whole);
        assertEquals(0, SelfCrossing.count(starboard));
        for (int i = 0; i < starboard.vertices(); i++) {
            assertTrue(starboard.y(i) > -1e-9);
        }
        assertEquals(5, pocket.details().leastDraft().degrees(), 0.01);
    }

    /** A half pulled so far off plumb as its wall leans has no draft left on its own side's wall. */
    @Test
    void exact_aFaceThatLocksIsRefused() {
        PocketMake twelve = PocketMake.USUAL.into(Into.NEW_MOLD, new FormerWish(Mold.SPLIT_ON_CENTRELINE, Angle.ofDegrees(12), 0, 0));
        String said = refused(FLAT, twelve, BoatTold.NOTHING, 0.06);
        assertTrue(said.startsWith("the former locks: its face at x = "), said);
        assertTrue(said.endsWith(" stands at -7.0 deg to the pull, 12.0 deg off plumb, and 3.0 deg is least; what works: "
            + "a draft angle of 15.0 deg, or halves pulled 2.0 deg off plumb at most"), said);
        PocketMake two = PocketMake.USUAL.into(Into.NEW_MOLD, new FormerWish(Mold.SPLIT_ON_CENTRELINE, Angle.ofDegrees(2), 0, 0));
        assertEquals(3, built(FLAT, two, 0.06, 0).details().leastDraft().degrees(), 1e-9);
    }

    /** Beside the keel a pocket that leans with the skin comes off with its own half, pulled as far off plumb as the skin leans. */
    @Test
    void exact_aFormerInOneHalf() {
        Transducer body = new Transducer("test body", L, W, H, 0, 0.02, Angle.ofDegrees(0));
        PocketMake leaning = SHARP.with(new Floor(Floor.Lies.SQUARE_TO_SKIN, Angle.ofDegrees(0)));
        for (int side = -1; side <= 1; side += 2) {
            PocketMake make = leaning.into(Into.NEW_MOLD, new FormerWish(Mold.SPLIT_ON_CENTRELINE, Angle.ofDegrees(20), 0, 0));
            PocketOutcome outcome = KeelPocketCut.cut(VEE, body, new PocketWish(OptionalDouble.empty(), 0, 0, make), BoatTold.NOTHING, 3, side * 0.5);
            Pocket pocket = assertInstanceOf(PocketOutcome.Built.class, outcome, outcome.toString()).pocket();
            assertEquals(5, pocket.details().leastDraft().degrees(), 1e-6);
            assertEquals(pocket.volume(), solid(pocket, "pocket-former").volume(), 1e-12);
            PocketMake plumb = leaning.into(Into.NEW_MOLD, new FormerWish(Mold.ONE_PIECE, Angle.ofDegrees(0), 0, 0));
            PocketOutcome locked = KeelPocketCut.cut(VEE, body, new PocketWish(OptionalDouble.empty(), 0, 0, plumb), BoatTold.NOTHING, 3, side * 0.5);
            assertTrue(assertInstanceOf(PocketOutcome.Refused.class, locked).reason().contains("stands at -15.0 deg to the pull"), locked.toString());
        }
    }

    /** A mold that parts under a pocket beside its middle would need a former in two unlike pieces. */
    @Test
    void badInput_aSplitBesideTheMiddle() {
        Transducer body = new Transducer("test body", L, W, H, 0, 0.02, Angle.ofDegrees(0));
        PocketMake make = SHARP.into(Into.NEW_MOLD, new FormerWish(Mold.SPLIT_ON_CENTRELINE, Angle.ofDegrees(0), 0, 0));
        PocketOutcome.Refused refused = assertInstanceOf(PocketOutcome.Refused.class,
            KeelPocketCut.cut(FLAT, body, new PocketWish(OptionalDouble.of(0.06), 0, 0, make), BoatTold.NOTHING, 3, 0.03));
        assertEquals("the mold parts on the centreline, which runs 30.0 mm beside the pocket's middle", refused.reason());
        assertEquals("a middle on the centreline, one more than 80 mm aside, or a mold in one piece", refused.remedy());
    }

    /** A rim of width b on a flat bottom adds 12 mm of it under everything inside its line. */
    @Test
    void exact_formerWithARim() {
        PocketMake make = SHARP.into(Into.EXISTING_BOAT, new FormerWish(Mold.ONE_PIECE, Angle.ofDegrees(0), 0, 0.05));
        Pocket pocket = built(FLAT, make, 0.06, 0);
        double grown = 0.06 * Math.tan(Math.toRadians(5)) + 0.05;
        double area = L * W + 2 * (L + W) * grown + Math.PI * grown * grown;
        double exact = pocket.volume() + 0.012 * area;
        assertEquals(exact, solid(pocket, "pocket-former").volume(), 1e-3 * exact);
    }

    /** Thin laminate on sharp walls holds its thickness times floor and walls: a frustum with conical corners. */
    @Test
    void exact_thinLaminate() {
        double t = 0.0003;
        PocketMake make = SHARP.with(new PocketLayup(0, List.of(new Layer("mat", t)), 12, 0.003));
        double lean = Math.toRadians(5);
        double faces = L * W + (2 * (L + W) * 0.06 + Math.PI * 0.06 * 0.06 * Math.tan(lean)) / Math.cos(lean);
        assertEquals(t * faces, solid(built(FLAT, make, 0.06, 0), "pocket-layer-1").volume(), 5e-3 * t * faces);
    }

    /** Lines at a distance round a convex outline: A + P d + pi d^2 (Steiner). */
    @Test
    void exact_nestedLines() {
        PocketMake make = SHARP.with(new PocketLayup(0.0005, List.of(new Layer("glass", 0.0095)), 12, 0.003));
        Pocket pocket = built(FLAT, make, 0.06, 0);
        double d = 0.06 * Math.tan(Math.toRadians(5));
        double area = L * W + 2 * (L + W) * d + Math.PI * d * d;
        double round = 2 * (L + W) + 2 * Math.PI * d;
        double out = 0.013;
        assertEquals(area + round * out + Math.PI * out * out, pocket.details().shellCut(), 1e-3 * area);
        double taper = out + 12 * 0.010;
        double widest = pocket.details().taperEnd().flat().stream().mapToDouble(FlatPoint::v).max().orElseThrow();
        assertEquals(W / 2 + d + taper, widest, 1e-4);
        assertEquals(pocket.volume() - L * W * H, pocket.details().volumeLost(), 1e-9);
    }

    @Test
    void badInput_laminateThinnerThanTheBottom() {
        BoatTold boat = new BoatTold(OptionalDouble.empty(), Optional.of(new HullSkin(SkinMaterial.SOLID_GLASS, Optional.of(new Layup.Whole(0.012)),
            List.of(), Optional.empty(), List.of())), Optional.empty());
        assertEquals("the pocket's laminate is 9.0 mm thick, and the bottom beside it 12.0 mm; what works: a laminate of 12 mm or more",
            refused(FLAT, SHARP.with(new PocketLayup(0, List.of(new Layer("glass", 0.009)), 12, 0.003)), boat, 0.06));
    }

    /** On metal and planking nothing but the outline is made. */
    @Test
    void law_metalGetsTheOutlineOnly() {
        BoatTold boat = new BoatTold(OptionalDouble.empty(), Optional.of(new HullSkin(SkinMaterial.ALUMINIUM, Optional.of(new Layup.Whole(0.006)),
            List.of(), Optional.empty(), List.of())), Optional.empty());
        Pocket pocket = assertInstanceOf(PocketOutcome.Built.class, cut(FLAT, SHARP, boat, 0.06, 0)).pocket();
        assertTrue(pocket.details().outlineOnly() && pocket.details().hullCut().isEmpty());
        assertEquals(List.of("pocket", "body-in-pocket"), pocket.solids().stream().map(part -> part.name()).toList());
    }

    @Test
    void badInput_noseDown() {
        PocketMake down = PocketMake.USUAL.with(new Floor(Floor.Lies.LEVEL_ATHWART, Angle.ofDegrees(-1)));
        assertEquals("the face would stand 1.0 deg nose-down to the water along the bottom, at 24.0 kn; above 10 kn it sucks; what works: "
            + "its after edge lower by 0.0 to 2.0 deg", refused(FLAT, down, new BoatTold(OptionalDouble.of(24), Optional.empty(), Optional.empty()), 0.1));
        assertInstanceOf(PocketOutcome.Built.class, cut(FLAT, down, new BoatTold(OptionalDouble.of(9), Optional.empty(), Optional.empty()), 0.1, 0));
    }

    private static BoatTold with(Room.Kind kind, double above) {
        Room room = new Room(kind, "old", "hole", Sides.BOTH, new Span(2.9, 3.2), new Span(0, 0.05), new Span(above, Double.POSITIVE_INFINITY));
        return new BoatTold(OptionalDouble.empty(), Optional.empty(), Optional.of(LaidInside.on(FLAT,
            new Inside(List.of(new InsideDatum.TransferPoint("hole", 0)), List.of(room), List.of()))));
    }

    @Test
    void badInput_structure() {
        for (Room.Kind kind : List.of(Room.Kind.KEELSON, Room.Kind.KEEL_BOLTS, Room.Kind.FLOOR, Room.Kind.ENGINE_BED)) {
            String said = refused(FLAT, PocketMake.USUAL, with(kind, 0), 0.06);
            assertTrue(said.startsWith("the pocket would go through a " + kind.words() + " (old)") && said.endsWith("a site clear of it"), said);
        }
        assertEquals("the pocket stands 60.0 mm above the inside of the skin, and a tank (old) begins at 40.0 mm; what works: "
            + "a pocket less deep by 20 mm, or a site clear of it", refused(FLAT, PocketMake.USUAL, with(Room.Kind.TANK, 0.04), 0.06));
        PocketOutcome over = cut(FLAT, PocketMake.USUAL, with(Room.Kind.STRINGER, 0), 0.06, 0);
        assertEquals(List.of("stringer (old)"), assertInstanceOf(PocketOutcome.Built.class, over).pocket().details().met());
    }

    /** Face f deep under a flat bottom: f of air stays. On a V the skin outboard lies higher, and the air runs out. */
    @Test
    void exact_airThatStays() {
        assertEquals(0.04, built(FLAT, SHARP, 0.1, 8).details().trappedAir(), 1e-9);
        assertTrue(built(VEE, PocketMake.USUAL, 0.09, 8).details().trappedAir() < 0.002);
        assertTrue(built(VEE, PocketMake.USUAL, 0.09, 8).details().drains());
    }

    /** An edge of the skin from end to end under the pocket is followed by its faces; one in the round of a corner is refused. */
    @Test
    void law_flatAndBoxKeels() {
        Hull box = Boats.boxKeel(15);
        Pocket pocket = built(box, SHARP, 0.06, 0);
        double exact = built(FLAT, SHARP, 0.06, 0).volume();
        assertEquals(exact, pocket.volume(), 1e-9);
        assertFalse(refused(box, PocketMake.USUAL.with(new Walls(Angle.ofDegrees(5), 0.010, 0.100, Optional.empty())), BoatTold.NOTHING, 0.3).isBlank());
    }
}
