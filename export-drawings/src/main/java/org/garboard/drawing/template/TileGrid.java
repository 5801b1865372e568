package org.garboard.drawing.template;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Box;

/**
 * The tiles that cover a template: rows lettered from the top, columns numbered from the left, neighbours
 * overlapping, the whole centred.
 */
record TileGrid(Box cover, TilePaper paper, int rows, int columns) {
    /** Neighbours share so much [mm]: our choice, wide enough for glue. */
    static final double OVERLAP = 10;

    /**
     * One tile.
     *
     * @param window of the template that it shows
     */
    record Tile(int row, int column, Box window) {
        String name() {
            return TileGrid.name(row, column);
        }
    }

    static TileGrid over(Box extents, TilePaper paper) {
        // the outline's pen must not be cut in half at the edge
        Box wanted = extents.grownBy(2);
        Box window = paper.window();
        int columns = count(wanted.width(), window.width());
        int rows = count(wanted.height(), window.height());
        double width = columns * (window.width() - OVERLAP) + OVERLAP;
        double height = rows * (window.height() - OVERLAP) + OVERLAP;
        double left = wanted.centre().x() - width / 2;
        double bottom = wanted.centre().y() - height / 2;
        return new TileGrid(new Box(left, bottom, left + width, bottom + height), paper, rows, columns);
    }

    private static int count(double wanted, double window) {
        return (int) Math.max(1, Math.ceil((wanted - OVERLAP) / (window - OVERLAP)));
    }

    static String name(int row, int column) {
        StringBuilder letters = new StringBuilder();
        for (int rest = row; rest >= 0; rest = rest / 26 - 1) {
            letters.insert(0, (char) ('A' + rest % 26));
        }
        return letters.append(column + 1).toString();
    }

    /** All tiles, row by row from the top. */
    List<Tile> tiles() {
        Box window = paper.window();
        List<Tile> tiles = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                double left = cover.left() + column * (window.width() - OVERLAP);
                double top = cover.top() - row * (window.height() - OVERLAP);
                tiles.add(new Tile(row, column, new Box(left, top - window.height(), left + window.width(), top)));
            }
        }
        return tiles;
    }
}
