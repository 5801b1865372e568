package org.garboard.offsets;

/** The surface of the hull to which a table is drawn. What is drawn through it works on the outside of the skin. */
public sealed interface SkinSurface {
    SkinSurface OUTSIDE_OF_SKIN = new Outside();

    /** From this surface to the outside of the skin on a panel, square to it [m]; 0 on the outside. */
    double thickness(PanelName panel);

    /** "the inside of the planking, 32 mm thick". */
    String words();

    /** The outside itself. */
    record Outside() implements SkinSurface {
        @Override
        public double thickness(PanelName panel) {
            return 0;
        }

        @Override
        public String words() {
            return "the outside of the skin";
        }
    }

    /** What covers the frames, as the table's heading calls it. */
    enum Covering {
        PLANKING("planking"),
        PLATING("plating"),
        SKIN("skin");

        private final String word;

        Covering(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** The inside of a covering whose thickness is told. */
    record Inside(Covering covering, SkinThickness thickness) implements SkinSurface {
        @Override
        public double thickness(PanelName panel) {
            return thickness.on(panel);
        }

        @Override
        public String words() {
            return "the inside of the " + covering.word() + ", " + thickness.words();
        }
    }
}
