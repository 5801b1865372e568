package org.garboard.handling;

import java.util.Optional;
import org.garboard.craft.Sides;

/**
 * Where something bears on the bottom: a band all across, or a rectangle.
 *
 * @param kind what it is
 * @param name as it is to stand on the sheets
 * @param sides on which side; both where a pair or across
 * @param aheadFrom forward of the transom's foot, where the keel line ends, level [m]
 * @param aheadTo likewise, more [m]
 * @param out from the centreline, level; none for a band all across
 */
public record Support(Kind kind, String name, Sides sides, double aheadFrom, double aheadTo, Optional<Out> out) {
    public Support {
        if (!(aheadFrom < aheadTo)) {
            throw new IllegalArgumentException(name + " bears from " + aheadFrom + " to " + aheadTo + " m; it must run from less to more");
        }
    }

    /**
     * From the centreline.
     *
     * @param from 0 or more [m]
     * @param to more [m]
     */
    public record Out(double from, double to) {
        public Out {
            if (!(from >= 0 && from < to)) {
                throw new IllegalArgumentException("from " + from + " to " + to + " m out; it must run from 0 or more to more");
            }
        }
    }

    /** What it is. */
    public enum Kind {
        BUNK("trailer bunk"),
        ROLLER("trailer roller"),
        SLING("sling"),
        BLOCK("block"),
        BEACH("beach");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * Level gap to a rectangle, 0 where they touch.
     *
     * @param aheadOf its middle forward of the transom's foot [m]
     * @param y its middle to starboard [m]
     * @param length of it fore and aft [m]
     * @param width of it athwart [m]
     */
    double gap(double aheadOf, double y, double length, double width) {
        double along = Math.max(0, Math.max(aheadFrom - aheadOf - length / 2, aheadOf - length / 2 - aheadTo));
        if (out.isEmpty()) {
            return along;
        }
        double starboard = sides.meets(Sides.STARBOARD) ? athwart(y, width) : Double.POSITIVE_INFINITY;
        double port = sides.meets(Sides.PORT) ? athwart(-y, width) : Double.POSITIVE_INFINITY;
        return Math.hypot(along, Math.min(starboard, port));
    }

    private double athwart(double y, double width) {
        return Math.max(0, Math.max(out.get().from() - y - width / 2, y - width / 2 - out.get().to()));
    }
}
