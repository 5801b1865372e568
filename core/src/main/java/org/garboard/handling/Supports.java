package org.garboard.handling;

import java.util.List;
import java.util.Optional;
import org.garboard.craft.Sides;
import org.garboard.finding.Bound;
import org.garboard.finding.Figure;
import org.garboard.finding.Finding;
import org.garboard.finding.NotKnown;
import org.garboard.hull.Hull;

/**
 * All that the boat rests on or hangs from.
 *
 * @param all in the order of the job; empty where the yard says that nothing bears on the bottom
 */
public record Supports(List<Support> all) {
    private static final String NAME = "slings, blocking and trailer";
    private static final String LOOK =
        "Look at how the boat is lifted and set down: no sling, block, bunk or roller may bear on the place.";

    /** Between the footprint and what bears on the bottom. */
    public static final Bound CLEAR = new Bound(50, "mm", "our choice, because a boat is not set down nearer to her marks than that");

    public Supports {
        all = List.copyOf(all);
    }

    /**
     * Level gap between a footprint and the nearest of them [m], 0 where it bears on the footprint; infinite where there is none.
     *
     * @param ahead of the transom's foot, of the footprint's middle [m]
     * @param y of its middle, to starboard [m]
     */
    public double gap(double ahead, double y, double length, double width) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < all.size(); i++) {
            nearest = Math.min(nearest, all.get(i).gap(ahead, y, length, width));
        }
        return nearest;
    }

    /** The nearest in words, the first of equals; empty where there is none. */
    public String nearest(double ahead, double y, double length, double width) {
        double nearest = Double.POSITIVE_INFINITY;
        String what = "";
        for (Support support : all) {
            double gap = support.gap(ahead, y, length, width);
            if (gap < nearest) {
                nearest = gap;
                what = support.kind().words() + " (" + support.name() + ")";
            }
        }
        return what;
    }

    /** Whether port and starboard are alike. */
    public boolean isSymmetrical() {
        return all.stream().allMatch(support -> support.sides() == Sides.BOTH || support.out().isEmpty());
    }

    /**
     * @param told none where the job does not say what the boat rests on
     * @param x of the footprint's middle, aft of the origin [m]
     * @param y of it, to starboard [m]
     * @param length of the footprint, fore and aft [m]
     * @param width athwart [m]
     */
    public static Finding at(Hull hull, Optional<Supports> told, double x, double y, double length, double width) {
        if (told.isEmpty()) {
            return new NotKnown(NAME, CLEAR.source(), LOOK);
        }
        double nearest = told.get().gap(hull.foot() - x, y, length, width);
        String what = told.get().nearest(hull.foot() - x, y, length, width);
        return Figure.atLeast(NAME, nearest * 1000, CLEAR, "Nothing that she rests on or hangs from bears on the place.",
            nearest > 0 ? "A " + what + " bears too near the place." : "A " + what + " bears on the place.");
    }
}
