package org.garboard.cutout.inhull;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.SelfCrossing;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.template.Template;
import org.garboard.hull.Hull;
import org.garboard.mount.InHull;
import org.garboard.siting.Boats;
import org.garboard.skin.Layup;
import org.garboard.solid.Solid;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Baths on flat, V and cylindrical bottoms against closed forms. */
class BathCutTest {
    private static final double T = 0.012;
    private static final double ROOM = InHull.BATH - BathWish.WALL;
    private static final Transducer BODY = new Transducer("test body", 0.096, 0.076, 0.028, 0.020, 0, Angle.ofDegrees(0));

    private static HullBath cut(Hull hull, double y) throws CannotBeBuilt {
        return BathCut.cut(hull, BODY, BathWish.of(Optional.of(new Layup.Whole(T))), 3, y);
    }

    private static Solid solid(HullBath bath, String name) {
        return bath.solids().stream().filter(part -> part.name().equals(name)).map(NamedSolid::solid).findFirst().orElseThrow();
    }

    private static Template template(HullBath bath, String name) {
        return bath.templates().stream().filter(part -> part.name().equals(name)).findFirst().orElseThrow();
    }

    private static double area(double around) {
        return new BodyOutline(0.096 + 2 * around, 0.076 + 2 * around, 0.020 + around).area();
    }

    /** On a plane the ring's mean height is the brim over the middle; the inside lies T / cos of the deadrise above the outside. */
    @Test
    void exact_flatAndV() throws CannotBeBuilt {
        for (double deadrise : new double[] {0, 20}) {
            for (double y : new double[] {0.5, -0.5}) {
                HullBath bath = cut(Boats.prismaticV(deadrise), y);
                double tangent = Math.tan(Math.toRadians(deadrise));
                assertEquals(0.5 * tangent + T / Math.cos(Math.toRadians(deadrise)), bath.site().getZ(), 1e-9);
                double half = 0.038;
                assertEquals(half * tangent + 0.002, bath.face(), 1e-9);
                assertEquals(2 * half * tangent + 0.002, bath.under().greatest(), 1e-9);
                double ring = (area(InHull.BATH) - area(ROOM)) * bath.brim();
                assertEquals(ring, solid(bath, "bath").volume(), 1e-3 * ring);
                assertEquals(0, solid(bath, "bath").eulerCharacteristic());
                double plate = area(InHull.BATH) * T / Math.cos(Math.toRadians(deadrise));
                assertEquals(plate, solid(bath, "hull-skin").volume(), 1e-3 * plate);
                double liquid = area(ROOM) * bath.level() - area(0) * Math.min(0.028, bath.level() - bath.face());
                assertEquals(1000 * liquid, bath.litres(), 1e-3 * 1000 * liquid);
                assertEquals(bath.brim() - (half + InHull.BATH) * tangent, bath.low(), 1e-5);
                assertEquals(bath.brim() + (half + InHull.BATH) * tangent, bath.high(), 1e-5);
                // it stands on its brim: thicker towards the keel
                assertEquals(y > 0 ? -deadrise : deadrise, bath.saw().across().degrees(), 1e-6);
                assertEquals(0, bath.saw().left(), 1e-9);
            }
        }
    }

    /** At the heel asked the liquid, turned about its middle, still covers the face and does not reach the brim. */
    @Test
    void exact_level() throws CannotBeBuilt {
        HullBath bath = cut(Boats.prismaticV(0), 0.5);
        double reach = Math.hypot(0.096 + 2 * ROOM, 0.076 + 2 * ROOM) / 2 * Math.tan(Math.toRadians(15));
        assertEquals(bath.face() + 0.010 + reach, bath.level(), 1e-9);
        assertEquals(bath.level() + reach, bath.brim(), 1e-9);
    }

    /** The footprint on a V is as wide along the skin as the bath is level, over the cosine; laid flat without stretch. */
    @Test
    void exact_footprintOnV() throws CannotBeBuilt {
        Template foot = template(cut(Boats.prismaticV(20), 0.5), "bath-footprint");
        double wide = foot.outline().stream().mapToDouble(FlatPoint::v).max().orElseThrow();
        assertEquals((0.038 + InHull.BATH) / Math.cos(Math.toRadians(20)), wide, 1e-6);
        assertEquals(0, foot.stretch(), 1e-9);
        assertEquals(Template.Up.INSIDE, foot.up());
    }

    /** On a V the line fore and aft runs along the template, the station's square to it. */
    @Test
    void exact_crossOnV() throws CannotBeBuilt {
        Template foot = template(cut(Boats.prismaticV(20), 0.5), "bath-footprint");
        for (FlatPoint place : foot.marks().get(0).line()) {
            assertEquals(0, place.v(), 1e-8);
        }
        for (FlatPoint place : foot.marks().get(1).line()) {
            assertEquals(0, place.u(), 1e-8);
        }
    }

    /** Inside a cylinder of radius R the skin is one of radius R - T: the footprint is its arcs. */
    @Test
    void exact_footprintInCylinder() throws CannotBeBuilt {
        double radius = 1.2 - T;
        Hull hull = Boats.cylinder(1.2);
        HullBath bath = cut(hull, 0.3);
        double y = bath.site().getY();
        // at the same y the inside of the cylinder lies at its own angle
        double middle = Math.asin(y / radius);
        double outer = Math.asin((y + 0.038 + InHull.BATH) / radius);
        double wide = template(bath, "bath-footprint").outline().stream().mapToDouble(FlatPoint::v).max().orElseThrow();
        assertEquals(radius * (outer - middle), wide, 1e-5);
        assertTrue(template(bath, "bath-footprint").stretch() < 2e-5);
    }

    /** The wall unrolled: as long as the ring is round, as high as it stands at bow and stern, highest to the keel on a V. */
    @Test
    void exact_wallUnrolled() throws CannotBeBuilt {
        HullBath bath = cut(Boats.prismaticV(20), 0.5);
        Template wall = template(bath, "bath-wall");
        BodyOutline ring = new BodyOutline(0.096 + 2 * InHull.BATH, 0.076 + 2 * InHull.BATH, 0.020 + InHull.BATH);
        double round = 2 * (ring.length() + ring.width()) - (8 - 2 * Math.PI) * ring.radius();
        double least = wall.outline().stream().mapToDouble(FlatPoint::u).min().orElseThrow();
        double most = wall.outline().stream().mapToDouble(FlatPoint::u).max().orElseThrow();
        assertEquals(round, most - least, 1e-3 * round);
        double low = wall.outline().stream().mapToDouble(FlatPoint::v).min().orElseThrow();
        double brim = wall.outline().stream().mapToDouble(FlatPoint::v).max().orElseThrow();
        assertEquals(bath.high(), brim - low, 1e-5);
        // area of the wall: perimeter times mean height, the plane's being that at the middle
        assertEquals(round * bath.brim(), area(wall), 1e-3 * round * bath.brim());
        // starboard, where the V rises, lies left of the bow
        FlatPoint highestFoot = wall.outline().stream().filter(place -> Math.abs(place.v() - (brim - bath.low())) < 1e-5).findFirst().orElseThrow();
        assertTrue(highestFoot.u() < 0);
    }

    private static double area(Template template) {
        double twice = 0;
        for (int i = 0; i < template.outline().size(); i++) {
            FlatPoint one = template.outline().get(i);
            FlatPoint next = template.outline().get((i + 1) % template.outline().size());
            twice += one.u() * next.v() - next.u() * one.v();
        }
        return Math.abs(twice) / 2;
    }

    /** Starboard and port are mirror images, and on a round bilge everything is sound. */
    @Test
    void law_mirror() throws CannotBeBuilt {
        HullBath starboard = cut(Boats.sphere(4), 0.3);
        HullBath port = cut(Boats.sphere(4), -0.3);
        assertEquals(starboard.litres(), port.litres(), 1e-4 * port.litres());
        assertEquals(starboard.saw().across().radians(), -port.saw().across().radians(), 1e-9);
        for (NamedSolid part : starboard.solids()) {
            assertEquals(0, SelfCrossing.count(part.solid()), part.name());
        }
    }

    /** Without its thickness the skin's outside stands for its inside; no piece of skin is drawn. */
    @Test
    void exact_skinNotTold() throws CannotBeBuilt {
        HullBath bath = BathCut.cut(Boats.prismaticV(20), BODY, BathWish.of(Optional.empty()), 3, 0.5);
        assertEquals(0.5 * Math.tan(Math.toRadians(20)), bath.site().getZ(), 1e-9);
        assertTrue(bath.solids().stream().noneMatch(part -> part.name().equals("hull-skin")));
        assertEquals(cut(Boats.prismaticV(20), 0.5).litres(), bath.litres(), 1e-9);
    }

    @Test
    void refusalsSayWhatWouldWork() {
        refused("the skin under the bath is cored, and no sound comes through a core; what works: solid skin: the core taken out under the whole bath"
            + " and solid laminate laid in its place, told as such", BathWish.of(Optional.of(new Layup.Sandwich(0.004, Layup.Core.FOAM, 0.015, 0.003))));
        refused("a wall of the bath 1.0 mm thick; what works: 2.0 mm; from 2.0 to 12.5 mm", new BathWish(Optional.empty(), 0.001, Angle.ofDegrees(15), 1e-4));
        refused("a bath that stands full to a heel of 45.0 deg; what works: 30 deg; from 0 to 30 deg", new BathWish(Optional.empty(), 0.010, Angle.ofDegrees(45), 1e-4));
    }

    private static void refused(String message, BathWish wish) {
        assertEquals(message, assertThrows(CannotBeBuilt.class, () -> BathCut.cut(Boats.prismaticV(20), BODY, wish, 3, 0.5)).getMessage());
    }
}
