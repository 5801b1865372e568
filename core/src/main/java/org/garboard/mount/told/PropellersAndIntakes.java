package org.garboard.mount.told;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.craft.Drive;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.mount.Bed;
import org.garboard.mount.Footprint;
import org.garboard.mount.LaidBottom;
import org.garboard.mount.Surroundings;

/**
 * What the wake of a fitting must not run into, the water running straight aft: propellers' discs and the intakes of pumps and
 * jets. Those of an outboard or a sterndrive are worked out from the drive; those under the bottom stand in the list of features.
 * Owns its array.
 */
final class PropellersAndIntakes {
    /** A fair block's wake widens by 6 degrees to either side, by no more than this [m]: as that of a flush fitting. */
    private static final double GROWTH = Math.tan(Math.toRadians(6));
    private static final double MOST_GROWTH = 0.15;
    /** Axis of an outboard's or a leg's propeller abaft of the transom [m]: common practice, no source. */
    private static final double LEG = 0.4;

    private final Stretch[] told;
    private final String untold;

    /** A stretch athwart that a wake must not run into, from x aft. */
    private record Stretch(String name, double x, double from, double to) {
        /** Between its edge and the wake of a block [m]; infinite where it lies ahead. */
        double room(Footprint block, Bed bed) {
            double run = x - bed.x();
            if (run <= 0) {
                return Double.POSITIVE_INFINITY;
            }
            double half = block.width() / 2 + Math.min(MOST_GROWTH, run * GROWTH);
            return Math.max(from - bed.y() - half, bed.y() - half - to);
        }
    }

    private PropellersAndIntakes(List<Stretch> told, String untold) {
        this.told = told.toArray(Stretch[]::new);
        this.untold = untold;
    }

    static PropellersAndIntakes of(Surroundings around, LaidBottom bottom) {
        List<Stretch> told = new ArrayList<>();
        bottom.features().laid().stream().filter(feature -> feature.isPropeller() || feature.isIntake()).forEach(feature -> add(told, feature));
        around.drive().filter(drive -> drive.kind().hangsBehind()).ifPresent(drive -> drive.propellerDiameter().ifPresent(diameter ->
            drive.axes().forEach(axis -> told.add(new Stretch("the " + drive.kind().words() + "'s propeller", around.foot() + LEG,
                axis - diameter / 2, axis + diameter / 2)))));
        String intakes = around.listed() ? "" : "The job does not list what is on the bottom: intakes were left out.";
        String propellers = around.drive().map(drive -> untold(drive, bottom)).orElse("What drives her is not told: propellers and jets were left out.");
        return new PropellersAndIntakes(told, (intakes + " " + propellers).strip());
    }

    private static void add(List<Stretch> told, LaidFeature feature) {
        double inner = feature.innermost();
        String name = feature.kind() + " \"" + feature.name() + "\"";
        if (feature.sides().meets(Sides.STARBOARD)) {
            told.add(new Stretch(name, feature.from(), inner, inner + feature.breadth()));
        }
        if (feature.sides().meets(Sides.PORT)) {
            told.add(new Stretch(name, feature.from(), -inner - feature.breadth(), -inner));
        }
    }

    private static String untold(Drive drive, LaidBottom bottom) {
        if (!drive.kind().hangsBehind()) {
            return bottom.features().lacks(drive);
        }
        if (drive.axes().isEmpty()) {
            return "How far apart the " + drive.number() + " engines stand is not told: their propellers were left out.";
        }
        return Optional.of("The size of the propeller is not told: it was left out.").filter(none -> drive.propellerDiameter().isEmpty()).orElse("");
    }

    /** What was left out, a sentence or two; empty where nothing was. */
    String untold() {
        return untold;
    }

    /** Between the nearest of them and the wake of a block [m]; infinite where none lies abaft. */
    double room(Footprint block, Bed bed) {
        double least = Double.POSITIVE_INFINITY;
        for (Stretch stretch : told) {
            least = Math.min(least, stretch.room(block, bed));
        }
        return least;
    }

    /** Which is the nearest, a sentence; empty where there is none. */
    String nearest(Footprint block, Bed bed) {
        String nearest = "";
        double least = Double.POSITIVE_INFINITY;
        for (Stretch stretch : told) {
            double room = stretch.room(block, bed);
            nearest = room < least ? "Nearest to its wake: " + stretch.name() + "." : nearest;
            least = Math.min(least, room);
        }
        return nearest;
    }
}
