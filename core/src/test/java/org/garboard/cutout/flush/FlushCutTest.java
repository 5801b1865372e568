package org.garboard.cutout.flush;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.SelfCrossing;
import org.garboard.cutout.flush.ElementLean.Towards;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.cutout.part.BodySeat;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.part.SawCut;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.cutout.template.Template;
import org.garboard.hull.Hull;
import org.garboard.siting.Boats;
import org.garboard.skin.Layup;
import org.garboard.solid.Solid;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Flush through-hulls on flat, V and cylindrical bottoms against closed forms. */
class FlushCutTest {
    private static final double T = 0.012;
    private static final Layup SKIN = new Layup.Whole(T);
    private static final double GAP = ThroughHullWish.GAP;
    private static final double OVER = ThroughHullWish.OVERLAP;

    private static Transducer body(double height, double stem) {
        return new Transducer("test body", 0.096, 0.076, height, 0.020, stem, Angle.ofDegrees(20));
    }

    private static ThroughHullWish wish(Layup skin) {
        return ThroughHullWish.of(Optional.of(skin));
    }

    private static FlushCutout cut(Hull hull, Transducer body, double y) throws CannotBeBuilt {
        return FlushCut.cut(hull, body, wish(SKIN), 3, y);
    }

    private static Solid solid(FlushCutout cutout, String name) {
        return cutout.solids().stream().filter(part -> part.name().equals(name)).map(NamedSolid::solid).findFirst().orElseThrow();
    }

    private static Template template(FlushCutout cutout, String name) {
        return cutout.templates().stream().filter(part -> part.name().equals(name)).findFirst().orElseThrow();
    }

    private static double area(double gap) {
        return new BodyOutline(0.096 + 2 * gap, 0.076 + 2 * gap, 0.020 + gap).area();
    }

    /** A sleeve goes all round between body and plate: the hull's cut grows by its wall, the sleeve is as high as the plate is thick. */
    @Test
    void exact_sleeve() throws CannotBeBuilt {
        double wall = 0.003;
        for (double deadrise : new double[] {0, 20}) {
            FlushCutout cutout = FlushCut.cut(Boats.prismaticV(deadrise), body(0.028, 0.020), wish(SKIN).sleeved(wall), 3, -0.5);
            double ring = (area(GAP + wall) - area(GAP)) * T;
            assertEquals(ring, solid(cutout, "sleeve").volume(), 1e-3 * ring);
            assertEquals(0, solid(cutout, "sleeve").eulerCharacteristic());
            double plate = (area(GAP + wall + OVER) - area(GAP + wall)) * T;
            assertEquals(plate, solid(cutout, "hull-skin").volume(), 1e-9 * plate);
            double wide = template(cutout, "hull-cutout").outline().stream().mapToDouble(FlatPoint::v).max().orElseThrow();
            assertEquals(0.038 + GAP + wall, wide, 1e-9);
        }
    }

    /** On a plane the block's two faces are parallel; inside a cylinder a flat cut leaves the bulge of its arc to be scribed. */
    @Test
    void exact_sawnBlock() throws CannotBeBuilt {
        SawCut flat = cut(Boats.prismaticV(20), body(0.028, 0.020), 0.5).wedge().orElseThrow();
        assertEquals(0, flat.total().degrees(), 1e-6);
        assertEquals(0, flat.left(), 1e-9);
        assertEquals(0.026, flat.middle(), 1e-9);
        FlushCutout round = cut(Boats.cylinder(1.2), body(0.028, 0.020), 0.3);
        double half = 0.038 + GAP + OVER;
        double inner = 1.2 - T;
        double bulge = inner - Math.sqrt(inner * inner - half * half);
        assertTrue(round.wedge().orElseThrow().left() > bulge / 4 && round.wedge().orElseThrow().left() < bulge, "scribed off " + round.wedge());
        assertEquals(0, round.wedge().orElseThrow().across().degrees(), 0.05);
    }

    /**
     * On a plane the blank is as high as the block is thick, and where a low body asks for a lip round its stem, by that lip
     * higher: 15 beside a body 4 below the inside.
     */
    @Test
    void exact_blankHoldsTheLip() throws CannotBeBuilt {
        for (double deadrise : new double[] {0, 20}) {
            FlushCutout low = cut(Boats.prismaticV(deadrise), body(0.008, 0.020), 0.5);
            assertEquals(0.015, low.wedge().orElseThrow().middle(), 1e-9);
            assertEquals(0.015 + 0.004, low.wedge().orElseThrow().blank().orElseThrow(), 1e-9);
            BodySeat lip = low.seat().orElseThrow();
            assertTrue(lip.lip());
            assertEquals(0.004, lip.depth(), 1e-9);
            assertEquals(0.076, lip.outline().width(), 1e-12);
            FlushCutout tall = cut(Boats.prismaticV(deadrise), body(0.028, 0.020), 0.5);
            assertEquals(0.026, tall.wedge().orElseThrow().blank().orElseThrow(), 1e-9);
            BodySeat recess = tall.seat().orElseThrow();
            assertFalse(recess.lip());
            assertEquals(0.016, recess.depth(), 1e-9);
            assertEquals(0.076 + 2 * GAP, recess.outline().width(), 1e-12);
            assertEquals(Optional.empty(), cut(Boats.prismaticV(deadrise), body(0.028, 0), 0.5).seat());
        }
    }

    /** On plane skin everything is a prism: skin, block with recess (tall body) and with plug (low body). */
    @Test
    void exact_prismsOnFlatAndV() throws CannotBeBuilt {
        double hole = Math.PI * 0.011 * 0.011;
        for (double deadrise : new double[] {0, 20}) {
            for (double y : new double[] {0.5, -0.5}) {
                Hull hull = Boats.prismaticV(deadrise);
                FlushCutout tall = cut(hull, body(0.028, 0.020), y);
                double plate = (area(GAP + OVER) - area(GAP)) * T;
                assertEquals(plate, solid(tall, "hull-skin").volume(), 1e-9 * plate);
                assertEquals(0, solid(tall, "hull-skin").eulerCharacteristic());
                assertEquals(area(0) * 0.028 + Math.PI * 1e-4 * tall.stemNeeded().orElseThrow(), solid(tall, "transducer-body").volume(), 1e-9);
                // top 10 mm over the body's top, 26 mm over the skin
                double block = (area(GAP + OVER) - hole) * 0.026 - (area(GAP) - hole) * 0.016;
                assertEquals(block, solid(tall, "backing-block").volume(), 1e-9 * block);
                assertEquals(0, solid(tall, "backing-block").eulerCharacteristic());
                assertEquals(0.026, tall.blockThickness().orElseThrow().least(), 1e-9);
                assertEquals(0.010 + ThroughHullWish.NUT, tall.stemNeeded().orElseThrow(), 1e-9);
                FlushCutout low = cut(hull, body(0.008, 0.020), y);
                double plug = (area(GAP + OVER) - hole) * 0.015 + (area(0) - hole) * 0.004;
                assertEquals(plug, solid(low, "backing-block").volume(), 1e-9 * plug);
                FlushCutout ring = cut(hull, body(0.028, 0), y);
                double open = (area(GAP + OVER) - area(GAP)) * 0.016;
                assertEquals(open, solid(ring, "backing-block").volume(), 1e-9 * open);
            }
        }
    }

    /** On a cylinder the skin is a piece of tube: between two arcs, less the same over the cutout. */
    @Test
    void exact_skinOfACylindricalBottom() throws CannotBeBuilt {
        double r = 1.5;
        Transducer round = new Transducer("round", 0.08, 0.08, 0.028, 0.04, 0.020, Angle.ofDegrees(0));
        FlushCutout cutout = FlushCut.cut(Boats.cylinder(r), round, wish(SKIN), 3, 0.5);
        Solid skin = solid(cutout, "hull-skin");
        // a tube's wall over a disc of radius a square to it: 2 pi int t (1 + s / R ...) by quadrature
        double exact = wall(r, 0.04 + GAP + OVER) - wall(r, 0.04 + GAP);
        assertEquals(exact, skin.volume(), 1e-3 * exact);
        assertEquals(0, SelfCrossing.count(skin));
        assertEquals(0, SelfCrossing.count(solid(cutout, "backing-block")));
        assertEquals(0, template(cutout, "hull-cutout").stretch(), 2e-6);
        assertEquals(0.04 * 0.04 / (4 * r), cutout.proud(), 2e-5);
    }

    /** Volume between cylinders R and R - t over a disc square to the generator: height by its chord, summed in strips. */
    private static double wall(double r, double a) {
        int strips = 4000;
        double sum = 0;
        for (int i = 0; i < strips; i++) {
            double v = a * (2 * (i + 0.5) / strips - 1);
            sum += 2 * Math.sqrt(a * a - v * v) * (Math.sqrt(r * r - v * v) - Math.sqrt((r - T) * (r - T) - v * v)) * 2 * a / strips;
        }
        return sum;
    }

    /** The hole stands square to the skin whatever the element's inclination. */
    @Test
    void law_axisIsTheSkinsNormal() throws CannotBeBuilt {
        double b = Math.toRadians(20);
        FlushCutout cutout = cut(Boats.prismaticV(20), body(0.028, 0.020), 0.5);
        assertEquals(0, cutout.axis().distance(Vector3D.of(0, -Math.sin(b), Math.cos(b))), 1e-12);
        for (Vector3D point : cutout.edge()) {
            assertEquals(point.getY() * Math.tan(b), point.getZ(), 1e-12);
        }
    }

    /** Towards the keel on either side; an inclination equal to the deadrise leaves nothing, turned round it leaves twice as much. */
    @Test
    void exact_whichWayTheElementLeans() throws CannotBeBuilt {
        ElementLean starboard = cut(Boats.prismaticV(20), body(0.028, 0.020), 0.5).lean();
        assertEquals(Towards.PORT, starboard.towards());
        assertEquals(0, starboard.left().degrees(), 1e-9);
        assertEquals(-40, starboard.turnedRound().degrees(), 1e-9);
        assertEquals(Towards.STARBOARD, cut(Boats.prismaticV(20), body(0.028, 0.020), -0.5).lean().towards());
    }

    /** Port is the mirror image of starboard. */
    @Test
    void law_portMirrorsStarboard() throws CannotBeBuilt {
        Hull hull = Boats.thirtyNineFeet();
        FlushCutout starboard = FlushCut.cut(hull, body(0.028, 0.02), wish(SKIN), 8, 0.35);
        FlushCutout port = FlushCut.cut(hull, body(0.028, 0.02), wish(SKIN), 8, -0.35);
        assertEquals(starboard.proud(), port.proud(), 1e-12);
        assertEquals(starboard.stemNeeded().orElseThrow(), port.stemNeeded().orElseThrow(), 1e-9);
        assertEquals(solid(starboard, "hull-skin").volume(), solid(port, "hull-skin").volume(), 1e-5 * solid(port, "hull-skin").volume());
        FlatPoint s = template(starboard, "hull-cutout").outline().get(0);
        assertTrue(template(port, "hull-cutout").outline().stream().anyMatch(p -> Math.hypot(p.u() - s.u(), p.v() + s.v()) < 1e-9));
    }

    @Test
    void exact_coreComesOut() throws CannotBeBuilt {
        FlushCutout cutout = FlushCut.cut(Boats.prismaticV(15), body(0.028, 0.02), wish(new Layup.Sandwich(0.004, Layup.Core.FOAM, 0.020, 0.003)), 3, 0.5);
        assertEquals(0.060, cutout.core().orElseThrow().filled(), 1e-12);
        assertEquals(0.060 + 12 * 0.003, cutout.core().orElseThrow().taper(), 1e-12);
        double length = template(cutout, "core-removal").outline().stream().mapToDouble(FlatPoint::u).max().orElseThrow();
        assertEquals(0.048 + GAP + 0.060, length, 1e-9);
    }

    /** Without a known skin nothing is made that depends on it. */
    @Test
    void unknownSkinLeavesBodyAndCutout() throws CannotBeBuilt {
        FlushCutout cutout = FlushCut.cut(Boats.prismaticV(20), body(0.028, 0.02), ThroughHullWish.of(Optional.empty()), 3, 0.5);
        assertEquals(1, cutout.solids().size());
        assertEquals(1, cutout.templates().size());
        assertTrue(cutout.stemNeeded().isEmpty());
    }

    /** The block's half width of 80.5 mm takes 80.5 cos 20 deg = 75.6 mm of half-breadth, and a marked line 1 mm. */
    @Test
    void refusalsSayWhatWouldWork() {
        refused("the backing block reaches over the keel line by 8.6 mm; what works: a site at least 10 mm farther outboard",
            Boats.prismaticV(20), body(0.028, 0.02), wish(SKIN), 3, 0.068);
        refused("the backing block reaches over Chine by 61.6 mm; what works: a site at least 65 mm farther inboard",
            Boats.prismaticV(20), body(0.028, 0.02), wish(SKIN), 3, 0.985);
        refused("there is no skin at x = 7000.0 mm, y = 500.0 mm; what works: x from 0.0 mm to 6000.0 mm, inside the sheer",
            Boats.prismaticV(20), body(0.028, 0.02), wish(SKIN), 7, 0.5);
        refused("the stem is 25.0 mm long above the body; through block, washer and nut it needs 30.0 mm; what works: a stem of 30 mm or"
            + " more, or thinner skin and block", Boats.prismaticV(20), body(0.028, 0.02),
            new ThroughHullWish(Optional.of(SKIN), GAP, OVER, 0.015, OptionalDouble.of(0.025), 1e-4), 3, 0.5);
        refused("a corner radius of 50.0 mm is more than half the body's lesser side of 76.0 mm; what works: a corner radius of the body of"
            + " 38 mm at most", Boats.prismaticV(20),
            new Transducer("test body", 0.096, 0.076, 0.028, 0.050, 0.02, Angle.ofDegrees(0)), wish(SKIN), 3, 0.5);
    }

    private static void refused(String message, Hull hull, Transducer body, ThroughHullWish wish, double x, double y) {
        assertEquals(message, assertThrows(CannotBeBuilt.class, () -> FlushCut.cut(hull, body, wish, x, y)).getMessage());
    }
}
