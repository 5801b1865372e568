package org.garboard.mount.told;

import java.util.List;
import java.util.function.ToDoubleFunction;
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

    /** Between the edges of two bodies side by side, of which the one that hangs lower stays out of the other's main lobe. */
    public static List<Demand> spacing(Installation installation, Surroundings around, Footprint body, ToDoubleFunction<Bed> low, ToDoubleFunction<Bed> lean) {
        List<LaidFeature> others = around.bottom().map(bottom -> bottom.features().laid()).orElse(List.of()).stream()
            .filter(feature -> feature.is(Fitting.Type.TRANSDUCER) || feature.is(Fitting.Type.IN_HULL_TRANSDUCER)).toList();
        if (others.isEmpty()) {
            return List.of();
        }
        BesideAnother beside = new BesideAnother(installation, around.bottom().get().hull(), body, low, lean);
        return List.of(Demand.atLeast("room to another transducer", installation.limits().of(LimitName.BETWEEN_TRANSDUCERS),
            bed -> least(others, other -> beside.room(other, bed)),
            "Another transducer is far enough away.", "Another transducer is too near, or hangs in the beam.")
            .leavingOut(bed -> others.stream().map(other -> beside.doubt(other, bed)).filter(doubt -> !doubt.isEmpty()).findFirst().orElse(""))
            .telling(bed -> others.stream().map(other -> beside.told(other, bed)).filter(told -> !told.isEmpty()).findFirst().orElse("")));
    }

    /** Beside trim tabs: a tab swings up and down within its own breadth, and the body hangs abaft of its hinge. */
    public static List<Demand> besideTabs(Installation installation, Surroundings around) {
        List<LaidFeature> tabs = around.bottom().map(bottom -> bottom.features().laid()).orElse(List.of()).stream()
            .filter(feature -> feature.is(Fitting.Type.TRIM_TAB)).toList();
        double half = installation.transducer().width() / 2;
        return tabs.isEmpty() ? List.of() : List.of(Demand.atLeast("clear of the tabs' swing", installation.limits().of(LimitName.FROM_TABS),
            bed -> least(tabs, tab -> beside(tab, bed.y()) - half),
            "No tab swings where it hangs.", "It hangs in the swing of a tab, or too near.").ofPlaceAlone());
    }

    private static double least(List<LaidFeature> of, ToDoubleFunction<LaidFeature> reading) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < of.size(); i++) {
            least = Math.min(least, reading.applyAsDouble(of.get(i)));
        }
        return least;
    }

    /** Level athwart from the edge of a tab, below 0 within its breadth [m]. */
    private static double beside(LaidFeature tab, double y) {
        double middle = tab.innermost() + tab.breadth() / 2;
        double starboard = tab.sides().meets(Sides.STARBOARD) ? Math.abs(y - middle) : Double.POSITIVE_INFINITY;
        double port = tab.sides().meets(Sides.PORT) ? Math.abs(y + middle) : Double.POSITIVE_INFINITY;
        return Math.min(starboard, port) - tab.breadth() / 2;
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
