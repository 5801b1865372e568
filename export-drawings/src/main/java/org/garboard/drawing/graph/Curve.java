package org.garboard.drawing.graph;

import java.util.List;
import org.garboard.drawing.Layer;

/**
 * Readings of a graph, joined in their order.
 *
 * @param label where it ends; empty where it needs none
 * @param layer whose pen draws it
 * @param readings one that is not known breaks the curve
 */
public record Curve(String label, Layer layer, List<Reading> readings) {
    public Curve {
        readings = List.copyOf(readings);
    }
}
