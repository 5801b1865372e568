package org.garboard.cutout;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A closed line of the skin, last point not repeated.
 *
 * @param flat where it lies once the skin is laid flat
 * @param onSkin the same, point for point, hull frame [m]
 */
public record LaidLine(List<FlatPoint> flat, List<Vector3D> onSkin) {
    /** None. */
    public static final LaidLine NONE = new LaidLine(List.of(), List.of());

    public LaidLine {
        flat = List.copyOf(flat);
        onSkin = List.copyOf(onSkin);
    }

    public boolean isEmpty() {
        return flat.isEmpty();
    }
}
