package org.garboard.drawing.layout;

import java.util.List;
import java.util.Optional;

/**
 * Something to be set on a sheet that can take one of several shapes.
 *
 * @param shapes the preferred first
 * @param corners of the sheet that may draw it, the preferred first
 * @param rows how it may be broken where one page does not hold it; empty for what stands whole or not at all
 */
public record Piece(List<Cluster> shapes, List<Corner> corners, Optional<Rows> rows) {

    /** A corner of the sheet. */
    public enum Corner { TOP_LEFT, TOP_RIGHT, BOTTOM_RIGHT, BOTTOM_LEFT }

    /** Rows that may be parted. */
    public record Rows(int count, Part part) {
    }

    /** Some of the rows, under their heading. */
    public interface Part {
        Piece of(int from, int before);
    }

    public Piece {
        shapes = List.copyOf(shapes);
        corners = List.copyOf(corners);
        if (shapes.isEmpty() || corners.isEmpty()) {
            throw new IllegalArgumentException("a piece needs a shape and a corner");
        }
    }

    public Piece(List<Cluster> shapes, List<Corner> corners) {
        this(shapes, corners, Optional.empty());
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
