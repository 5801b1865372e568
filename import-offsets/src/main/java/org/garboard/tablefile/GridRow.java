package org.garboard.tablefile;

import java.util.List;

/**
 * One line of the file.
 *
 * @param number line of the file, the first is 1
 * @param cells as many as the line has
 */
record GridRow(int number, List<Cell> cells) {
    GridRow {
        cells = List.copyOf(cells);
    }

    Cell first() {
        return at(0);
    }

    /** The cell at an index counted from 0; an empty one past the end of the line. */
    Cell at(int index) {
        return index < cells.size() ? cells.get(index) : new Cell(number, index + 1, "");
    }

    /** The cells from an index on, as far as something stands in them. */
    List<Cell> filledFrom(int index) {
        int end = cells.size();
        while (end > index && cells.get(end - 1).isEmpty()) {
            end--;
        }
        return index < end ? cells.subList(index, end) : List.of();
    }

    boolean isEmpty() {
        return filledFrom(0).isEmpty();
    }
}
