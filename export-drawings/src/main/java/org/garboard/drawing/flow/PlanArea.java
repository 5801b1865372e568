package org.garboard.drawing.flow;

import org.garboard.drawing.Layer;
import org.garboard.flow.shadow.PlanRegion;

/**
 * A part of the bottom in plan.
 *
 * @param kind what the water does there
 * @param region as it lies; what is alike on both sides is two of them
 * @param label that tells it from others of its kind; empty where none is needed
 */
public record PlanArea(Kind kind, PlanRegion region, String label) {

    /** Areas that a picture tells apart. */
    public enum Kind {
        /** Behind a step, to a beam abaft of where the water comes back, or all of it where that is not known. */
        AIR("air behind a step and its margin: no site", Strokes.hatched(Layer.MARK, 90, 1.2)),
        /** Between the stagnation line and the spray's forward edge. */
        SPRAY("wetted by spray alone", Strokes.hatched(Layer.MARK, 165, 2.5)),
        /** Solid water outside every wake. */
        CLEAN("clean: solid water, no listed wake", Strokes.outline(Layer.SECTION));

        private final String words;
        private final Strokes strokes;

        Kind(String words, Strokes strokes) {
            this.words = words;
            this.strokes = strokes;
        }

        public String words() {
            return words;
        }

        Strokes strokes() {
            return strokes;
        }
    }

    public PlanArea(Kind kind, PlanRegion region) {
        this(kind, region, "");
    }
}
