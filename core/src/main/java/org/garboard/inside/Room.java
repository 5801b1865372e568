package org.garboard.inside;

import java.util.ArrayList;
import java.util.List;
import org.garboard.craft.Sides;

/**
 * One thing that stands inside, as a box on the skin.
 *
 * @param kind what it is
 * @param name as it is to stand on the sheets
 * @param datum name of the {@link InsideDatum} that it was measured from
 * @param sides on which side; both where a pair, or across the centreline
 * @param ahead of the datum, level; negative aft of it
 * @param out from the centreline, level, 0 or more; from 0 on both sides it lies across the centreline
 * @param above the inside of the skin where it comes nearest, and its top; the top may be infinite
 */
public record Room(Kind kind, String name, String datum, Sides sides, Span ahead, Span out, Span above) {
    public Room {
        if (out.from() < 0 || above.from() < 0) {
            throw new IllegalArgumentException("the box of " + name + " lies from " + out.from() + " m out and " + above.from()
                + " m above the skin; both must be 0 or more");
        }
    }

    /** What it is. */
    public enum Kind {
        FUEL_TANK("fuel tank"),
        FUEL_LINE("fuel line"),
        TANK("tank"),
        STRINGER("stringer"),
        BULKHEAD("bulkhead"),
        ENGINE_BED("engine bed"),
        ENGINE("engine"),
        FLOOR("floor"),
        KEELSON("keelson"),
        KEEL_BOLTS("row of keel bolts"),
        /** A passage for bilge water along the skin, not to be dammed. */
        LIMBER_HOLE("limber hole");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** Whether it stands in the way of a hand, or of a thing that is drawn inward. */
        public boolean isSolid() {
            return this != LIMBER_HOLE;
        }

        public boolean isFuel() {
            return this == FUEL_TANK || this == FUEL_LINE;
        }
    }

    /** Starboard from 0 up, port negative; one span for each side, one for both where it lies across. */
    List<Span> athwart() {
        List<Span> spans = new ArrayList<>();
        if (sides == Sides.BOTH && out.from() == 0) {
            spans.add(new Span(-out.to(), out.to()));
            return spans;
        }
        if (sides.meets(Sides.STARBOARD)) {
            spans.add(out);
        }
        if (sides.meets(Sides.PORT)) {
            spans.add(new Span(-out.to(), -out.from()));
        }
        return spans;
    }
}
