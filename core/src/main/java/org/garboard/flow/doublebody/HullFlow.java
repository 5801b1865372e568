package org.garboard.flow.doublebody;

import org.garboard.flow.panels.PanelFlow;

/**
 * The double body's flow on the hull.
 *
 * @param mesh of the hull
 * @param flow past it, in the water's frame
 */
public record HullFlow(HullMesh mesh, PanelFlow flow) implements DoubleBody {
}
