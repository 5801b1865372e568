package org.garboard.handling;

import java.util.List;
import org.garboard.craft.Sides;
import org.garboard.finding.Bound;

/**
 * All that the boat rests on or hangs from.
 *
 * @param all in the order of the job; empty where the yard says that nothing bears on the bottom
 */
public record Supports(List<Support> all) {
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
}
