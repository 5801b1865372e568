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

    /** The same without the shapes that are less preferred than one of them, told by its size wherever it stands. */
    Piece downTo(Cluster placed) {
        int last = 0;
        while (!sameSize(shapes.get(last), placed)) {
            last++;
        }
        return new Piece(shapes.subList(0, last + 1), corners);
    }

    private static boolean sameSize(Cluster one, Cluster other) {
        return Math.abs(one.bounds().width() - other.bounds().width()) < 1e-6
                && Math.abs(one.bounds().height() - other.bounds().height()) < 1e-6;
    }
}
