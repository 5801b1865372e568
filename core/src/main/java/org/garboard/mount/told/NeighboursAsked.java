package org.garboard.mount.told;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.garboard.craft.Drive;
import org.garboard.craft.Fitting;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.hull.Hull;
import org.garboard.mount.Bed;
import org.garboard.mount.Demand;
import org.garboard.mount.Footprint;
import org.garboard.mount.Installation;
import org.garboard.mount.LaidBottom;
import org.garboard.mount.LimitName;
import org.garboard.mount.Surroundings;

/** What the fitting does to others: to propellers and intakes by its wake, to another transducer by standing near it, to the boat by hanging low. */
public final class NeighboursAsked {
    /** A fair block's wake widens by 6 degrees to either side, by no more than this [m]: as that of a flush fitting. */
    private static final double GROWTH = Math.tan(Math.toRadians(6));
    private static final double MOST_GROWTH = 0.15;
    /** Axis of an outboard's or a leg's propeller abaft of the transom [m]: common practice, no source. */
    private static final double LEG = 0.4;

    /** A stretch athwart that a wake must not run into, from x aft. */
    private record Stretch(String name, double x, double from, double to) {
    }

    private NeighboursAsked() {
    }

    /** Of what stands out of the skin: its own wake against the propellers and intakes abaft of it, the water running straight aft. */
    public static List<Demand> ownWake(Installation installation, Surroundings around, Footprint block) {
        if (around.bottom().isEmpty()) {
            return List.of();
        }
        List<Stretch> abaft = stretches(around, around.bottom().get());
        return List.of(Demand.atLeast("its own wake clear of propellers and intakes", installation.limits().of(LimitName.OWN_WAKE),
            bed -> room(abaft, block, bed), "Its wake passes clear of propellers and intakes.",
            "Its wake runs into a propeller or an intake.").telling(bed -> nearest(abaft, block, bed)));
    }

    private static List<Stretch> stretches(Surroundings around, LaidBottom bottom) {
        List<Stretch> all = new ArrayList<>();
        for (LaidFeature feature : bottom.features().laid()) {
            if (feature.isPropeller() || feature.kind().equals(Fitting.Type.INTAKE.words()) || feature.kind().equals(Fitting.Type.SCOOP.words())) {
                double inner = feature.innermost();
                String name = feature.kind() + " \"" + feature.name() + "\"";
                if (feature.sides().meets(Sides.STARBOARD)) {
                    all.add(new Stretch(name, feature.from(), inner, inner + feature.breadth()));
                }
                if (feature.sides().meets(Sides.PORT)) {
                    all.add(new Stretch(name, feature.from(), -inner - feature.breadth(), -inner));
                }
            }
        }
        around.drive().filter(drive -> drive.kind() == Drive.Kind.OUTBOARD || drive.kind() == Drive.Kind.STERNDRIVE)
            .ifPresent(drive -> drive.propellerDiameter().ifPresent(diameter -> drive.axes().forEach(axis ->
                all.add(new Stretch("the " + drive.kind().words() + "'s propeller", around.foot() + LEG, axis - diameter / 2, axis + diameter / 2)))));
        return List.copyOf(all);
    }

    private static double room(List<Stretch> abaft, Footprint block, Bed bed) {
        double least = Double.POSITIVE_INFINITY;
        for (Stretch stretch : abaft) {
            least = Math.min(least, room(stretch, block, bed));
        }
        return least;
    }

    private static String nearest(List<Stretch> abaft, Footprint block, Bed bed) {
        String nearest = "";
        double least = Double.POSITIVE_INFINITY;
        for (Stretch stretch : abaft) {
            double room = room(stretch, block, bed);
            nearest = room < least ? "Nearest to its wake: " + stretch.name() + "." : nearest;
            least = Math.min(least, room);
        }
        return nearest;
    }

    private static double room(Stretch stretch, Footprint block, Bed bed) {
        double run = stretch.x() - bed.x();
        if (run <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double half = block.width() / 2 + Math.min(MOST_GROWTH, run * GROWTH);
        return Math.max(stretch.from() - bed.y() - half, bed.y() - half - stretch.to());
    }

    /** Between the edges of two bodies side by side. */
    public static List<Demand> spacing(Installation installation, Surroundings around, Footprint body) {
        if (around.bottom().isEmpty()) {
            return List.of();
        }
        List<LaidFeature> others = around.bottom().get().features().laid().stream()
            .filter(feature -> feature.kind().equals(Fitting.Type.TRANSDUCER.words())).toList();
        return others.isEmpty() ? List.of() : List.of(Demand.atLeast("room to another transducer", installation.limits().of(LimitName.BETWEEN_TRANSDUCERS),
            bed -> others.stream().mapToDouble(other -> other.gap(bed.x(), bed.y(), body.length(), body.width())).min().orElseThrow(),
            "Another transducer is far enough away.", "Another transducer is too near."));
    }

    /**
     * A face that hangs below the skin is not to become the boat's lowest place unasked: she would stand on it.
     *
     * @param low how far the lowest of it hangs below the skin at the body's middle [m]
     */
    public static List<Demand> notLowest(Installation installation, Surroundings around, ToDoubleFunction<Bed> low) {
        if (around.bottom().isEmpty()) {
            return List.of();
        }
        LaidBottom bottom = around.bottom().get();
        Hull hull = bottom.hull();
        double lowest = bottom.lowest();
        return List.of(Demand.atLeast("face above the boat's lowest place", installation.limits().of(LimitName.ABOVE_LOWEST),
            bed -> hull.height(bed.x(), Math.abs(bed.y())) - low.applyAsDouble(bed) - lowest, "What hangs is not the boat's lowest place.",
            "What hangs would be the lowest place of the boat, as far as is told: she grounds and stands on it."));
    }
}
