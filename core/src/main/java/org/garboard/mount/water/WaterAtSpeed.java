package org.garboard.mount.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.flow.attitude.AtSpeed;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.attitude.StagnationLine;
import org.garboard.flow.layer.Layer;
import org.garboard.flow.layer.LayerLaw;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.mount.Bed;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/** The water along the bottom at one speed, over the whole band of load and trim: what a search of the bottom reads off at every place. */
public final class WaterAtSpeed {
    private static final double KNOT = 1852 / 3600.0;

    private final String name;
    private final double knots;
    private final double beam;
    private final Water water;
    private final EndOfBand[] known;
    private final String missing;
    private final String briefly;
    private final LayerAlong[] thickness;
    private final LayerAlong[] clear;
    private final SpeedInLayer[] within;
    private final LayerAlong fromBow;
    private final double bow;

    /** A reading of one end of the band at a place. */
    interface Reading {
        double at(int end, Bed bed);
    }

    private WaterAtSpeed(String name, double knots, double beam, double bow, double longest, Water water, List<EndOfBand> known, String missing) {
        this.name = name;
        this.knots = knots;
        this.beam = beam;
        this.water = water;
        this.known = known.toArray(EndOfBand[]::new);
        this.thickness = new LayerAlong[this.known.length];
        this.clear = new LayerAlong[this.known.length];
        this.within = new SpeedInLayer[this.known.length];
        for (int i = 0; i < this.known.length; i++) {
            List<LayerLaw.Answer> layers = LayerAlong.layers(this.known[i].outer(), water, longest);
            thickness[i] = LayerAlong.of(layers, Layer::thickness);
            clear[i] = LayerAlong.of(layers, Layer::clearHeight);
            within[i] = new SpeedInLayer(layers);
        }
        this.missing = missing;
        this.briefly = "Not known at every end of the band, as \"" + (floats() ? FlowAsked.DEPTH : FlowAsked.WET) + words() + "\" tells.";
        this.fromBow = LayerAlong.of(LayerAlong.layers(knots * KNOT, water, longest), Layer::thickness);
        this.bow = bow;
    }

    public static WaterAtSpeed of(Hull hull, Water water, AtSpeed at) {
        List<EndOfBand> known = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        sort(hull, "at the mean load and trim", at.middle(), known, missing);
        at.ends().forEach(end -> sort(hull, end.name(), end.attitude(), known, missing));
        return new WaterAtSpeed(at.speed().name(), at.speed().knots(), 2 * hull.bottomEdge().y(hull.bottomEnd()), hull.forwardEnd(),
            hull.afterEnd() - hull.forwardEnd(), water, known, missing.isEmpty() ? "" : "Not worked out, " + String.join("; ", missing) + ".");
    }

    private static void sort(Hull hull, String name, Attitude attitude, List<EndOfBand> known, List<String> missing) {
        if (attitude instanceof Attitude.NotKnown unknown) {
            String reason = ": " + unknown.reason();
            int same = missing.size() - 1;
            if (same >= 0 && missing.get(same).endsWith(reason)) {
                missing.set(same, missing.get(same).substring(0, missing.get(same).length() - reason.length()) + " and " + name + reason);
            } else {
                missing.add(name + reason);
            }
        } else {
            known.add(EndOfBand.of(hull, name, attitude));
        }
    }

    public double knots() {
        return knots;
    }

    /** [m/s] */
    double speed() {
        return knots * KNOT;
    }

    /** "cruise, 25 kn". */
    public String words() {
        return words(name, knots);
    }

    /** Likewise, of any speed. */
    public static String words(String name, double knots) {
        return name + ", " + FixedDecimal.format(knots, knots == Math.rint(knots) ? 0 : 1) + " kn";
    }

    /** "25 kn". */
    public String knotsInWords() {
        return FixedDecimal.format(knots, knots == Math.rint(knots) ? 0 : 1) + " kn";
    }

    /** Whether nothing is known at this speed, whatever load and trim. */
    public boolean isUnknown() {
        return known.length == 0;
    }

    /** Of the base line at the ends of the band that are known, positive bow-up; none where nothing is known. */
    public List<Angle> trims() {
        return Stream.of(known).map(end -> Angle.ofRadians(end.trim())).toList();
    }

    /** At which ends of the band nothing is known, and why; empty where all are. */
    public String missing() {
        return missing;
    }

    /** Whether she floats at every end that is known. */
    boolean floats() {
        for (EndOfBand end : known) {
            if (!end.floats()) {
                return false;
            }
        }
        return known.length > 0;
    }

    /**
     * Abaft of it the bottom is in solid water at every end of the band that is known: of their stagnation lines the aftermost at each
     * half-breadth, as far out as all of them reach. Empty where she floats, or nothing is known.
     */
    public Optional<StagnationLine> solidFrom() {
        List<StagnationLine> lines = Stream.of(known).map(EndOfBand::line).flatMap(Optional::stream).toList();
        double reach = lines.stream().mapToDouble(StagnationLine::outermost).min().orElse(Double.NaN);
        List<Vector2D> points = lines.stream().flatMap(line -> line.points().stream()).mapToDouble(Vector2D::getY).filter(y -> y <= reach)
            .sorted().distinct().mapToObj(y -> Vector2D.of(lines.stream().mapToDouble(line -> line.x(y)).max().orElseThrow(), y)).toList();
        return points.size() > 1 ? Optional.of(new StagnationLine(points)) : Optional.empty();
    }

    Water water() {
        return water;
    }

    /** Of the bottom at its after end [m]. */
    double beam() {
        return beam;
    }

    int ends() {
        return known.length;
    }

    EndOfBand end(int i) {
        return known[i];
    }

    /** Thickness of the layer at a place, at an end that is known [m]; 0 where no water runs along the bottom. */
    double thickness(int end, double x, double y) {
        return grown(thickness, end, x, y);
    }

    /** No thicker is the layer there at any end of the band [m]: where one is not known, of water that runs all the way from the bow. */
    double atMostThick(double x, double y) {
        double most = missing.isEmpty() ? 0 : fromBow.after(x - bow);
        for (int i = 0; i < known.length; i++) {
            double thick = thickness(i, x, y);
            most = Math.max(most, Double.isNaN(thick) ? fromBow.after(x - bow) : thick);
        }
        return most;
    }

    /** The most of the ends that are known [m]; NaN where at none of them water runs along the bottom, or no law reaches. */
    public double thickest(double x, double y) {
        double most = Double.NaN;
        for (int i = 0; i < known.length; i++) {
            double each = thickness(i, x, y);
            most = each > 0 && !(each <= most) ? each : most;
        }
        return most;
    }

    /** Height that a face needs there to be clear of it [m]. */
    double clearHeight(int end, double x, double y) {
        return grown(clear, end, x, y);
    }

    private double grown(LayerAlong[] figure, int end, double x, double y) {
        double run = known[end].run(x, y);
        return run <= 0 ? 0 : figure[end].after(run);
    }

    /** Mean speed of the water at a height above the skin [m] over that outside the layer, at an end that is known, where water runs along the bottom. */
    double slowed(int end, double x, double y, double height) {
        return within[end].slowed(known[end].run(x, y), height);
    }

    /** Likewise, the most of the ends that are known. */
    double clearHeight(double x, double y) {
        double most = 0;
        for (int i = 0; i < known.length; i++) {
            double height = clearHeight(i, x, y);
            most = height > most ? height : most;
        }
        return most;
    }

    /** The largest reading of the ends that have one; NaN where none has. */
    double most(Reading reading, Bed bed) {
        double most = Double.NaN;
        for (int i = 0; i < known.length; i++) {
            double value = reading.at(i, bed);
            most = value > most || Double.isNaN(most) ? value : most;
        }
        return most;
    }

    /** The least, likewise. */
    double least(Reading reading, Bed bed) {
        double least = Double.NaN;
        for (int i = 0; i < known.length; i++) {
            double value = reading.at(i, bed);
            least = value < least || Double.isNaN(least) ? value : least;
        }
        return least;
    }

    /** What is not known of whether water runs along the bottom at a place, a sentence; empty where all is. */
    String unknownAt(Bed bed) {
        return left((end, there) -> known[end].run(there.x(), there.y()), bed);
    }

    /** What the readings of a place leave out, a sentence; empty where they are the whole answer. */
    String left(Reading reading, Bed bed) {
        if (!missing.isEmpty()) {
            return briefly;
        }
        for (int i = 0; i < known.length; i++) {
            if (Double.isNaN(reading.at(i, bed))) {
                String reason = known[i].reason(bed.x(), bed.y());
                return reason.isEmpty() ? "No law tells it here, " + known[i].name() + "." : reason;
            }
        }
        return "";
    }

    /** The end whose reading governs. */
    EndOfBand governing(Reading reading, Bed bed, double worst) {
        for (int i = 0; i < known.length; i++) {
            if (reading.at(i, bed) == worst) {
                return known[i];
            }
        }
        return known[0];
    }
}
