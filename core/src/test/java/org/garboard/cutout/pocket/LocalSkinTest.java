package org.garboard.cutout.pocket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.Transducer;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketOutcome;
import org.garboard.cutout.SelfCrossing;
import org.garboard.hull.Hull;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.FormerWish;
import org.garboard.mount.pocket.PocketLayup;
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

/** The skin round a pocket: cut through, or with the pocket molded in it. */
class LocalSkinTest {
    private static final double L = 0.300;
    private static final double W = 0.160;
    private static final double H = 0.060;
    private static final double SKIN = 0.010;
    private static final double ROUND = 0.100;
    private static final double DRAFT = Math.toRadians(5);

    private static BoatTold told(double thickness) {
        return new BoatTold(OptionalDouble.empty(), Optional.of(new HullSkin(SkinMaterial.SOLID_GLASS, Optional.of(new Layup.Whole(thickness)),
            List.of(), Optional.empty(), List.of())), Optional.empty());
    }

    private static PocketMake make(Into into, double floorRadius, double edgeRadius) {
        return PocketMake.USUAL.with(new Walls(Angle.ofRadians(DRAFT), floorRadius, edgeRadius, Optional.empty()))
            .with(new PocketLayup(0, List.of(new PocketLayup.Layer("glass", SKIN)), 12, 0.003)).into(into, FormerWish.USUAL);
    }

    private static Pocket built(Hull hull, PocketMake make, BoatTold boat, double depth, double ratio) {
        Transducer body = new Transducer("test body", L, W, H, 0, 0.02, Angle.ofDegrees(0));
        PocketOutcome outcome = KeelPocketCut.cut(hull, body, new PocketWish(OptionalDouble.of(depth), 0, ratio, make), boat, 3, 0);
        return assertInstanceOf(PocketOutcome.Built.class, outcome, outcome.toString()).pocket();
    }

    private static Solid skin(Pocket pocket) {
        Solid solid = pocket.solids().stream().filter(part -> part.name().equals("skin-round-pocket")).findFirst()
            .orElseThrow(() -> new AssertionError(pocket.details().notMade())).solid();
        assertEquals(0, SelfCrossing.count(solid));
        return solid;
    }

    /** Area of a rectangle grown by d, round at the corners (Steiner). */
    private static double grown(double d) {
        return L * W + 2 * (L + W) * d + Math.PI * d * d;
    }

    /** Its thickness times a ring between two grown rectangles: cut by laminate and gap outside the walls' foot. */
    @Test
    void exact_cutThroughAFlatBottom() {
        Solid skin = skin(built(Boats.prismaticV(0), make(Into.EXISTING_BOAT, 0, 0), told(SKIN), H, 0));
        double cut = H * Math.tan(DRAFT) + SKIN + 0.003;
        double exact = SKIN * (grown(cut + ROUND) - grown(cut));
        assertEquals(exact, skin.volume(), 1e-3 * exact);
        assertEquals(1, skin.holes());
    }

    /** Edges along the axis, so what is cut is its area in plan times thickness over the cosine of the deadrise. */
    @Test
    void exact_cutThroughAVBottom() {
        Pocket pocket = built(Boats.prismaticV(20), make(Into.EXISTING_BOAT, 0, 0), told(SKIN), 0.1, 0);
        Solid skin = skin(pocket);
        double cos = Math.cos(Math.toRadians(20));
        // the cut's outline in plan is convex: A + P d + pi d^2
        List<Vector3D> outline = pocket.details().hullCut().flat().stream().map(flat -> Vector3D.of(flat.u(), flat.v() * cos, 0)).toList();
        double round = 0;
        for (int i = 0; i < outline.size(); i++) {
            round += outline.get(i).distance(outline.get((i + 1) % outline.size()));
        }
        double exact = SKIN / cos * (round * ROUND + Math.PI * ROUND * ROUND);
        assertEquals(exact, skin.volume(), 1e-3 * exact);
        assertEquals(1, skin.holes());
    }

    /** The hull cut on the skin, laid flat again, is the template's line: so much outside the opening, along the skin. */
    @Test
    void law_theCutIsTheTemplatesLine() {
        Pocket pocket = built(Boats.prismaticV(20), make(Into.EXISTING_BOAT, 0, 0), told(SKIN), 0.1, 8);
        Solid skin = skin(pocket);
        double cos = Math.cos(Math.toRadians(20));
        double widest = pocket.details().hullCut().flat().stream().mapToDouble(flat -> flat.v()).max().orElseThrow() * cos;
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < skin.vertices(); i++) {
            if (Math.abs(skin.x(i) - 3) < 0.05) {
                nearest = Math.min(nearest, Math.abs(Math.abs(skin.y(i)) - widest));
                assertTrue(Math.abs(skin.y(i)) > widest - 1e-5, "skin within the cut at y = " + skin.y(i));
            }
        }
        assertEquals(0, nearest, 1e-5);
    }

    /**
     * A slab, more by the pocket behind the laminate (walls and floor moved by its thickness: the same floor, a fillet as
     * round as the laminate is thick), less the pocket itself. Both rooms are held to closed forms elsewhere.
     */
    @Test
    void exact_moldedInAFlatBottom() {
        Hull flat = Boats.prismaticV(0);
        Pocket pocket = built(flat, make(Into.NEW_MOLD, 0, 0), told(SKIN), H, 0);
        double behind = built(flat, make(Into.NEW_MOLD, SKIN, 0), told(SKIN), H, 0).volume();
        double exact = SKIN * grown(H * Math.tan(DRAFT) + ROUND) + behind - pocket.volume();
        Solid skin = skin(pocket);
        assertEquals(exact, skin.volume(), 1e-3 * exact);
        assertEquals(0, skin.holes());
    }

    /** With ramps too, on a bottom with an edge and a round one: one body without a hole, of at least the laminate's and the slab's own volume. */
    @Test
    void law_moldedWithRamps() {
        for (Hull hull : List.of(Boats.prismaticV(20), Boats.cylinder(1.2))) {
            Pocket pocket = built(hull, make(Into.NEW_MOLD, 0.010, 0.3 * SKIN), told(SKIN), 0.1, 8);
            Solid skin = skin(pocket);
            assertEquals(0, skin.holes());
            double laminate = pocket.solids().stream().filter(part -> part.name().equals("pocket-layer-1")).findFirst().orElseThrow().solid().volume();
            assertTrue(skin.volume() > laminate, pocket.details().notMade().toString());
        }
    }

    @Test
    void badInput_skinThatIsNotMade() {
        assertEquals(List.of("the hull's skin: its thickness here is not told; what works: tell it as skin in the job"),
            built(Boats.prismaticV(0), make(Into.NEW_MOLD, 0, 0), BoatTold.NOTHING, H, 0).details().notMade());
        assertEquals(List.of("the hull's skin: the pocket's laminate is 10.0 mm thick and the skin beside it 8.0 mm, and where one runs into "
            + "the other is not told; what works: a laminate as thick as the skin"),
            built(Boats.prismaticV(0), make(Into.NEW_MOLD, 0, 0), told(0.008), H, 0).details().notMade());
    }
}
