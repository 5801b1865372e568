package org.garboard.marking;

import org.garboard.lines.TapeRun;

/**
 * A length between two marks, along the skin.
 *
 * @param way how the tape is held
 * @param tape as it lies
 * @param use what it is for
 */
public record MarkedLength(Mark from, Mark to, Way way, TapeRun tape, Use use) {
    /** How the tape is held. */
    public enum Way {
        ALONG_KEEL("along the keel line"), BESIDE_KEEL("straight, over the side of the keel"), SQUARE("square to the centreline"), TIGHT("pulled tight");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** What a length is for, and how far off it may be [mm]. */
    public enum Use {
        /** It sets a mark. */
        SETS(3, 1),
        /** It proves a mark that others have set. */
        CHECKS(3, 1),
        /** It proves a shape. */
        SHAPE(2, 0);

        private final double atLeast;
        private final double perMetre;

        Use(double atLeast, double perMetre) {
            this.atLeast = atLeast;
            this.perMetre = perMetre;
        }

        /** Common practice, no source [mm]. */
        public double within(double metres) {
            return Math.rint(atLeast + perMetre * metres);
        }
    }

    /** What the tape reads [m]. */
    public double metres() {
        return tape.length();
    }

    /** How far off it may be [mm]. */
    public double within() {
        return use.within(metres());
    }
}
