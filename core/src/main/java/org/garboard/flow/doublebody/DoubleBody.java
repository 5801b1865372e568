package org.garboard.flow.doublebody;

import org.garboard.flow.panels.Images;
import org.garboard.flow.panels.PanelFlow;
import org.garboard.flow.panels.PanelSolution;
import org.garboard.flow.panels.Stream;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;

/** The flow past a hull and her image, or why there is none. */
public sealed interface DoubleBody permits HullFlow, DoubleBody.None {

    /** The hull cannot be meshed so, or the flow past her panels is not found. */
    record None(String reason) implements DoubleBody {
    }

    /** The water comes straight from ahead along its own surface. */
    static DoubleBody past(Hull hull, WaterSurface water, MeshWish wish) {
        Meshed meshed = HullMesh.of(hull, water, wish);
        if (!(meshed instanceof HullMesh mesh)) {
            return new None(((Meshed.NotMeshed) meshed).reason());
        }
        PanelSolution solution = PanelSolution.of(mesh.panels(), Images.CENTRELINE_AND_WATER, Stream.AFT);
        if (!(solution instanceof PanelFlow flow)) {
            return new None(((PanelSolution.NotSolved) solution).reason());
        }
        return new HullFlow(mesh, flow);
    }
}
