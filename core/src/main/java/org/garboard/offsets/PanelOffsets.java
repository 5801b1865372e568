package org.garboard.offsets;

import java.util.List;

/**
 * The table's points on the strip of skin between two neighbouring named lines.
 *
 * @param lower name of the line nearer the keel
 * @param upper name of the line nearer the sheer
 * @param stations for each station of the table its points, from the lower line to the upper,
 *     both ends included
 */
public record PanelOffsets(String lower, String upper, List<List<SectionPoint>> stations) {
    public PanelOffsets {
        stations = stations.stream().map(List::copyOf).toList();
    }
}
