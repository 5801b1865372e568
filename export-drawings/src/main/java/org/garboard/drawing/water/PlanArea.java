package org.garboard.drawing.water;

import java.util.List;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Point;
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
        CLEAN("clean: solid water, no listed wake", Strokes.outline(Layer.SECTION)),
        WAKE("wake of what is named", Strokes.hatched(Layer.WAKE, 45, 2)),
        /** The edge beyond {@link #WAKE} that is told as advice. */
        ADVISORY("advisory edge of a wake", Strokes.outline(Layer.HIDDEN)),
        AHEAD("water that a propeller draws in", Strokes.hatched(Layer.WAKE, 135, 1.5)),
        /** Wakes at whatever speed, among hatches that mean something else. */
        EDGE("wake of what is named, and water that a propeller draws in", Strokes.outline(Layer.WAKE));

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

        /** As it is shown over a ring on paper. */
        public List<Entity> over(List<Point> ring) {
            return strokes.over(List.of(ring));
        }
    }

    public PlanArea(Kind kind, PlanRegion region) {
        this(kind, region, "");
    }
}
