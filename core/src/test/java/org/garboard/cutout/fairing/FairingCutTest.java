package org.garboard.cutout.fairing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.SelfCrossing;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.cutout.template.Template;
import org.garboard.flow.cavitation.Inception;
import org.garboard.flow.cavitation.Suction;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.siting.Boats;
import org.garboard.skin.Layup;
import org.garboard.solid.Loop;
import org.garboard.solid.Solid;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Fairing blocks on flat and V bottoms against closed forms, on round ones against laws. */
class FairingCutTest {
    private static final double T = 0.012;
    private static final Transducer BODY = new Transducer("test body", 0.096, 0.076, 0.028, 0.020, 0.020, Angle.ofDegrees(0));

    private static FairingWish wish(Planform planform, double height, double lowerDeg) {
        return new FairingWish(planform, 3.5, height > 0 ? OptionalDouble.of(height) : OptionalDouble.empty(), Angle.ofDegrees(lowerDeg),
            Angle.ofDegrees(0), ThroughHullWish.of(Optional.of(new Layup.Whole(T))));
    }

    private static Solid solid(FairingBlock block, String name) {
        return block.solids().stream().filter(part -> part.name().equals(name)).map(NamedSolid::solid).findFirst().orElseThrow();
    }

    private static Template template(FairingBlock block, String name) {
        return block.templates().stream().filter(part -> part.name().equals(name)).findFirst().orElseThrow();
    }

    /** Ordinates of NACA 0012 in per cent of the chord, as Abbott and von Doenhoff print them in appendix I. */
    @Test
    void published_ordinates() {
        double[][] printed = {{0.1, 4.683}, {0.3, 6.002}, {0.5, 5.294}, {1, 0.126}};
        for (double[] row : printed) {
            assertEquals(row[1], 100 * 0.12 * Planform.NACA_00XX.halfBreadth(row[0]), 6e-4);
        }
    }

    /** Area of the form by its integral: 2 x 5 (0.2969 / 1.5 - 0.1260 / 2 - 0.3516 / 3 + 0.2843 / 4 - 0.1015 / 5) L W; pi / 4 L W. */
    @Test
    void exact_areas() {
        double naca = 10 * (0.2969 / 1.5 - 0.1260 / 2 - 0.3516 / 3 + 0.2843 / 4 - 0.1015 / 5);
        assertEquals(naca * 0.4 * 0.1, Planform.NACA_00XX.loop(0.4, 0.1, 1e-6, 1).area(), 1e-4 * 0.02);
        assertEquals(Math.PI / 4 * 0.4 * 0.1, Planform.HALF_ELLIPSES.loop(0.4, 0.1, 1e-6, 1).area(), 1e-4 * 0.02);
    }

    /**
     * On a plane the block's volume is plan area times height at the plan's centroid, less recess and holes; the centroid of
     * a plan of half ellipses lies 4 / (3 pi) of each half's length from the widest place. The nose's round takes away its
     * integral over the plan but for the pin's hole.
     */
    @Test
    void exact_volumesOnFlatAndV() throws CannotBeBuilt {
        for (double deadrise : new double[] {0, 20}) {
            for (double y : new double[] {0.5, -0.5}) {
                FairingBlock block = FairingCut.cut(Boats.prismaticV(deadrise), BODY, wish(Planform.HALF_ELLIPSES, 0.06, 0), 3, y);
                double plan = Math.PI / 4 * block.length() * block.width();
                double gap = ThroughHullWish.GAP;
                double recess = new BodyOutline(0.096 + 2 * gap, 0.076 + 2 * gap, 0.020 + gap).area();
                double stem = Math.PI * 0.011 * 0.011;
                double bolts = 2 * Math.PI * block.boltHole() * block.boltHole() / 4;
                double exact = (plan - bolts) * 0.06 - recess * 0.028 - stem * (0.06 - 0.028) - rounded(block);
                assertEquals(exact, solid(block, "fairing-block").volume(), 1e-3 * exact);
                double cos = Math.cos(Math.toRadians(deadrise));
                double skin = (plan - bolts - stem) * T / cos;
                assertEquals(skin, solid(block, "hull-skin").volume(), 1e-3 * skin);
                assertEquals(-4, solid(block, "fairing-block").eulerCharacteristic());
                assertEquals(-4, solid(block, "inner-block").eulerCharacteristic());
                double half = block.width() / 2 * Math.tan(Math.toRadians(deadrise));
                double inner = (plan - bolts - stem) * (0.015 + half);
                assertEquals(inner, solid(block, "inner-block").volume(), 1e-3 * inner);
                assertEquals(0.06 - half, block.low(), 2e-5);
                assertEquals(0.06 + half, block.high(), 2e-5);
            }
        }
    }

    /** Volume of H (1 - sqrt(1 - a^2)), a = 1 - d / L, over the fore half ellipse less the pin's circle, by the midpoint rule. */
    private static double rounded(FairingBlock block) {
        int pieces = 200_000;
        double run = block.nose().length();
        double half = 0.4 * block.length();
        double sum = 0;
        for (int i = 0; i < pieces; i++) {
            double aft = run * (i + 0.5) / pieces;
            double ahead = 1 - aft / run;
            double fromPin = aft - half - block.pin();
            double r = block.boltHole() / 2;
            double width = block.width() * Math.sqrt(1 - Math.pow(1 - aft / half, 2)) - 2 * Math.sqrt(Math.max(0, r * r - fromPin * fromPin));
            sum += width * block.nose().height() * (1 - Math.sqrt(1 - ahead * ahead)) * run / pieces;
        }
        return sum;
    }

    /** The face at the nose: a quarter of the ellipse that the model of cavitation halves, but for the land. */
    @Test
    void exact_theNoseIsAQuarterOfAnEllipse() throws CannotBeBuilt {
        FairingBlock block = FairingCut.cut(Boats.prismaticV(0), BODY, wish(Planform.NACA_00XX, 0.06, 0), 3, 0.5);
        assertEquals(0.06 - 0.001, block.nose().height(), 1e-9);
        Solid solid = solid(block, "fairing-block");
        double nose = block.site().getX() - Planform.NACA_00XX.widest() * block.length();
        double face = block.site().getZ() - 0.06;
        int onRound = 0;
        for (int i = 0; i < solid.vertices(); i++) {
            double ahead = 1 - (solid.x(i) - nose) / block.nose().length();
            double lift = (solid.z(i) - face) / block.nose().height();
            if (ahead > 1e-6 && solid.z(i) < block.site().getZ() - 1e-6) {
                assertEquals(1, ahead * ahead + (1 - lift) * (1 - lift), 1e-6);
                onRound++;
            }
        }
        assertTrue(onRound > 40, onRound + " points on the round");
        assertEquals(0, SelfCrossing.count(solid));
    }

    /** Round each hole by three thicknesses of the core; where two of these circles meet they are one opening. */
    @Test
    void exact_coreComesOutRoundEachHole() throws CannotBeBuilt {
        for (double core : new double[] {0.006, 0.050}) {
            Layup.Sandwich cored = new Layup.Sandwich(0.004, Layup.Core.FOAM, core, 0.003);
            FairingWish wish = new FairingWish(Planform.NACA_00XX, 3.5, OptionalDouble.of(0.06), Angle.ofDegrees(0), Angle.ofDegrees(0),
                ThroughHullWish.of(Optional.of(cored)));
            FairingBlock block = FairingCut.cut(Boats.prismaticV(0), BODY, wish, 3, 0.5);
            Template removal = template(block, "core-removal");
            java.util.List<java.util.List<FlatPoint>> openings = removal.marks().stream().filter(mark -> mark.kind() == Template.Kind.SCRIBED)
                .map(Template.Mark::line).toList();
            double small = block.boltHole() / 2 + 3 * core;
            double stem = block.stemHole().orElseThrow().minor() / 2 + 3 * core;
            double widest = removal.outline().stream().mapToDouble(FlatPoint::v).max().orElseThrow();
            assertEquals(stem, widest, 1e-4);
            double fore = removal.outline().stream().mapToDouble(FlatPoint::u).min().orElseThrow();
            assertEquals(block.pin() - small, fore, 1e-4);
            boolean apart = block.bolt() > small + stem && -block.pin() > small + stem;
            assertEquals(apart ? 3 : 0, openings.size(), "core " + core + ", bolt " + block.bolt() + ", pin " + block.pin());
            if (apart) {
                double area = openings.stream().mapToDouble(ring -> Loop.of(ring.stream().limit(ring.size() - 1)
                    .flatMapToDouble(at -> java.util.stream.DoubleStream.of(at.u(), at.v())).toArray()).area()).sum();
                double exact = Math.PI * (2 * small * small + stem * stem);
                assertEquals(exact, area, 2e-3 * exact);
            }
        }
    }

    /** The saw is tilted by the deadrise; high side outboard on either side of the boat; a slope of the face is the taper. */
    @Test
    void exact_sawOnAWedge() throws CannotBeBuilt {
        FairingBlock starboard = FairingCut.cut(Boats.prismaticV(20), BODY, wish(Planform.NACA_00XX, 0.06, 0), 3, 0.5);
        double half = Planform.NACA_00XX.halfBreadth(starboard.length(), starboard.width(), 0);
        assertEquals(20, starboard.saw().across().degrees(), 1e-9);
        assertEquals(0, starboard.saw().along().degrees(), 1e-9);
        assertEquals(20, starboard.saw().total().degrees(), 1e-9);
        assertEquals(0.06 + half * Math.tan(Math.toRadians(20)), starboard.saw().starboard(), 1e-9);
        assertEquals(0.06 - half * Math.tan(Math.toRadians(20)), starboard.saw().port(), 1e-9);
        assertEquals(0, starboard.saw().left(), 1e-9);
        // anywhere: 60 mm and half the rise outside where the inner block has its 15 mm, and the kerf
        assertEquals(0.06 + half * Math.tan(Math.toRadians(20)) + 0.015 + 0.003, starboard.saw().blank().orElseThrow(), 2e-5);
        FairingBlock port = FairingCut.cut(Boats.prismaticV(20), BODY, wish(Planform.NACA_00XX, 0.06, 0), 3, -0.5);
        assertEquals(-20, port.saw().across().degrees(), 1e-9);
        FairingBlock lowered = FairingCut.cut(Boats.prismaticV(20), BODY, wish(Planform.NACA_00XX, 0.06, 2), 3, 0.5);
        assertEquals(2, lowered.saw().along().degrees(), 1e-9);
        assertTrue(lowered.saw().tail() > lowered.saw().nose(), "the face's after edge lies lower, so the block is higher there");
    }

    /** The stem stands square to the level face: the hole in a skin of 20 deg is an ellipse. */
    @Test
    void exact_stemHole() throws CannotBeBuilt {
        FairingBlock block = FairingCut.cut(Boats.prismaticV(20), BODY, wish(Planform.NACA_00XX, 0.06, 0), 3, 0.5);
        assertEquals(0, block.axis().distance(Vector3D.of(0, 0, 1)), 1e-12);
        assertEquals(0.022 / Math.cos(Math.toRadians(20)), block.stemHole().orElseThrow().major(), 1e-12);
        assertEquals(20, block.stemHole().orElseThrow().lean().degrees(), 1e-9);
        // on the footprint's template, too
        double wide = template(block, "fairing-footprint").openings().get(0).stream().mapToDouble(FlatPoint::v).max().orElseThrow();
        assertEquals(0.011 / Math.cos(Math.toRadians(20)), wide, 1e-4);
        assertEquals(0, template(block, "fairing-footprint").stretch(), 1e-9);
    }

    /** A sleeve for a stem of 20 mm: 20 + 1.5 + 2 x 3 = 27.5, the next saw is 29; a tube from the body's top to the inner block's. */
    @Test
    void exact_sleeve() throws CannotBeBuilt {
        FairingWish wish = wish(Planform.NACA_00XX, 0.06, 0);
        FairingBlock block = FairingCut.cut(Boats.prismaticV(20), BODY, wish.through(wish.throughHull().sleeved(0.003)), 3, 0.5);
        double high = block.stemNeeded().orElseThrow() - ThroughHullWish.NUT;
        double tube = Math.PI / 4 * (0.029 * 0.029 - 0.0215 * 0.0215) * high;
        assertEquals(tube, solid(block, "sleeve").volume(), 1e-3 * tube);
        assertEquals(0.029 / Math.cos(Math.toRadians(20)), block.stemHole().orElseThrow().major(), 1e-12);
        assertEquals(0.00375, block.sleeve(), 1e-12);
    }

    /** Every 25 mm, and on the wedge the rise of each row is its breadth by the tangent. */
    @Test
    void exact_heights() throws CannotBeBuilt {
        FairingBlock block = FairingCut.cut(Boats.prismaticV(20), BODY, wish(Planform.NACA_00XX, 0.06, 0), 3, 0.5);
        assertEquals((int) Math.floor(block.length() / 0.025), block.heights().size(), 1);
        for (HeightRow row : block.heights()) {
            assertEquals(2 * row.halfBreadth() * Math.tan(Math.toRadians(20)), row.starboard() - row.port(), 1e-9);
            assertEquals(0.06, row.middle(), 1e-9);
        }
    }

    /** By default the least whole millimetre that takes the body in and leaves the low side. */
    @Test
    void law_defaultHeightIsTheLeast() throws CannotBeBuilt {
        Hull hull = Boats.thirtyNineFeet();
        FairingBlock block = FairingCut.cut(hull, BODY, wish(Planform.NACA_00XX, 0, 1), 8, 0.42);
        assertTrue(block.low() >= 0.006 && block.roof() >= 0.005 - 1e-9);
        FairingBlock same = FairingCut.cut(hull, BODY, wish(Planform.NACA_00XX, block.height(), 1), 8, 0.42);
        assertEquals(block.height(), same.height(), 1e-12);
        assertThrows(CannotBeBuilt.class, () -> FairingCut.cut(hull, BODY, wish(Planform.NACA_00XX, block.height() - 0.0012, 1), 8, 0.42));
        for (NamedSolid part : block.solids()) {
            assertEquals(0, SelfCrossing.count(part.solid()), part.name());
        }
    }

    @Test
    void law_boltAndPinStandClear() throws CannotBeBuilt {
        for (Planform planform : Planform.values()) {
            FairingBlock block = FairingCut.cut(Boats.prismaticV(15), BODY, wish(planform, 0, 1), 3, 0.5);
            Loop bolt = Loop.circle(block.bolt(), 0, block.boltHole() / 2, 1e-4);
            Loop pin = Loop.circle(block.pin(), 0, block.boltHole() / 2, 1e-4);
            Loop outline = planform.loop(block.length(), block.width(), 1e-4, 0.02);
            Loop recess = new BodyOutline(0.101, 0.081, 0.0225).loop(1e-4, 0.02);
            assertTrue(outline.clears(bolt, 0.006) && outline.clears(pin, 0.006) && outline.clears(recess, 0.006));
            assertTrue(recess.standsClearOf(bolt, 0.006) && recess.standsClearOf(pin, 0.006));
        }
    }

    /** Slim blocks, whose noses run out over more, begin to boil later; the length told for a speed is the one that boils there. */
    @Test
    void law_slimBlocksBoilLater() throws CannotBeBuilt {
        Inception water = new Inception(Water.sea(15), 0);
        FairingBlock block = FairingCut.cut(Boats.prismaticV(15), BODY, wish(Planform.NACA_00XX, 0, 1), 3, 0.5);
        FairingWish slim = new FairingWish(Planform.NACA_00XX, 6, OptionalDouble.empty(), Angle.ofDegrees(1), Angle.ofDegrees(0), ThroughHullWish.of(Optional.empty()));
        assertTrue(FairingCut.cut(Boats.prismaticV(15), BODY, slim, 3, 0.5).boilsAt(water) > block.boilsAt(water));
        assertEquals(block.nose().length(), block.noseFor(block.boilsAt(water), water).orElseThrow(), 2e-5);
        assertTrue(block.noseFor(1.2 * block.boilsAt(water), water).orElseThrow() > 1.2 * block.nose().length());
        assertTrue(block.noseFor(100, water).isEmpty());
    }

    /** A nose as long as high is a quarter circle: at 60 deg from the crest it has fallen by half its height. */
    @Test
    void exact_roundNose() {
        NoseRound nose = new NoseRound(0.05, 0.05);
        assertEquals(0.025, nose.back(0.05 * (1 - Math.sin(Math.toRadians(60)))), 1e-12);
        assertEquals(0.05, nose.back(0), 1e-12);
        assertEquals(0, nose.back(0.06), 0);
    }

    /** A layer that is thicker than the body needs raises the face to the next whole millimetre; a height that is wished stays. */
    @Test
    void law_layerRaisesTheFace() throws CannotBeBuilt {
        FairingWish wish = wish(Planform.NACA_00XX, 0, 1);
        double least = FairingCut.cut(Boats.prismaticV(15), BODY, wish, 3, 0.5).height();
        assertEquals(least, FairingCut.cut(Boats.prismaticV(15), BODY, wish, least / 2, 3, 0.5).height(), 0);
        assertEquals(0.061, FairingCut.cut(Boats.prismaticV(15), BODY, wish, 0.0603, 3, 0.5).height(), 1e-12);
        assertEquals(0.055, FairingCut.cut(Boats.prismaticV(15), BODY, wish(Planform.NACA_00XX, 0.055, 1), 0.0603, 3, 0.5).height(), 1e-12);
        assertThrows(CannotBeBuilt.class, () -> FairingCut.cut(Boats.prismaticV(15), BODY, wish, 0.5, 3, 0.5));
    }

    @Test
    void refusalsSayWhatWouldWork() {
        refused("at a height of 20.0 mm the block does not hold the body, 28.0 mm high, and 6.0 mm at its low side; what works: a height of 48 mm or more",
            wish(Planform.NACA_00XX, 0.02, 0), 0.5);
        refused("the face's after edge 3.0 deg lower than the run of the bottom; what works: 2.0 deg; from 0.0 to 2.0 deg", wish(Planform.NACA_00XX, 0, 3), 0.5);
        refused("the face's after edge -1.0 deg lower than the run of the bottom; what works: 0.0 deg; from 0.0 to 2.0 deg", wish(Planform.NACA_00XX, 0, -1), 0.5);
    }

    private static void refused(String message, FairingWish wish, double y) {
        assertEquals(message, assertThrows(CannotBeBuilt.class, () -> FairingCut.cut(Boats.prismaticV(20), BODY, wish, 3, y)).getMessage());
    }
}
