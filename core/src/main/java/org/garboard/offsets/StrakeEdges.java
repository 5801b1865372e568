package org.garboard.offsets;

import java.util.List;

/**
 * A lifting strake as the offsets give it.
 *
 * @param cuts from forward aft
 */
public record StrakeEdges(String name, List<Cut> cuts) {

    /**
     * The strake at a station.
     *
     * @param innerY half-breadth of the edge where its face leaves the skin [m]
     * @param innerZ its height [m]
     * @param outerY half-breadth of the corner that stands out of the skin [m]
     * @param outerZ its height [m]
     */
    public record Cut(double x, double innerY, double innerZ, double outerY, double outerZ) {
    }

    public StrakeEdges {
        cuts = List.copyOf(cuts);
    }
}
