package org.garboard.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Circle;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.LetterWidths;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Text;
import org.garboard.drawing.Wrap;

/** Draws a title block, 180 mm wide (ISO 7200), its lower right corner at the origin. */
final class TitleBlockDrawing {

    static final double WIDTH = 180;
    private static final double ROW = 8.5;
    static final double SIDE = 1.2;
    private static final double LABEL = 1.8;
    private static final double VALUE = 2.5;
    static final double SMALL_VALUE = 1.8;
    /** Stands where words were left out. */
    private static final String MORE = "...";

    /** One field. */
    private record Field(String label, String value, double width) {
    }

    private final List<Entity> drawn = new ArrayList<>();

    private TitleBlockDrawing() {
    }

    /** A value longer than two lines of the smallest lettering is cut short, and a mark says so. */
    static List<Entity> of(TitleBlock block) {
        TitleBlockDrawing drawing = new TitleBlockDrawing();
        drawing.row(5, new Field("Status", block.status(), WIDTH));
        drawing.row(4, new Field("Legal owner", block.owner(), 70), new Field("Created by", block.creator(), 40),
                new Field("Approved by", block.approver(), 40), new Field("Date of issue", block.date(), 30));
        drawing.row(3, new Field("Title", block.title(), 70), new Field("Document type", block.documentType(), 50),
                new Field("Identification number", block.number(), 60));
        drawing.row(2, new Field("Boat, hull number", block.boat(), 84), new Field("Revision", block.revision(), 18),
                new Field("Sheet", block.sheet(), 58), new Field("Language", "en", 20));
        drawing.row(1, new Field("Scale", block.scale(), 20), new Field("Units", block.units(), 62),
                new Field("Paper", block.paper(), 22), new Field("Projection", "", 36),
                new Field("Made with", block.version(), 40));
        drawing.symbol(block.projection(), new Point(-WIDTH + 104 + 26, ROW * 1.5));
        drawing.row(0, new Field(block.sourceName(), block.source(), WIDTH));
        drawing.outline();
        drawing.drawn.addAll(RevisionRows.above(6 * ROW, block.revisions()));
        return drawing.drawn;
    }

    private void outline() {
        double top = 6 * ROW;
        drawn.add(new Line(Layer.TITLE, new Point(-WIDTH, top), new Point(0, top)));
        drawn.add(new Line(Layer.TITLE, new Point(-WIDTH, 0), new Point(-WIDTH, top)));
        drawn.add(new Line(Layer.TITLE, new Point(0, 0), new Point(0, top)));
        drawn.add(new Line(Layer.TITLE, new Point(-WIDTH, 0), new Point(0, 0)));
    }

    private void row(int number, Field... fields) {
        double bottom = number * ROW;
        double left = -WIDTH;
        for (Field field : fields) {
            if (left > -WIDTH) {
                drawn.add(new Line(Layer.GRID, new Point(left, bottom), new Point(left, bottom + ROW)));
            }
            write(field, left + SIDE, bottom);
            left += field.width();
        }
        if (number > 0) {
            drawn.add(new Line(Layer.GRID, new Point(-WIDTH, bottom), new Point(0, bottom)));
        }
    }

    private void write(Field field, double left, double bottom) {
        drawn.add(text(field.label(), left, bottom + ROW - LABEL - 0.6, LABEL));
        if (field.value().isBlank()) {
            return;
        }
        double room = field.width() - 2 * SIDE;
        if (LetterWidths.extent(field.value(), VALUE) <= room) {
            drawn.add(text(field.value(), left, bottom + 1.6, VALUE));
            return;
        }
        List<String> lines = lines(field.value(), room);
        for (int line = 0; line < lines.size(); line++) {
            drawn.add(text(lines.get(line), left, bottom + (lines.size() == 1 ? 1.6 : 3.1 - 2.5 * line), SMALL_VALUE));
        }
    }

    /** In the smallest lettering, two lines at the most. */
    static List<String> lines(String words, double room) {
        List<String> lines = Wrap.lines(words, room, SMALL_VALUE);
        return lines.size() > 2 ? List.of(lines.get(0), shortened(lines.get(1), room)) : lines;
    }

    /** As much of a line as leaves room for the mark that more follows. */
    private static String shortened(String line, double room) {
        int end = line.length();
        while (end > 0 && LetterWidths.extent(line.substring(0, end) + MORE, SMALL_VALUE) > room) {
            end = line.offsetByCodePoints(end, -1);
        }
        return line.substring(0, end) + MORE;
    }

    private static Text text(String words, double x, double y, double height) {
        return Text.level(Layer.TITLE, words, new Point(x, y), height, Anchor.LEFT);
    }

    /**
     * The truncated cone, small end to the left; its end view stands beyond the large end in first
     * angle projection, beyond the small end in third (ISO 5456-2).
     */
    private void symbol(TitleBlock.Projection projection, Point middle) {
        double cone = projection == TitleBlock.Projection.FIRST_ANGLE ? -4.5 : 4.5;
        Point side = middle.movedBy(cone, 0);
        Point end = middle.movedBy(-cone, 0);
        drawn.add(Polyline.closed(Layer.TITLE, List.of(side.movedBy(-3, -1.25), side.movedBy(3, -2.5),
                side.movedBy(3, 2.5), side.movedBy(-3, 1.25))));
        drawn.add(new Circle(Layer.TITLE, end, 2.5));
        drawn.add(new Circle(Layer.TITLE, end, 1.25));
        drawn.add(new Line(Layer.GRID, middle.movedBy(-8.5, 0), middle.movedBy(8.5, 0)));
        drawn.add(new Line(Layer.GRID, end.movedBy(0, -3.2), end.movedBy(0, 3.2)));
    }
}
