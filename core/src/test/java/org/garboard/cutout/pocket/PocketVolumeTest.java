package org.garboard.cutout.pocket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.garboard.craft.Transducer;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketOutcome;
import org.garboard.hull.Hull;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.Blend;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.mount.pocket.Walls;
import org.garboard.siting.Boats;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Volumes of pockets in flat, V and cylindrical bottoms against closed forms, at the chord error that jobs use. */
class PocketVolumeTest {
    private static final double L = 0.300;
    private static final double W = 0.160;
    private static final double H = 0.060;
    private static final double DRAFT = Math.toRadians(5);
    private static final double PART = 1e-3;

    private static Pocket built(Hull hull, double depth, double ratio, double floorRadius, double edgeRadius) {
        PocketMake make = PocketMake.USUAL.with(new Walls(Angle.ofRadians(DRAFT), floorRadius, edgeRadius, Optional.empty()))
            .with(new Blend(3, Optional.empty()));
        Transducer body = new Transducer("test body", L, W, H, 0, 0.02, Angle.ofDegrees(0));
        return assertInstanceOf(PocketOutcome.Built.class,
            KeelPocketCut.cut(hull, body, new PocketWish(OptionalDouble.of(depth), 0, ratio, make), 3)).pocket();
    }

    /** Area of a rectangle grown by d, round at the corners, that lies within b of its long axis. */
    private static double area(double d, double b) {
        double straight = 2 * Math.min(b, W / 2) * (L + 2 * d);
        double over = Math.min(d, Math.max(0, b - W / 2));
        // under a quarter of a circle of radius d, from 0 to over
        double quarter = d > 0 ? (over * Math.sqrt(d * d - over * over) + d * d * Math.asin(over / d)) / 2 : 0;
        return straight + 2 * (L * over + 2 * quarter);
    }

    /** Simpson's rule. */
    private static double integral(double from, double to, DoubleUnaryOperator f) {
        int parts = 20000;
        double sum = f.applyAsDouble(from) + f.applyAsDouble(to);
        for (int i = 1; i < parts; i++) {
            sum += f.applyAsDouble(from + (to - from) * i / parts) * (i % 2 == 0 ? 2 : 4);
        }
        return sum * (to - from) / parts / 3;
    }

    /** Between floor and skin, the walls falling to it; half-breadth of the skin at a height. */
    private static double drafted(double depth, double from, DoubleUnaryOperator halfBreadth) {
        return integral(from, depth, w -> area((depth - w) * Math.tan(DRAFT), halfBreadth.applyAsDouble(w)));
    }

    @Test
    void exact_flatBottom() {
        double exact = L * W * 0.06 + (L + W) * 0.06 * 0.06 * Math.tan(DRAFT)
            + Math.PI / 3 * Math.pow(0.06, 3) * Math.pow(Math.tan(DRAFT), 2);
        assertEquals(exact, drafted(0.06, 0, w -> 1), 1e-9);
        Pocket pocket = built(Boats.prismaticV(0), 0.06, 0, 0, 0);
        assertEquals(exact, pocket.volume(), PART * exact);
        assertEquals(area(0.06 * Math.tan(DRAFT), 1), pocket.openingArea(), PART * pocket.openingArea());
    }

    @Test
    void exact_vBottom() {
        double t = Math.tan(Math.toRadians(20));
        double exact = drafted(0.1, 0, w -> w / t);
        Pocket pocket = built(Boats.prismaticV(20), 0.1, 0, 0, 0);
        assertEquals(exact, pocket.volume(), PART * exact);
    }

    @Test
    void exact_cylindricalBottom() {
        double r = 1.2;
        double exact = drafted(0.1, 0, w -> Math.sqrt(r * r - (r - w) * (r - w)));
        Pocket pocket = built(Boats.cylinder(r), 0.1, 0, 0, 0);
        assertEquals(exact, pocket.volume(), PART * exact);
    }

    /**
     * Fillet and edge turn through a = 85 deg. Each leaves between its sharp corner and its arc the area
     * r^2 (tan(a / 2) - a / 2), swept round the outline on the path of its centroid (Pappus), here by the outline grown
     * by the distance of that centroid. The fillet takes from the room, the edge adds to it.
     */
    @Test
    void exact_radii() {
        double fall = 0.06;
        double a = Math.PI / 2 - DRAFT;
        double rf = 0.010;
        double re = 0.005;
        double tan = Math.tan(a / 2);
        // sharp walls begin rf tan(a/2) outside the floor's flat
        double start = rf * tan;
        double sharp = integral(0, fall, s -> area(start + s * Math.tan(DRAFT), 1));
        double fillet = sweep(rf, a, start, -1);
        double edge = sweep(re, a, start + fall * Math.tan(DRAFT), 1);
        Pocket pocket = built(Boats.prismaticV(0), fall, 0, rf, re);
        assertEquals(sharp - fillet + edge, pocket.volume(), PART * pocket.volume());
    }

    /** Area beside an arc times the way of its centroid, which lies on the bisector of the corner. */
    private static double sweep(double r, double a, double corner, int outward) {
        double area = r * r * (Math.tan(a / 2) - a / 2);
        double kite = r * r * Math.tan(a / 2);
        // two right triangles with corners middle, tangent point, sharp corner
        double kiteMiddle = (r * Math.cos(a / 2) + r / Math.cos(a / 2)) / 3;
        double sector = r * r * a / 2;
        double sectorMiddle = 2 * r * Math.sin(a / 2) / (3 * a / 2);
        double middle = (kite * kiteMiddle - sector * sectorMiddle) / area;
        double fromCorner = r / Math.cos(a / 2) - middle;
        double d = corner + outward * fromCorner * Math.sin(a / 2);
        return area * (2 * (L + W) + 2 * Math.PI * d);
    }

    /**
     * Face f deep over a flat bottom. The blend's level lines are the mouth grown by shares t of f R fore and aft and
     * f S to the sides; it holds f times the mean of their areas, weighted by -B'(t) = 30 t^2 (1 - t)^2, whose first
     * moment is 1/2 and whose second is 2/7.
     */
    @Test
    void exact_blendsOnAFlatBottom() {
        double f = 0.03;
        double ratio = 8;
        double side = 3;
        double d = H * Math.tan(DRAFT);
        double box = integral(0, H, s -> area(s * Math.tan(DRAFT), 1));
        // rounded rectangle with elliptical corners a = d + t f R, b = d + t f S
        double constant = L * W + 2 * L * d + 2 * W * d + Math.PI * d * d;
        double first = f * (2 * L * side + 2 * W * ratio + Math.PI * d * (ratio + side));
        double second = Math.PI * f * f * ratio * side;
        double exact = box + f * (constant + first / 2 + second * 2 / 7);
        Pocket pocket = built(Boats.prismaticV(0), H + f, ratio, 0, 0);
        assertEquals(exact, pocket.volume(), PART * exact);
        assertEquals(f * ratio + d, pocket.foreRamp(), 1e-9);
        assertEquals(constant + first + second, pocket.openingArea(), PART * pocket.openingArea());
    }

    /** Face flush at the floor's edges: each ramp holds half of height times length, (f - t y)^2 R / 2 over the width. */
    @Test
    void exact_rampsOnAVBottom() {
        double t = Math.tan(Math.toRadians(20));
        double f = W / 2 * t;
        double ratio = 8;
        double above = drafted(H + f, f, w -> w / t);
        double below = f * f / t * (L + 2 * H * Math.tan(DRAFT));
        double ramps = 2 * 2 * ratio / 2 * f * f * f / t / 3;
        Pocket pocket = built(Boats.prismaticV(20), H + f, ratio, 0, 0);
        assertEquals(above + below + ramps, pocket.volume(), PART * pocket.volume());
        assertEquals(f * ratio + H * Math.tan(DRAFT), pocket.aftRamp(), 1e-6);
    }
}
