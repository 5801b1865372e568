package org.garboard.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;

/** The table of revisions over a title block, the latest on top; its heading next to the block. */
final class RevisionRows {
    /** More than these would crowd the sheet; the record holds them all: our choice. */
    private static final int MOST = 4;
    private static final double[] WIDTHS = {14, 24, 34, 108};
    private static final double PITCH = 2.6;
    private static final double AROUND = 2.2;

    private final List<Entity> drawn = new ArrayList<>();
    private double top;

    private RevisionRows(double top) {
        this.top = top;
    }

    /** Nothing where there are none. */
    static List<Entity> above(double top, List<TitleBlock.Revision> revisions) {
        RevisionRows rows = new RevisionRows(top);
        if (!revisions.isEmpty()) {
            rows.row("Rev.", "Date", "By", "Changed" + (revisions.size() > MOST ? " (" + (revisions.size() - MOST) + " earlier: see the record)" : ""));
            revisions.subList(Math.max(0, revisions.size() - MOST), revisions.size())
                    .forEach(revision -> rows.row(revision.mark(), revision.date(), revision.by(), revision.changed()));
        }
        return rows.drawn;
    }

    private void row(String... cells) {
        List<List<String>> lines = new ArrayList<>();
        for (int i = 0; i < cells.length; i++) {
            lines.add(TitleBlockDrawing.lines(cells[i], WIDTHS[i] - 2 * TitleBlockDrawing.SIDE));
        }
        double height = lines.stream().mapToInt(List::size).max().orElseThrow() * PITCH + AROUND;
        double left = -TitleBlockDrawing.WIDTH;
        for (int i = 0; i < cells.length; i++) {
            drawn.add(new Line(Layer.GRID, new Point(left, top), new Point(left, top + height)));
            for (int line = 0; line < lines.get(i).size(); line++) {
                drawn.add(Text.level(Layer.TITLE, lines.get(i).get(line), new Point(left + TitleBlockDrawing.SIDE, top + height - (line + 1) * PITCH - 0.6),
                        TitleBlockDrawing.SMALL_VALUE, Anchor.LEFT));
            }
            left += WIDTHS[i];
        }
        drawn.add(new Line(Layer.GRID, new Point(0, top), new Point(0, top + height)));
        top += height;
        drawn.add(new Line(Layer.TITLE, new Point(-TitleBlockDrawing.WIDTH, top), new Point(0, top)));
    }
}
