package org.garboard.inside;

import org.garboard.hull.Hull;

/**
 * A place from which lengths inside are taken, and whose place outside is known too: without one, inside
 * and outside cannot be compared.
 */
public sealed interface InsideDatum {

    /** As the rooms name it. */
    String name();

    /** x of it, aft of the origin [m]. */
    double x(Hull hull);

    /**
     * The inside face of the transom, low down where it meets the bottom.
     *
     * @param thickness of the transom there [m]
     */
    record Transom(String name, double thickness) implements InsideDatum {
        public Transom {
            if (!(thickness > 0 && thickness < 1)) {
                throw new IllegalArgumentException("a transom " + thickness + " m thick; it must be more than 0 and less than 1 m");
            }
        }

        @Override
        public double x(Hull hull) {
            return hull.foot() - thickness;
        }
    }

    /**
     * A hole that is seen from both sides: a drain, a shaft log, a through-hull fitting.
     *
     * @param aheadOfFoot of its middle, level, measured outside from the transom's foot [m]
     */
    record TransferPoint(String name, double aheadOfFoot) implements InsideDatum {
        @Override
        public double x(Hull hull) {
            return hull.foot() - aheadOfFoot;
        }
    }
}
