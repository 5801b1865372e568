package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Hatch;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.LinearDimension;
import org.garboard.drawing.LinearDimension.Direction;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.Cluster;

/** Sections through the stem's axis: every part as it is cut, from its solid; and the saw's cut through the block. */
final class BlockSectionView {
    private static final String BODY = "transducer-body";
    /** The saw's cut runs so far beyond the block [mm]. */
    private static final double BEYOND = 6;
    private static final double SPACING = 2.5;
    /** Strokes of neighbours cross. */
    private static final Map<String, Double> ANGLES = angles();

    private final BlockTask block;
    private final Scale scale;
    private final double letter;
    private final List<Entity> shown = new ArrayList<>();

    private BlockSectionView(BlockTask block, Scale scale) {
        this.block = block;
        this.scale = scale;
        this.letter = block.task().lettering().figures();
    }

    private static Map<String, Double> angles() {
        Map<String, Double> angles = new LinkedHashMap<>();
        angles.put("fairing-block", 45.0);
        angles.put("hull-skin", 135.0);
        angles.put("inner-block", 30.0);
        angles.put("backing-block", 45.0);
        angles.put("sleeve", 0.0);
        return angles;
    }

    static View athwart(BlockTask block, Scale scale) {
        BlockSectionView view = new BlockSectionView(block, scale);
        block.task().made().solids().forEach(part -> view.part(part, block.athwart(part, scale)));
        view.sawn(-block.half(), block.saw().port(), block.half(), block.saw().starboard());
        view.axis();
        view.sides();
        return ViewTitle.above("SECTION AT THE STEM, LOOKING FORWARD", "Starboard right; up is along the hole's axis, into the boat. Chain line: the saw's cut.",
                view.shown, block.task().lettering(), 24 * view.letter);
    }

    static View lengthwise(BlockTask block, Scale scale) {
        BlockSectionView view = new BlockSectionView(block, scale);
        block.task().made().solids().forEach(part -> view.part(part, block.lengthwise(part, scale)));
        view.sawn(-block.tail(), block.saw().tail(), -block.nose(), block.saw().nose());
        view.axis();
        return ViewTitle.above("LONG SECTION AT THE STEM", "Bow right, seen from starboard; up is along the hole's axis, into the boat. Chain line: the saw's cut.",
                view.shown, block.task().lettering(), 24 * view.letter);
    }

    /** What the strokes stand for. */
    static Cluster legend(BlockTask block) {
        double h = block.task().lettering().tables();
        List<Entity> drawn = new ArrayList<>();
        drawn.add(Text.level(Layer.TEXT, "PARTS IN THE SECTIONS", new Point(0, 2 * h), block.task().lettering().headings(), Anchor.LEFT));
        double y = -h;
        for (NamedSolid part : block.task().made().solids()) {
            List<Point> swatch = List.of(new Point(0, y), new Point(5 * h, y), new Point(5 * h, y + 2 * h), new Point(0, y + 2 * h));
            if (ANGLES.containsKey(part.name())) {
                drawn.add(new Hatch(Layer.HATCH, List.of(swatch), ANGLES.get(part.name()), SPACING));
            }
            drawn.add(Polyline.closed(part.name().equals(BODY) ? Layer.ADJACENT : Layer.MARK, swatch));
            drawn.add(Text.level(Layer.TEXT, part.name().replace('-', ' '), new Point(6 * h, y + h / 2), h, Anchor.LEFT));
            y -= 2.8 * h;
        }
        return Cluster.of(drawn);
    }

    private void part(NamedSolid part, List<List<Point>> loops) {
        boolean body = part.name().equals(BODY);
        for (List<Point> loop : loops) {
            List<Point> corners = withoutStraightOnes(loop);
            if (corners.size() > 2) {
                shown.add(Polyline.closed(body ? Layer.ADJACENT : Layer.HULL, corners));
                if (!body) {
                    shown.add(new Hatch(Layer.HATCH, List.of(corners), ANGLES.getOrDefault(part.name(), 60.0), SPACING));
                }
            }
        }
    }

    /** Leaves out corners of the mesh at which nothing turns. */
    private static List<Point> withoutStraightOnes(List<Point> loop) {
        List<Point> kept = new ArrayList<>();
        for (Point point : loop) {
            while (kept.size() > 1 && straight(kept.get(kept.size() - 2), kept.get(kept.size() - 1), point)) {
                kept.remove(kept.size() - 1);
            }
            if (kept.isEmpty() || kept.get(kept.size() - 1).distanceTo(point) > 1e-3) {
                kept.add(point);
            }
        }
        while (kept.size() > 3 && (straight(kept.get(kept.size() - 2), kept.get(kept.size() - 1), kept.get(0))
                || kept.get(kept.size() - 1).distanceTo(kept.get(0)) < 1e-3)) {
            kept.remove(kept.size() - 1);
        }
        return kept;
    }

    private static boolean straight(Point a, Point b, Point c) {
        double across = (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
        return Math.abs(across) < 2e-3 * a.distanceTo(c);
    }

    /** Two heights above the block's face, so far to the left and right [m]. */
    private void sawn(double left, double atLeft, double right, double atRight) {
        Point from = new Point(scale.paper(left), scale.paper(block.level(atLeft)));
        Point to = new Point(scale.paper(right), scale.paper(block.level(atRight)));
        double slope = (to.y() - from.y()) / (to.x() - from.x());
        shown.add(new Line(Layer.CENTRE, from.movedBy(-BEYOND, -BEYOND * slope), to.movedBy(BEYOND, BEYOND * slope)));
    }

    private void axis() {
        double low = View.around("so far", shown).frame().bottom();
        double high = View.around("so far", shown).frame().top();
        shown.add(new Line(Layer.CENTRE, new Point(0, low - 3), new Point(0, high + 3)));
    }

    /** Heights of the two sides above the face, where they are known row by row. */
    private void sides() {
        block.rows().stream().filter(row -> Math.abs(row.aft()) < 1e-9).findFirst().ifPresent(row -> {
            side(-1, row.halfBreadth(), row.port());
            side(1, row.halfBreadth(), row.starboard());
        });
    }

    private void side(int side, double half, double height) {
        double x = side * scale.paper(half);
        shown.add(new LinearDimension(Direction.VERTICAL, new Point(x, scale.paper(block.level(0))), new Point(x, scale.paper(block.level(height))),
                new Point(x + side * (10 + (side > 0 ? letter : 0)), 0), block.task().figures().fine(height), letter));
    }
}
