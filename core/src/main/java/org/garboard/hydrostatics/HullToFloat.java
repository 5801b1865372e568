package org.garboard.hydrostatics;

import java.util.List;
import org.garboard.hull.Hull;

/** A hull made ready to be floated to one surface of the water after another: what of her does not depend on the water is worked out once. */
public final class HullToFloat {
    private final Hull hull;
    private final List<PanelEdges> edges;

    public HullToFloat(Hull hull) {
        this.hull = hull;
        this.edges = hull.panels().stream().map(PanelEdges::of).toList();
    }

    /** How she lies to a surface of the water. */
    public Floating to(WaterSurface water) {
        return Immersion.of(hull, edges, water, LengthwiseSum::over);
    }

    /** The same to some millionths, at a fraction of the work: for the steps towards a water that is sought. */
    public Floating roughly(WaterSurface water) {
        return Immersion.of(hull, edges, water, LengthwiseSum::roughly);
    }
}
