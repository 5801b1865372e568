package org.garboard.hull;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * One unbroken run of a curve on the starboard skin.
 *
 * @param panel index of the panel it runs on, counted from the keel
 * @param points in order, hull frame [m]; sections run from the keel outward, others from forward aft
 */
public record Curve(int panel, List<Vector3D> points) {
    public Curve {
        points = List.copyOf(points);
    }
}
