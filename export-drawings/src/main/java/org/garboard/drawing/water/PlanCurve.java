package org.garboard.drawing.water;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.drawing.Layer;

/**
 * A line on the bottom in plan.
 *
 * @param kind what it is
 * @param points hull frame [m], starboard positive; the picture shows it on both sides
 * @param label that tells it from others of its kind; empty where none is needed
 */
public record PlanCurve(Kind kind, List<Vector2D> points, String label) {

    /** Lines that a picture tells apart. */
    public enum Kind {
        STREAMLINE("streamline", Layer.FORM),
        /** A streamline that comes from the surface at the bow. */
        UPPER_WATER("water from the surface at the bow", Layer.ADJACENT),
        /** Where a planing bottom meets the water. */
        STAGNATION_LINE("stagnation line", Layer.WATER),
        /** The same at another load or trim. */
        BAND_LINE("stagnation line at an end of the band", Layer.ADJACENT),
        /** Where the boundary layer is so thick. */
        LAYER_THICKNESS("boundary layer of the thickness named", Layer.CENTRE),
        /** The edge of what is in the water. */
        WATERLINE("edge of the water", Layer.GRID);

        private final String words;
        private final Layer layer;

        Kind(String words, Layer layer) {
            this.words = words;
            this.layer = layer;
        }

        public String words() {
            return words;
        }

        public Layer layer() {
            return layer;
        }
    }

    public PlanCurve(Kind kind, List<Vector2D> points) {
        this(kind, points, "");
    }

    public PlanCurve {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a " + kind.words() + " of " + points.size() + " point(s); two are the least");
        }
    }
}
