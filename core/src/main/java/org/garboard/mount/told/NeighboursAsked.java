package org.garboard.mount.told;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.garboard.craft.Fitting;
import org.garboard.craft.LaidFeature;
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
    private NeighboursAsked() {
    }

    /** Of what stands out of the skin: its own wake against the propellers and intakes abaft of it, the water running straight aft. */
    public static List<Demand> ownWake(Installation installation, Surroundings around, Footprint block) {
        if (around.bottom().isEmpty()) {
            return List.of();
        }
        PropellersAndIntakes abaft = PropellersAndIntakes.of(around, around.bottom().get());
        return List.of(Demand.atLeast("its own wake clear of propellers and intakes", installation.limits().of(LimitName.OWN_WAKE),
            bed -> abaft.room(block, bed), "Its wake passes clear of propellers and intakes.",
            "Its wake runs into a propeller or an intake.").leavingOut(bed -> abaft.untold()).telling(bed -> abaft.nearest(block, bed))
            .ofPlaceAlone());
    }

    /** Between the edges of two bodies side by side. */
    public static List<Demand> spacing(Installation installation, Surroundings around, Footprint body) {
        if (around.bottom().isEmpty()) {
            return List.of();
        }
        List<LaidFeature> others = around.bottom().get().features().laid().stream()
            .filter(feature -> feature.is(Fitting.Type.TRANSDUCER)).toList();
        return others.isEmpty() ? List.of() : List.of(Demand.atLeast("room to another transducer", installation.limits().of(LimitName.BETWEEN_TRANSDUCERS),
            bed -> gap(others, body, bed), "Another transducer is far enough away.", "Another transducer is too near.").ofPlaceAlone());
    }

    private static double gap(List<LaidFeature> others, Footprint body, Bed bed) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < others.size(); i++) {
            least = Math.min(least, others.get(i).gap(bed.x(), bed.y(), body.length(), body.width()));
        }
        return least;
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
