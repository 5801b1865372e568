package org.garboard.flow.doublebody;

import java.util.Arrays;
import org.garboard.flow.panels.PanelMesh;

/** Corners of panels as they are gathered. */
final class PanelCorners {
    private double[] corners = new double[PanelMesh.CORNERS * 256];
    private int size;

    /** A panel from four places in an array of points, counter-clockwise seen from the water. */
    void add(double[] points, int one, int two, int three, int four) {
        if (size + PanelMesh.CORNERS > corners.length) {
            corners = Arrays.copyOf(corners, 2 * corners.length);
        }
        for (int at : new int[] {one, two, three, four}) {
            System.arraycopy(points, at, corners, size, 3);
            size += 3;
        }
    }

    PanelMesh mesh() {
        return new PanelMesh(Arrays.copyOf(corners, size));
    }
}
