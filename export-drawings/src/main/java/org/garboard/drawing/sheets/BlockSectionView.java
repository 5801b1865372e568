package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.garboard.cutout.part.BodySeat;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.LinearDimension;
import org.garboard.drawing.LinearDimension.Direction;
import org.garboard.drawing.Point;
import org.garboard.drawing.Scale;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.ClearPlace;

/** Sections through the stem's axis: every part as it is cut, from its solid; and the saw's cut through the block. */
final class BlockSectionView {
    /** The saw's cut runs so far beyond the block [mm]. */
    private static final double BEYOND = 6;

    /** So far inside its end a part is measured [mm]. */
    private static final double INSIDE = 1e-3;

    private final BlockTask block;
    private final Scale scale;
    private final double letter;
    private final List<Entity> shown = new ArrayList<>();

    private BlockSectionView(BlockTask block, Scale scale) {
        this.block = block;
        this.scale = scale;
        this.letter = block.task().lettering().figures();
    }

    static View athwart(BlockTask block, Scale scale) {
        BlockSectionView view = new BlockSectionView(block, scale);
        block.task().made().solids().forEach(part -> view.shown.addAll(CutParts.of(part, block.planes().athwart(part, scale))));
        view.sawn(-block.half(), block.saw().port(), block.half(), block.saw().starboard());
        view.thicknesses(part -> block.planes().athwart(part, scale));
        view.axis();
        block.seat().ifPresent(seat -> view.seat(seat, seat.outline().width() / 2));
        return ViewTitle.above("SECTION AT THE STEM, LOOKING FORWARD", "Starboard right; up is along the hole's axis, into the boat. Chain line: the saw's cut.",
                view.shown, block.task().lettering(), 24 * view.letter);
    }

    static View lengthwise(BlockTask block, Scale scale) {
        BlockSectionView view = new BlockSectionView(block, scale);
        block.task().made().solids().forEach(part -> view.shown.addAll(CutParts.of(part, block.planes().lengthwise(part, scale))));
        view.sawn(-block.tail(), block.saw().tail(), -block.nose(), block.saw().nose());
        view.thicknesses(part -> block.planes().lengthwise(part, scale));
        view.axis();
        block.seat().ifPresent(seat -> view.seat(seat, seat.outline().length() / 2));
        return ViewTitle.above("LONG SECTION AT THE STEM", "Bow right, seen from starboard; up is along the hole's axis, into the boat. Chain line: the saw's cut.",
                view.shown, block.task().lettering(), 24 * view.letter);
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

    /** Of every block along the axis, where the section ends on either side, from the top down: a lower one's lines pass under the figures of those above. */
    private void thicknesses(Function<NamedSolid, List<List<Point>>> section) {
        List<List<List<Point>>> blocks = block.task().made().solids().stream().filter(part -> part.name().endsWith("block")).map(section)
                .sorted(Comparator.comparingDouble(loops -> -box(loops).top())).toList();
        for (List<List<Point>> loops : blocks) {
            thickness(loops, box(loops).left() + INSIDE, -1);
            thickness(loops, box(loops).right() - INSIDE, 1);
        }
    }

    /** Of recess or lip: how deep or high, and how far across, with the half of that told [m]. */
    private void seat(BodySeat seat, double half) {
        double edge = scale.paper(half);
        double mouth = scale.paper(block.level(seat.mouth()));
        double bearing = scale.paper(block.level(seat.bearing()));
        double below = View.around("so far", shown).frame().bottom() - letter;
        shown.addAll(ClearPlace.among(IntStream.range(0, 4).mapToObj(row -> List.<Entity>of(new LinearDimension(Direction.HORIZONTAL,
                new Point(-edge, Math.min(mouth, bearing)), new Point(edge, Math.min(mouth, bearing)), new Point(0, below - (1 + 2.2 * row) * letter),
                block.task().figures().fine(2 * half), letter))).toList(), shown));
        // a lip is solid: told in the stem's hole; a recess in itself; where neither has room beside the recess, else by the table alone
        double wall = seat.lip() ? scale.paper(block.stemHole() / 2) : edge;
        ClearPlace.clearAmong(IntStream.range(0, 14).mapToObj(place -> {
            int side = place % 2 == 0 ? 1 : -1;
            double x = place < 8 ? wall * (0.8 - 0.15 * (place / 2)) : wall + (place / 2 - 3) * 2.2 * letter;
            return List.<Entity>of(new LinearDimension(Direction.VERTICAL, new Point(side * wall, Math.min(mouth, bearing)),
                    new Point(side * wall, Math.max(mouth, bearing)), new Point(side * x, 0), block.task().figures().fine(seat.depth()), letter));
        }).toList(), shown).ifPresent(shown::addAll);
    }

    private static Box box(List<List<Point>> loops) {
        return Box.around(loops.stream().flatMap(List::stream).toList());
    }

    private void thickness(List<List<Point>> loops, double x, int side) {
        Span.at(x, loops).ifPresent(span -> shown.addAll(ClearPlace.among(IntStream.range(0, 4).mapToObj(row -> List.<Entity>of(
                new LinearDimension(Direction.VERTICAL, new Point(x, span.low()), new Point(x, span.high()),
                        new Point(x + side * (10 + (side > 0 ? letter : 0) + 2.2 * row * letter), 0),
                        block.task().figures().fine(scale.trueMm(span.high() - span.low()) / 1000), letter))).toList(), shown)));
    }
}
