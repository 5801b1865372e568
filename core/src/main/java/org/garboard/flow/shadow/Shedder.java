package org.garboard.flow.shadow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.craft.Feature;
import org.garboard.craft.Fitting;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.craft.Strake;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;

/**
 * A feature of the bottom as the water meets it.
 *
 * @param name as it is to be told
 * @param sheds how its wake spreads
 * @param sides on which it is
 * @param cover what it covers in plan, hull frame [m], drawn to starboard whatever its side
 * @param width across the flow; of a propeller, its diameter [m]
 */
public record Shedder(String name, Sheds sheds, Sides sides, List<Quad> cover, double width) {
    public Shedder {
        cover = List.copyOf(cover);
        if (cover.isEmpty()) {
            throw new IllegalArgumentException(name + " covers nothing");
        }
        if (!(width > 0 && Double.isFinite(width))) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "%s is %s m wide: it must be more than 0", name, width));
        }
    }

    private static Sheds sheds(Fitting.Type type, Optional<Double> stands) {
        return switch (type) {
            case IN_HULL_TRANSDUCER -> Sheds.NOTHING;
            case PROPELLER, POD -> Sheds.PROPELLER;
            case TUNNEL -> Sheds.TUNNEL;
            case SCOOP, SHAFT, STRUT, RUDDER, TRIM_TAB, SKEG, FIN, STABILISER, BILGE_KEEL -> Sheds.PROUD;
            case INTAKE, JET_INTAKE, ANODE, DRAIN, TRANSDUCER, KEEL_COOLER ->
                stands.filter(height -> height <= Sheds.FLUSH_HEIGHT).isPresent() ? Sheds.FLUSH : Sheds.PROUD;
        };
    }

    /** A feature as it is laid on the hull, a strake of the table say. A fitting whose height is not told is taken to stand out. */
    public static Shedder of(LaidFeature feature) {
        double widest = 0;
        for (Quad quad : feature.cover()) {
            widest = Math.max(widest, Math.max(Math.abs(quad.y(3) - quad.y(0)), Math.abs(quad.y(2) - quad.y(1))));
        }
        Sheds sheds = Arrays.stream(Fitting.Type.values()).filter(type -> type.words().equals(feature.kind())).findFirst()
            .map(type -> sheds(type, feature.height())).orElse(Sheds.STRAKE);
        return new Shedder(feature.name(), sheds, feature.sides(), feature.cover(), widest);
    }

    /** Something round. */
    public static Shedder point(String name, Sheds sheds, Sides sides, double x, double y, double diameter) {
        return box(name, sheds, sides, x, y, diameter, diameter);
    }

    /** A box about its middle. */
    public static Shedder box(String name, Sheds sheds, Sides sides, double x, double y, double length, double breadth) {
        double l = length / 2;
        double b = breadth / 2;
        return new Shedder(name, sheds, sides, List.of(Quad.of(x - l, y - b, x + l, y - b, x + l, y + b, x - l, y + b)), breadth);
    }

    /** Something narrow from place to place: a step from keel to chine, a seam. */
    public static Shedder along(String name, Sheds sheds, Sides sides, List<Vector2D> places, double width) {
        if (places.size() < 2) {
            throw new IllegalArgumentException(name + " has " + places.size() + " place(s); two are the least");
        }
        List<Quad> cover = new ArrayList<>();
        for (int i = 1; i < places.size(); i++) {
            Vector2D one = places.get(i - 1);
            Vector2D other = places.get(i);
            cover.add(Quad.of(one.getX(), one.getY(), other.getX(), other.getY(), other.getX(), other.getY(), one.getX(), one.getY()));
        }
        return new Shedder(name, sheds, sides, cover, width);
    }

    double aftermost() {
        return cover.stream().mapToDouble(quad -> Math.max(Math.max(quad.x(0), quad.x(1)), Math.max(quad.x(2), quad.x(3)))).max().orElseThrow();
    }

    double foremost() {
        return cover.stream().mapToDouble(quad -> Math.min(Math.min(quad.x(0), quad.x(1)), Math.min(quad.x(2), quad.x(3)))).min().orElseThrow();
    }
}
