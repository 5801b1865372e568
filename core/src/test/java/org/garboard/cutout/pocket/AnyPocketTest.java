package org.garboard.cutout.pocket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.garboard.craft.Transducer;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketOutcome;
import org.garboard.cutout.SelfCrossing;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.hull.Hull;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.Blend;
import org.garboard.mount.pocket.Floor;
import org.garboard.mount.pocket.FormerWish;
import org.garboard.mount.pocket.PocketLayup;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.mount.pocket.PocketMake.Into;
import org.garboard.mount.pocket.Walls;
import org.garboard.siting.Boats;
import org.garboard.skin.HullSkin;
import org.garboard.skin.Layup;
import org.garboard.skin.SkinMaterial;
import org.garboard.units.Angle;

/** Whatever pocket is asked for, on whatever boat: sound solids, or a refusal with a figure; never a broken mesh. */
class AnyPocketTest {
    private static final List<Hull> HULLS = List.of(Boats.prismaticV(0), Boats.prismaticV(20), Boats.warpedV(30, 12),
        Boats.brokenV(24, 14), Boats.cylinder(1.2), Boats.sphere(4), Boats.thirtyNineFeet(), Boats.boxKeel(15));

    private final class Request {
        private final Random lot;
        private final boolean sensible;

        Request(long seed) {
            lot = new Random(seed);
            sensible = lot.nextBoolean();
        }

        boolean usual() {
            return sensible || lot.nextInt(5) > 0;
        }

        double from(double least, double most) {
            return least + (most - least) * lot.nextDouble();
        }

        double any() {
            return Math.pow(10, from(-4, 0.3));
        }
    }

    /** Found by lot: an edge so small that its faces are one in single precision. */
    @Example
    void refusesFacesThatFallTogether() {
        law_soundOrRefused(-32813);
    }

    @Property(tries = 500, shrinking = ShrinkingMode.OFF, seed = "58")
    void law_soundOrRefused(@ForAll long seed) {
        Request any = new Request(seed);
        Hull hull = HULLS.get(any.lot.nextInt(HULLS.size()));
        double length = any.usual() ? any.from(0.12, 0.40) : any.any();
        double width = any.usual() ? any.from(0.08, 0.20) : any.any();
        double height = any.usual() ? any.from(0.03, 0.09) : any.any();
        Transducer body = new Transducer("any", length, width, height, any.lot.nextBoolean() ? 0 : any.from(0, any.sensible ? 0.4 : 0.6) * Math.min(length, width),
            0.02, Angle.ofDegrees(0));
        double edge = any.usual() ? any.from(0, 0.006) : any.any();
        Walls walls = new Walls(Angle.ofDegrees(any.usual() ? any.from(4.5, 10) : any.from(-5, 60)), any.usual() ? any.from(0, 0.012) : any.any(),
            edge, any.lot.nextInt(6) > 0 ? Optional.empty()
            : Optional.of(new Walls.Rebate(any.usual() ? any.from(0.005, 0.02) : any.any(), any.usual() ? edge + any.from(0.003, 0.008) : any.any())));
        boolean inMold = any.lot.nextBoolean();
        FormerWish former = new FormerWish(any.lot.nextBoolean() ? FormerWish.Mold.ONE_PIECE : FormerWish.Mold.SPLIT_ON_CENTRELINE,
            Angle.ofDegrees(any.sensible || any.usual() ? 0 : any.from(-10, 90)), any.usual() ? 0.002 : any.any(), any.lot.nextBoolean() ? 0 : any.from(0.02, 0.08));
        PocketMake make = new PocketMake(walls, new Blend(any.usual() ? any.from(2, 5) : any.from(-2, 120),
            any.lot.nextBoolean() ? Optional.empty() : Optional.of(Angle.ofDegrees(any.usual() ? any.from(10, 25) : any.from(-5, 70)))),
            new Floor(any.lot.nextInt(4) > 0 ? Floor.Lies.LEVEL_ATHWART : Floor.Lies.SQUARE_TO_SKIN,
                Angle.ofDegrees(any.usual() ? any.from(0, 2) : any.from(-4, 4))),
            inMold ? Into.NEW_MOLD : Into.EXISTING_BOAT,
            new PocketLayup(any.usual() ? any.from(0.0003, 0.001) : any.any(), List.of(new PocketLayup.Layer("glass", any.usual() ? any.from(0.003, 0.010) : any.any())), 12, 0.003),
            former, "", any.usual() ? any.from(5e-5, 3e-4) : any.any());
        PocketWish wish = new PocketWish(any.lot.nextInt(3) > 0 ? OptionalDouble.empty() : OptionalDouble.of(any.usual() ? height + any.from(0.03, 0.08) : any.any()),
            any.usual() ? any.from(0, 0.005) : any.any(), any.lot.nextInt(4) == 0 ? 0 : any.usual() ? any.from(4, 12) : any.from(-2, 120), make);
        double x = hull.forwardEnd() + (hull.afterEnd() - hull.forwardEnd()) * (any.usual() ? any.from(0.5, 0.7) : any.from(-0.2, 1.2));
        double y = any.lot.nextInt(4) > 0 ? 0 : any.sensible ? (any.lot.nextBoolean() ? 1 : -1) * any.from(0.35, 0.6) : any.from(-1.5, 1.5);
        PocketOutcome outcome = KeelPocketCut.cut(hull, body, wish, boat(make.layup(), seed), x, y);
        if (outcome instanceof PocketOutcome.Built built) {
            sound(built.pocket(), seed);
            if (any.sensible) {
                boolean laid = built.pocket().details().notMade().stream().noneMatch(said -> said.startsWith("the laminate"));
                Statistics.label("laminate of the sensible").collect(laid).coverage(coverage -> coverage.check(true).percentage(share -> share >= 99));
                Statistics.label("of those built").collect(y == 0 ? "athwart the keel" : "beside it", make.floor().lies());
            }
        } else {
            speaks((PocketOutcome.Refused) outcome);
        }
        if (any.sensible) {
            Statistics.label("sensible").collect(outcome instanceof PocketOutcome.Built)
                .coverage(coverage -> coverage.check(true).percentage(share -> share >= 60));
        } else {
            Statistics.label("silly").collect(outcome instanceof PocketOutcome.Built);
        }
    }

    /** Of half of them the skin is told, as thick as the pocket's laminate. */
    private static BoatTold boat(PocketLayup layup, long seed) {
        return seed % 2 == 0 || layup.thickness() > 0.2 ? BoatTold.NOTHING : new BoatTold(OptionalDouble.empty(), Optional.of(new HullSkin(
            SkinMaterial.SOLID_GLASS, Optional.of(new Layup.Whole(layup.thickness())), List.of(), Optional.empty(), List.of())), Optional.empty());
    }

    /** A solid that exists is closed and right side out; here also that it does not cut through itself. */
    private static void sound(Pocket pocket, long seed) {
        assertTrue(pocket.volume() > 0 && pocket.openingArea() > 0);
        for (NamedSolid part : pocket.solids()) {
            assertTrue(part.solid().holes() >= 0 && part.solid().volume() > 0, part.name());
            if (seed % 8 == 0 || seed % 8 == 3 && part.name().equals("skin-round-pocket")) {
                assertEquals(0, SelfCrossing.count(part.solid()), part.name());
            }
        }
    }

    private static void speaks(PocketOutcome.Refused refused) {
        assertFalse(refused.reason().isBlank() || refused.remedy().isBlank());
        String said = refused.reason() + refused.remedy();
        if (System.getenv("SAY") != null) {
            System.err.println(said);
        }
        assertFalse(said.contains("NaN") || said.contains("Infinity") || said.contains("E-"), said);
    }
}
