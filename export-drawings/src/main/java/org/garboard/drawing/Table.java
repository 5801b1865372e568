package org.garboard.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Ruled rows and columns of text; the first row is the heading.
 *
 * @param topLeft corner
 * @param widths of the columns [mm]
 * @param rows each a cell per column, each cell its lines; blank lines stay empty
 * @param height of the lettering [mm]
 */
public record Table(Point topLeft, List<Double> widths, List<List<List<String>>> rows, double height)
        implements Entity {

    /** Line pitch in letter heights (ISO 3098: 1.5 at least). */
    public static final double PITCH = 1.6;
    /** Clear space beside a cell's text, in letter heights: our choice. */
    private static final double SIDE = 0.5;

    public Table {
        widths = List.copyOf(widths);
        rows = rows.stream().map(row -> row.stream().map(List::copyOf).toList()).toList();
        for (List<List<String>> row : rows) {
            if (row.size() != widths.size()) {
                throw new IllegalArgumentException("a row of " + row.size() + " cells in a table of "
                        + widths.size() + " columns");
            }
        }
    }

    /** A table whose cells are wrapped to their columns. */
    public static Table wrapped(Point topLeft, List<Double> widths, List<List<String>> cells, double height) {
        List<List<List<String>>> rows = new ArrayList<>();
        for (List<String> row : cells) {
            List<List<String>> lines = new ArrayList<>();
            for (int column = 0; column < row.size(); column++) {
                lines.add(Wrap.lines(row.get(column), widths.get(column) - 2 * SIDE * height, height));
            }
            rows.add(lines);
        }
        return new Table(topLeft, widths, rows, height);
    }

    /** The least column width that holds words on one line [mm]. */
    public static double columnFor(String words, double height) {
        return LetterWidths.extent(words, height) + 2 * SIDE * height + 0.01;
    }

    public double width() {
        return widths.stream().mapToDouble(Double::doubleValue).sum();
    }

    private double rowHeight(List<List<String>> row) {
        int lines = row.stream().mapToInt(List::size).max().orElse(1);
        return (PITCH * Math.max(1, lines) + 0.6) * height;
    }

    private double depth() {
        return rows.stream().mapToDouble(this::rowHeight).sum();
    }

    @Override
    public Box bounds() {
        return new Box(topLeft.x(), topLeft.y() - depth(), topLeft.x() + width(), topLeft.y());
    }

    private List<Entity> parts() {
        List<Entity> parts = new ArrayList<>();
        Box box = bounds();
        double top = box.top();
        ruleLevel(Layer.TEXT, top, parts);
        for (int index = 0; index < rows.size(); index++) {
            letter(rows.get(index), top, parts);
            top -= rowHeight(rows.get(index));
            boolean strong = index == 0 || index == rows.size() - 1;
            ruleLevel(strong ? Layer.TEXT : Layer.GRID, top, parts);
        }
        double x = box.left();
        for (int column = 0; column <= widths.size(); column++) {
            boolean edge = column == 0 || column == widths.size();
            parts.add(new Line(edge ? Layer.TEXT : Layer.GRID, new Point(x, box.top()), new Point(x, box.bottom())));
            x += edge && column > 0 ? 0 : widths.get(column);
        }
        return parts;
    }

    private void ruleLevel(Layer layer, double y, List<Entity> parts) {
        parts.add(new Line(layer, new Point(topLeft.x(), y), new Point(topLeft.x() + width(), y)));
    }

    private void letter(List<List<String>> row, double top, List<Entity> parts) {
        double x = topLeft.x();
        for (int column = 0; column < row.size(); column++) {
            List<String> lines = row.get(column);
            for (int line = 0; line < lines.size(); line++) {
                if (!lines.get(line).isBlank()) {
                    double base = top - (0.55 + 1 + PITCH * line) * height;
                    parts.add(Text.level(Layer.TEXT, lines.get(line), new Point(x + SIDE * height, base),
                            height, Anchor.LEFT));
                }
            }
            x += widths.get(column);
        }
    }

    @Override
    public Table movedBy(double dx, double dy) {
        return new Table(topLeft.movedBy(dx, dy), widths, rows, height);
    }

    @Override
    public void drawOn(Canvas canvas) {
        parts().forEach(part -> part.drawOn(canvas));
    }
}
