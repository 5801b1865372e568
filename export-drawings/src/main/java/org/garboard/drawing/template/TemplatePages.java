package org.garboard.drawing.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.LetterWidths;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.Text;
import org.garboard.drawing.Wrap;
import org.garboard.drawing.template.TileGrid.Tile;

/** A template as pages: a map of the tiles with what to do, then the tiles. */
public final class TemplatePages {
    private static final double LETTERS = 2.5;
    private static final double CROSS = 4;
    private static final String AT_FULL_SIZE = "Print at 100 % / Actual size; do not choose Fit or Shrink.";
    private static final String REJECT = "If 100 mm measures outside 99.8 to 100.2, or 4 in is not 4 in, DO NOT USE.";

    private final TemplateShape shape;
    private final TilePaper paper;
    private final TileGrid grid;
    private final List<Line> lines = new ArrayList<>();

    private TemplatePages(TemplateShape shape, TilePaper paper) {
        this.shape = shape;
        this.paper = paper;
        this.grid = TileGrid.over(shape.extents(), paper);
        for (int i = 0; i < shape.outline().size(); i++) {
            lines.add(new Line(Layer.CUT, shape.outline().get(i), shape.outline().get((i + 1) % shape.outline().size())));
        }
        lines.addAll(shape.strokes());
    }

    public static List<Sheet> of(TemplateShape shape, TilePaper paper) {
        TemplatePages pages = new TemplatePages(shape, paper);
        List<Sheet> all = new ArrayList<>();
        all.add(pages.map());
        pages.used().forEach(tile -> all.add(pages.page(tile)));
        return all;
    }

    /** Tiles on which something is drawn. */
    private List<Tile> used() {
        return grid.tiles().stream().filter(tile -> lines.stream().anyMatch(line -> Clipped.of(line, tile.window()).isPresent())).toList();
    }

    private Sheet sheet(String title, List<Entity> drawn) {
        return new Sheet(title, "Template at true size on " + paper.words(), paper.width(), paper.height(), new Scale(1), LETTERS,
                List.of(), drawn);
    }

    private List<Entity> foot(String tile) {
        Box window = paper.window();
        List<Entity> drawn = new ArrayList<>(Rulers.of(new Point(paper.left(), window.bottom() - 7),
                new Point(window.right() + 4, window.bottom())));
        double x = paper.left();
        // the level rulers run 102 mm and their words a little farther
        double beside = x + 122;
        drawn.add(text(tile, beside, window.bottom() - 10, 5));
        drawn.add(text("True size 1:1, mm", beside, window.bottom() - 15, LETTERS));
        double y = paper.foot() + 7;
        for (String line : List.of(AT_FULL_SIZE + " " + REJECT, shape.lay().seen() + " " + shape.lay().laid())) {
            double height = Math.min(LETTERS, 2.5);
            double width = paper.width() - 2 * x;
            while (LetterWidths.extent(line, height) > width && height > 1.8) {
                height -= 0.1;
            }
            drawn.add(text(line, x, y, height));
            y -= 3.6;
        }
        String heading = Wrap.lines(shape.heading(), paper.width() - 2 * x, LETTERS).get(0);
        drawn.add(text(heading.length() < shape.heading().length() ? heading.substring(0, heading.length() - 1) + "…" : heading, x,
                paper.foot() - 0.4, LETTERS));
        return drawn;
    }

    private Sheet page(Tile tile) {
        Box window = paper.window();
        double dx = window.left() - tile.window().left();
        double dy = window.bottom() - tile.window().bottom();
        List<Entity> drawn = new ArrayList<>(foot("Tile " + tile.name()));
        for (Line line : lines) {
            Optional<Line> clipped = Clipped.of(line, tile.window());
            clipped.ifPresent(part -> drawn.add(part.movedBy(dx, dy)));
        }
        shape.letters().stream().filter(letter -> tile.window().contains(letter.bounds())).forEach(letter -> drawn.add(letter.movedBy(dx, dy)));
        corners(window, drawn);
        neighbours(tile, window, drawn);
        for (NamedLine line : shape.named()) {
            line.on(tile.window(), drawn.stream().map(entity -> entity.movedBy(-dx, -dy)).toList()).ifPresent(name -> drawn.add(name.movedBy(dx, dy)));
        }
        return sheet(shape.title() + ", tile " + tile.name(), drawn);
    }

    /** Where the sheet is trimmed: an angle outside each corner of the window. */
    private static void corners(Box window, List<Entity> drawn) {
        for (int right = 0; right <= 1; right++) {
            for (int top = 0; top <= 1; top++) {
                Point corner = new Point(right == 0 ? window.left() : window.right(), top == 0 ? window.bottom() : window.top());
                drawn.add(new Line(Layer.TRIM, corner, corner.movedBy(right == 0 ? -CROSS : CROSS / 2, 0)));
                drawn.add(new Line(Layer.TRIM, corner, corner.movedBy(0, top == 0 ? -CROSS : CROSS)));
            }
        }
    }

    /** Crosses in the middle of the overlaps, two to a side, and beside the window the neighbour's name. */
    private void neighbours(Tile tile, Box window, List<Entity> drawn) {
        double half = TileGrid.OVERLAP / 2;
        for (double share : new double[] {0.25, 0.75}) {
            double y = window.bottom() + share * window.height();
            double x = window.left() + share * window.width();
            if (tile.column() > 0) {
                cross(new Point(window.left() + half, y), drawn);
                drawn.add(upright("to " + TileGrid.name(tile.row(), tile.column() - 1), window.left() - 2, y));
            }
            if (tile.column() < grid.columns() - 1) {
                cross(new Point(window.right() - half, y), drawn);
                drawn.add(upright("to " + TileGrid.name(tile.row(), tile.column() + 1), window.right() + 3, y));
            }
            if (tile.row() > 0) {
                cross(new Point(x, window.top() - half), drawn);
                drawn.add(text("to " + TileGrid.name(tile.row() - 1, tile.column()), x, window.top() + 1.5, LETTERS));
            }
            if (tile.row() < grid.rows() - 1) {
                cross(new Point(x, window.bottom() + half), drawn);
                drawn.add(text("to " + TileGrid.name(tile.row() + 1, tile.column()), x, window.bottom() - 3.6, LETTERS));
            }
        }
    }

    private static void cross(Point at, List<Entity> drawn) {
        drawn.add(new Line(Layer.MARK, at.movedBy(-CROSS, 0), at.movedBy(CROSS, 0)));
        drawn.add(new Line(Layer.MARK, at.movedBy(0, -CROSS), at.movedBy(0, CROSS)));
    }

    private static Text upright(String words, double x, double y) {
        return new Text(Layer.TEXT, words, new Point(x, y), LETTERS, Anchor.LEFT, 90);
    }

    private static Text text(String words, double x, double y, double height) {
        return Text.level(Layer.TEXT, words, new Point(x, y), height, Anchor.LEFT);
    }

    private Sheet map() {
        Box window = paper.window();
        List<Entity> drawn = new ArrayList<>(foot("Map"));
        double y = window.top() - 5;
        for (String line : Wrap.lines(shape.title(), window.width(), 5)) {
            drawn.add(text(line, window.left(), y, 5));
            y -= 8;
        }
        int number = 1;
        for (String step : steps()) {
            drawn.add(text(String.valueOf(number++), window.left(), y, LETTERS));
            for (String line : Wrap.lines(step, window.width() - 6, LETTERS)) {
                drawn.add(text(line, window.left() + 6, y, LETTERS));
                y -= 4;
            }
            y -= 1;
        }
        tileMap(new Box(window.left(), window.bottom() + 4, window.right(), y - 4), drawn);
        return sheet(shape.title(), drawn);
    }

    private List<String> steps() {
        List<String> steps = new ArrayList<>();
        steps.add(AT_FULL_SIZE + " Measure all four rulers on every page with a steel rule. " + REJECT);
        if (used().size() > 1) {
            steps.add("Trim two neighbouring edges of each tile at the corner marks; lay the tiles over each other by 10 mm until the crosses fall "
                    + "together; tape them. The map shows their order; tiles in brackets are empty and not printed.");
        }
        steps.add("Then measure the joined sheet before use, each within " + shape.within() + " (sheet 7 the same):");
        steps.addAll(shape.checks());
        steps.add("Paper moves by 1 to 3 mm in a metre with the damp (from memory): the tape decides, the template gives the shape.");
        steps.add(shape.lay().step() + " " + shape.lay().seen() + " Not to be cut until the check measurements are signed.");
        if (!shape.revisions().isEmpty()) {
            steps.add("Revisions: " + String.join("; ", shape.revisions()) + ". Tear up templates of earlier ones.");
        }
        return steps;
    }

    /** All tiles, small, those that are printed hatched round with a full line and named, with the outline over them. */
    private void tileMap(Box room, List<Entity> drawn) {
        double k = Math.min(room.width() / grid.cover().width(), room.height() / grid.cover().height());
        List<Tile> used = used();
        for (Tile tile : grid.tiles()) {
            Box box = tile.window().grownBy(-TileGrid.OVERLAP / 2);
            Point low = small(new Point(box.left(), box.bottom()), room, k);
            Point high = small(new Point(box.right(), box.top()), room, k);
            drawn.add(Polyline.closed(Layer.GRID, List.of(low, new Point(high.x(), low.y()), high, new Point(low.x(), high.y()))));
            String name = used.contains(tile) ? tile.name() : "(" + tile.name() + ")";
            drawn.add(Text.level(Layer.TEXT, name, new Point(low.x() + 1, high.y() - 3.6), LETTERS, Anchor.LEFT));
        }
        List<Point> outline = new ArrayList<>();
        for (Point point : shape.outline()) {
            Point at = small(point, room, k);
            if (outline.isEmpty() || outline.get(outline.size() - 1).distanceTo(at) > 0.05) {
                outline.add(at);
            }
        }
        drawn.add(Polyline.closed(Layer.CUT, outline));
    }

    private Point small(Point point, Box room, double k) {
        return new Point(room.centre().x() + k * (point.x() - grid.cover().centre().x()),
                room.top() - k * (grid.cover().top() - point.y()));
    }
}
