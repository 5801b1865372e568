package org.garboard.survey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.offsets.LineKind;

/**
 * The parts of a boat that a finding may name: bottom, topsides, transom, stem, each line of her hull by its name, each strake
 * and fitting by its name, and "general" for what is said of the boat as a whole and is marked nowhere.
 */
final class Regions {

    /** A part of the boat. */
    sealed interface Region {

        /** On starboard at x, or in its middle; none where it does not reach. */
        Optional<Spot> spot(OptionalDouble x);

        /** On which sides it lies; none for what lies on the centreline or nowhere. */
        Optional<Sides> sides();
    }

    /** Said of the boat as a whole. */
    record General() implements Region {
        @Override
        public Optional<Spot> spot(OptionalDouble x) {
            return Optional.empty();
        }

        @Override
        public Optional<Sides> sides() {
            return Optional.empty();
        }
    }

    /** A face of the skin. */
    record Skin(Hull hull, Spot.Face face) implements Region {
        @Override
        public Optional<Spot> spot(OptionalDouble x) {
            SectionWalk walk = new SectionWalk(hull, x.orElse((hull.firstSection() + hull.bottomEnd()) / 2));
            return walk.at(face == Spot.Face.BOTTOM ? walk.bottom() / 2 : (walk.bottom() + walk.whole()) / 2);
        }

        @Override
        public Optional<Sides> sides() {
            return Optional.of(Sides.BOTH);
        }
    }

    /** A line along the hull; keel line, and stem and transom, which are met where the keel line ends, lie on the centreline. */
    record Line(Hull hull, HullLine line, double middle) implements Region {
        @Override
        public Optional<Spot> spot(OptionalDouble along) {
            double x = along.orElse(middle);
            if (x < line.forwardEnd() || x > line.afterEnd()) {
                return Optional.empty();
            }
            double y = onCentreline() ? 0 : line.y(x);
            boolean bottom = hull.lines().indexOf(line) <= hull.lines().indexOf(hull.bottomEdge());
            return Optional.of(new Spot(bottom ? Spot.Face.BOTTOM : Spot.Face.TOPSIDES, Vector3D.of(x, y, line.z(x)), Double.NaN));
        }

        private boolean onCentreline() {
            return line.kind() == LineKind.KEEL;
        }

        @Override
        public Optional<Sides> sides() {
            return onCentreline() ? Optional.empty() : Optional.of(Sides.BOTH);
        }
    }

    /** A strake or a fitting. */
    record OnBottom(Hull hull, LaidFeature feature) implements Region {
        @Override
        public Optional<Spot> spot(OptionalDouble x) {
            Quad piece = feature.cover().get(feature.cover().size() / 2);
            double middle = 0;
            double out = 0;
            for (int i = 0; i < Quad.CORNERS; i++) {
                middle += piece.x(i) / Quad.CORNERS;
                out += piece.y(i) / Quad.CORNERS;
            }
            double z = hull.height(middle, out);
            // what stands out beyond the skin is marked at the height of the keel line there
            return x.isPresent() ? Optional.empty()
                : Optional.of(new Spot(Spot.Face.BOTTOM, Vector3D.of(middle, out, z == z ? z : hull.keel().z(Math.min(middle, hull.foot()))), Double.NaN));
        }

        @Override
        public Optional<Sides> sides() {
            boolean across = feature.sides() == Sides.BOTH && feature.cover().stream().anyMatch(quad -> Math.min(quad.y(0), quad.y(1)) < 0);
            return across ? Optional.empty() : Optional.of(feature.sides());
        }
    }

    private final Map<String, Region> regions = new LinkedHashMap<>();

    Regions(Hull hull, List<LaidFeature> features) {
        put("bottom", new Skin(hull, Spot.Face.BOTTOM));
        if (hull.bottomEdge() != hull.lines().get(hull.lines().size() - 1)) {
            put("topsides", new Skin(hull, Spot.Face.TOPSIDES));
        }
        put("transom", new Line(hull, hull.keel(), hull.foot()));
        put("stem", new Line(hull, hull.keel(), hull.keel().forwardEnd()));
        for (HullLine line : hull.lines()) {
            put(line.name(), new Line(hull, line, (line.forwardEnd() + line.afterEnd()) / 2));
        }
        features.forEach(feature -> put(feature.name(), new OnBottom(hull, feature)));
        put("general", new General());
    }

    private void put(String name, Region region) {
        regions.putIfAbsent(key(name), region);
    }

    Optional<Region> named(String name) {
        return Optional.ofNullable(regions.get(key(name)));
    }

    /** Their names, for a message. */
    String words() {
        return String.join(", ", new ArrayList<>(regions.keySet()));
    }

    private static String key(String name) {
        return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}
