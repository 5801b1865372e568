package org.garboard.drawing.layout;

import java.util.List;

/**
 * Something to be set on a sheet that can take one of several shapes.
 *
 * @param shapes the preferred first
 * @param corners of the sheet that may draw it, the preferred first
 */
public record Piece(List<Cluster> shapes, List<Corner> corners) {

    /** A corner of the sheet. */
    public enum Corner { TOP_LEFT, TOP_RIGHT, BOTTOM_RIGHT, BOTTOM_LEFT }

    public Piece {
        shapes = List.copyOf(shapes);
        corners = List.copyOf(corners);
        if (shapes.isEmpty() || corners.isEmpty()) {
            throw new IllegalArgumentException("a piece needs a shape and a corner");
        }
    }
}
