package org.garboard.revision;

/**
 * One thing that differs.
 *
 * @param kind what sort of thing
 * @param subject what it is told of: "flush through-hull, best place"
 * @param what of it: "along the boat", "verdict"
 * @param before as the earlier record has it; empty where it has none
 * @param after as the later record has it; empty where it has none
 * @param unit of both; empty for words
 * @param difference after less before, in words where it is a move: "120 mm aft"; empty where there is none
 */
public record Change(Kind kind, String subject, String what, String before, String after, String unit, String difference) {

    /** Sorts of things, in the order in which they are told. */
    public enum Kind {
        INPUT("input"), FIGURE("figure"), FEATURE("feature"), MOUNT("mount"), PLACE("place"), CHECK("check");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** One line: {@code flush through-hull, best place: along the boat 5.988 m, was 5.868 m (120 mm aft)}. */
    public String words() {
        String in = unit.isEmpty() ? "" : " " + unit;
        String now = after.isEmpty() ? "gone, was " + before + in : after + in + (before.isEmpty() ? ", new" : ", was " + before + in);
        return subject + ": " + (what.isEmpty() ? "" : what + " ") + now + (difference.isEmpty() ? "" : " (" + difference + ")");
    }
}
