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
     * The transom's inside face, where the table ends at the transom's outside.
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
            return hull.afterEnd() - thickness;
        }
    }

    /**
     * A hole that is seen from both sides: a drain, a shaft log, a through-hull fitting.
     *
     * @param aheadOfAfterEnd of its middle, measured outside [m]
     */
    record TransferPoint(String name, double aheadOfAfterEnd) implements InsideDatum {
        @Override
        public double x(Hull hull) {
            return hull.afterEnd() - aheadOfAfterEnd;
        }
    }
}
