package org.garboard.flow.place;

import java.util.Optional;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.cavitation.Inception;
import org.garboard.flow.cavitation.Suction;
import org.garboard.flow.layer.LayerLaw;
import org.garboard.flow.streams.StreamPoint;
import org.garboard.flow.streams.Streamline;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;

/**
 * Layer and inception at places of one hull in one water.
 *
 * @param law of the layer
 * @param judgedFromKnots speed from which both are judged; below they are reported
 */
public record PlaceInFlow(Hull hull, Water water, LayerLaw law, double judgedFromKnots) {
    public PlaceInFlow {
        if (!(judgedFromKnots >= 0 && Double.isFinite(judgedFromKnots))) {
            throw new IllegalArgumentException("layer and cavitation are judged from " + judgedFromKnots + " knots; it must be 0 or more");
        }
    }

    /** Smooth, turbulent from the start, judged from 8 knots. */
    public static PlaceInFlow usual(Hull hull, Water water) {
        return new PlaceInFlow(hull, water, LayerLaw.USUAL, Standing.USUAL_FROM);
    }

    /** The layer at a place, the water running straight aft from where it begins. */
    public LayerThere layer(Attitude attitude, double x, double y) {
        RunStart start = RunStart.of(hull, attitude, x, y);
        return start instanceof RunStart.At at
            ? grown(at.x(), RunStart.length(hull, at, x, y), at.speed(), attitude.speed()) : new LayerThere.NotKnown(((RunStart.None) start).reason());
    }

    /** The same where the way of the water is known: along a streamline of the boat afloat to where it crosses x. */
    public LayerThere layer(Attitude.Floats attitude, Streamline line, double x) {
        if (line.ahead() == Streamline.Followed.LOST) {
            return new LayerThere.NotKnown(line.lost().orElseThrow());
        }
        StreamPoint there = line.at(x);
        return grown(line.points().get(0).x(), there.run(), there.speed() * attitude.speed(), attitude.speed());
    }

    private LayerThere grown(double start, double run, double outside, double speed) {
        LayerLaw.Answer answer = law.after(run, outside, water);
        return answer instanceof LayerLaw.Known known ? new LayerThere.Grown(start, known.layer(), Standing.at(speed, judgedFromKnots))
            : new LayerThere.NotKnown(((LayerLaw.Outside) answer).reason());
    }

    /** When a shape at a place begins to cavitate: a face's edge, a fairing's nose, a pocket's edge. */
    public InceptionThere inception(Attitude attitude, double x, double y, Suction shape) {
        RunStart start = RunStart.of(hull, attitude, x, y);
        Optional<WaterSurface> level = attitude.level();
        if (start instanceof RunStart.None none) {
            return new InceptionThere.NotKnown(none.reason());
        }
        if (level.isEmpty()) {
            return new InceptionThere.NotKnown("how deep the place runs is not known");
        }
        double depth = depth(level.get(), x, y);
        double boils = new Inception(water, depth).speed(shape.least());
        return new InceptionThere.From(depth, boils, attitude.speed() / boils, Standing.at(attitude.speed(), judgedFromKnots));
    }

    /** The same of an edge low in the layer, round a face that lies flush: it meets the slow water at its own height alone. */
    public InceptionThere inceptionInLayer(Attitude attitude, double x, double y, Suction.RoundedEdge edge) {
        LayerThere there = layer(attitude, x, y);
        InceptionThere outside = inception(attitude, x, y, edge);
        if (there instanceof LayerThere.Grown grown && outside instanceof InceptionThere.From from) {
            double slowed = grown.layer().velocityAt(edge.height()) / grown.layer().speed();
            return new InceptionThere.From(from.depth(), from.speed() / slowed, from.share() * slowed, from.standing());
        }
        return there instanceof LayerThere.NotKnown unknown ? new InceptionThere.NotKnown(unknown.reason()) : outside;
    }

    /** Below the undisturbed water, square to it; none where the water has risen over the place [m]. */
    private double depth(WaterSurface level, double x, double y) {
        return Math.max(0, (level.at(x) - hull.height(x, y)) * Math.cos(level.trim().radians()));
    }
}
