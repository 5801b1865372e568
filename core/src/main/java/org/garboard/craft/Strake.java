package org.garboard.craft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;

/**
 * A lifting strake: a narrow ledge along the bottom. It covers the skin from place to place, straight in plan.
 *
 * @param places along the middle of its width, from forward aft or from aft forward, two at least
 * @param width athwartships, level [m]
 * @param depth how far it stands out of the skin [m]
 */
public record Strake(String name, Sides sides, List<FeaturePlace> places, double width, double depth) implements Feature {
    static final String KIND = "lifting strake";

    public Strake {
        places = List.copyOf(places);
        if (places.size() < 2) {
            throw new IllegalArgumentException("strake " + name + " has " + places.size() + " place(s); two are the least");
        }
    }

    @Override
    public String kind() {
        return KIND;
    }

    @Override
    public Optional<Double> height() {
        return Optional.of(depth);
    }

    @Override
    public List<Quad> cover(Hull hull) {
        List<Quad> cover = new ArrayList<>();
        for (int i = 1; i < places.size(); i++) {
            double x0 = places.get(i - 1).x(hull);
            double y0 = places.get(i - 1).y(hull);
            double x1 = places.get(i).x(hull);
            double y1 = places.get(i).y(hull);
            cover.add(Quad.of(x0, y0 - width / 2, x1, y1 - width / 2, x1, y1 + width / 2, x0, y0 + width / 2));
        }
        return cover;
    }
}
