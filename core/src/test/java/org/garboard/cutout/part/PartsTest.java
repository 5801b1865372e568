package org.garboard.cutout.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.cutout.skin.FormSkin;
import org.garboard.solid.Loop;
import org.garboard.solid.Solid;
import org.garboard.units.Angle;
import org.garboard.craft.StemHole;
import org.junit.jupiter.api.Test;

/** Pieces of skin, bodies and holes against closed forms. */
class PartsTest {
    private static final double CHORD = 1e-4;

    @Test
    void exact_outlineHasItsOwnArea() {
        for (double radius : new double[] {0, 0.01, 0.038}) {
            BodyOutline outline = new BodyOutline(0.096, 0.076, radius);
            assertEquals(outline.area(), outline.loop(CHORD, 0.02).area(), 1e-12);
        }
        assertEquals(Math.PI * 0.04 * 0.04, new BodyOutline(0.08, 0.08, 0.04).loop(CHORD, 1).area(), 1e-12);
    }

    /** Prism and stem: faces, walls and volume. */
    @Test
    void exact_bodyAndStem() throws CannotBeBuilt {
        Transducer body = new Transducer("test body", 0.096, 0.076, 0.028, 0.02, 0.02, Angle.ofDegrees(0));
        AxisFrame frame = AxisFrame.squareToSkin(FormSkin.plane(0.02, 0.3), 4, 0.4);
        Solid solid = BodyEnvelope.of(frame, body, 0.001, 0.1, CHORD);
        double plan = BodyOutline.of(body).area();
        assertEquals(plan * 0.028 + Math.PI * 0.01 * 0.01 * (0.099 - 0.028), solid.volume(), 1e-12);
        assertEquals(2, solid.eulerCharacteristic());
    }

    /** Skin on a slope, cut along a plumb axis: plan area over cos of the lean times the thickness; hole through it. */
    @Test
    void exact_leaningHoleThroughAPlate() {
        double tan = Math.tan(Math.toRadians(20));
        AxisFrame frame = AxisFrame.levelAthwart(FormSkin.plane(0, tan), 2, 0.5, 0, 0);
        Loop outer = new BodyOutline(0.2, 0.15, 0.02).loop(CHORD, 0.1);
        Loop hole = Loop.circle(0.01, -0.02, 0.016, CHORD);
        Solid plate = SkinPlate.skin(frame, outer, List.of(hole), 0.1, 0.012);
        double plan = new BodyOutline(0.2, 0.15, 0.02).area() - Math.PI * 0.016 * 0.016;
        assertEquals(plan / Math.cos(Math.toRadians(20)) * 0.012, plate.volume(), 1e-12);
        assertEquals(0, plate.eulerCharacteristic());
    }

    /** A sector of a tube's wall: (2 a / 2)(R^2 - (R - t)^2) for half-angle a, square to the skin at its middle only. */
    @Test
    void exact_skinOfACylinder() {
        double r = 0.8;
        double t = 0.015;
        AxisFrame frame = AxisFrame.squareToSkin(FormSkin.cylinder(r, 0), 1, 0);
        double half = 0.1;
        Loop outer = new BodyOutline(0.3, 2 * half, 0).loop(1e-5, 0.02);
        Solid plate = SkinPlate.skin(frame, outer, List.of(), 0.01, t);
        double area = under(r, half) - under(r - t, half);
        assertEquals(0.3 * (area), plate.volume(), 1e-3 * plate.volume());
        assertEquals(2, plate.eulerCharacteristic());
    }

    /** Area under a circle's arc from -h to h. */
    private static double under(double r, double h) {
        return h * Math.sqrt(r * r - h * h) + r * r * Math.asin(h / r);
    }

    /** A plumb hole in a skin of deadrise b: the ellipse is longer by 1 / cos b, square to the keel. */
    @Test
    void exact_ellipseOnASlope() {
        double b = Math.toRadians(20);
        SkinEllipse starboard = SkinEllipse.of(0.032, Vector3D.of(0, 0, 1), Vector3D.of(0, -Math.sin(b), Math.cos(b)));
        assertEquals(0.032, starboard.minor(), 1e-15);
        assertEquals(0.032 / Math.cos(b), starboard.major(), 1e-15);
        assertEquals(20, starboard.lean().degrees(), 1e-9);
        assertEquals(90, Math.abs(starboard.direction().degrees()), 1e-9);
        double s = 0.1;
        SkinEllipse sloping = SkinEllipse.of(0.032, Vector3D.of(0, 0, 1), Vector3D.of(-s, 0, 1).normalize());
        assertEquals(0.032 * Math.sqrt(1 + s * s), sloping.major(), 1e-15);
        assertEquals(0, sloping.direction().degrees(), 1e-9);
        assertEquals(0.032, SkinEllipse.of(0.032, Vector3D.of(0, 0, 1), Vector3D.of(0, 0, 1)).major(), 1e-15);
        // rising aft and outboard alike: half-way between aft and the side on which it lies
        Vector3D toStarboard = Vector3D.of(-s, -s, 1).normalize();
        Vector3D toPort = Vector3D.of(-s, s, 1).normalize();
        double across = SkinEllipse.of(0.032, Vector3D.of(0, 0, 1), toStarboard).direction().degrees();
        assertEquals(Math.toDegrees(Math.acos(Math.sqrt((1 + 2 * s * s) / (2 + 2 * s * s)))), across, 1e-9);
        assertEquals(-across, SkinEllipse.of(0.032, Vector3D.of(0, 0, 1), toPort).direction().degrees(), 1e-9);
    }

    @Test
    void exact_stemHoles() {
        assertEquals(0.022, StemHole.diameter(0.020), 1e-12);
        assertEquals(0.020, StemHole.diameter(0.0185), 1e-12);
        assertEquals(0.035, StemHole.diameter(0.032), 1e-12);
        assertEquals(0.165, StemHole.diameter(0.160), 1e-12);
    }
}
