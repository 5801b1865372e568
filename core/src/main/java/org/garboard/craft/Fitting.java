package org.garboard.craft;

import java.util.List;
import java.util.Optional;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;

/**
 * A fitting on the bottom or an opening in it. It covers a rectangle in plan, its sides fore and aft and athwart.
 *
 * @param place of its middle
 * @param length fore and aft [m]
 * @param width athwartships, level [m]
 * @param height how far it stands out of the skin [m], 0 for an opening; none where it is not told
 */
public record Fitting(String name, Type type, Sides sides, FeaturePlace place, double length, double width,
                      Optional<Double> height) implements Feature {

    /** What it is. */
    public enum Type {
        INTAKE("intake"),
        SCOOP("scoop"),
        JET_INTAKE("jet's intake"),
        TUNNEL("thruster tunnel"),
        ANODE("anode"),
        DRAIN("drain"),
        SHAFT("shaft"),
        STRUT("strut"),
        PROPELLER("propeller"),
        /** A leg through the bottom with its propeller; as wide as the propeller. */
        POD("pod"),
        RUDDER("rudder"),
        SKEG("skeg"),
        FIN("fin"),
        STABILISER("stabiliser"),
        BILGE_KEEL("bilge keel"),
        KEEL_COOLER("keel cooler"),
        TRANSDUCER("other transducer"),
        /** Bonded to the inside of the skin: nothing of it is outside. */
        IN_HULL_TRANSDUCER("transducer inside the skin"),
        TRIM_TAB("trim tab");

        private final String words;

        Type(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    @Override
    public String kind() {
        return type.words();
    }

    @Override
    public List<FeaturePlace> places() {
        return List.of(place);
    }

    @Override
    public List<Quad> cover(Hull hull) {
        double x = place.x(hull);
        double y = place.y(hull);
        double l = length / 2;
        double w = width / 2;
        return List.of(Quad.of(x - l, y - w, x + l, y - w, x + l, y + w, x - l, y + w));
    }
}
