package org.garboard.lines;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * How a tape lies that is stretched tight along the outside of the skin.
 *
 * @param path from one end to the other, hull frame [m]; between neighbours it runs straight
 * @param length what the tape reads [m]
 * @param standsOff most that it stands off the skin, where it bridges a hollow [m]
 * @param standsOffAt where that is; one of its ends where it touches all the way
 */
public record TapeRun(List<Vector3D> path, double length, double standsOff, Vector3D standsOffAt) {
    /** A tape this near to the skin touches it [m]: our choice, half of what a tape is read to. */
    public static final double TOUCHING = 0.0005;

    public TapeRun {
        path = List.copyOf(path);
    }

    /** Whether it lies on the skin all the way. */
    public boolean touches() {
        return standsOff <= TOUCHING;
    }

    /** The straight way between its ends [m]. */
    public double straight() {
        return path.get(0).distance(path.get(path.size() - 1));
    }
}
