package org.garboard.flow.doublebody;

import org.garboard.flow.panels.PanelMesh;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;

/**
 * Panels over the starboard half of the hull below the water; see the package for how they lie. Panels of a closed end
 * or of the run behind a transom come after those of the hull.
 */
public final class HullMesh implements Meshed {
    private final MeshWish wish;
    private final WaterFrame frame;
    private final double[] stations;
    private final double[] corners;
    private final PanelMesh panels;

    HullMesh(MeshWish wish, WaterFrame frame, double[] stations, double[] corners, PanelMesh panels) {
        this.wish = wish;
        this.frame = frame;
        this.stations = stations;
        this.corners = corners;
        this.panels = panels;
    }

    /** Meshes a hull to a surface of the water. */
    public static Meshed of(Hull hull, WaterSurface water, MeshWish wish) {
        return new Mesher(hull, water, wish).mesh();
    }

    public MeshWish wish() {
        return wish;
    }

    public WaterFrame frame() {
        return frame;
    }

    public PanelMesh panels() {
        return panels;
    }

    public int columns() {
        return wish.columns();
    }

    public int rows() {
        return wish.rows();
    }

    /** The panel of a column, from forward, and a row, from the keel. */
    public int panel(int column, int row) {
        return column * rows() + row;
    }

    /** x of a line of corners, hull frame [m]. */
    public double station(int line) {
        return stations[line];
    }

    /** A corner's coordinate in the water's frame: 0 for X, 1 for Y, 2 for Z [m]. */
    public double corner(int line, int across, int coordinate) {
        return corners[3 * (line * (rows() + 1) + across) + coordinate];
    }

    /** Length of the hull in the water [m]. */
    public double length() {
        return stations[stations.length - 1] - stations[0];
    }
}
