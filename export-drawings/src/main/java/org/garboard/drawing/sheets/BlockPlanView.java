package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.template.Template;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Box;
import org.garboard.drawing.Circle;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Leader;
import org.garboard.drawing.LetterWidths;
import org.garboard.drawing.Line;
import org.garboard.drawing.LinearDimension;
import org.garboard.drawing.LinearDimension.Direction;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;

/** The block seen from below along the stem's axis: outline, holes, the rows at which its heights are given. */
final class BlockPlanView {
    private final BlockTask block;
    private final Scale scale;
    private final double letter;
    private final List<Entity> shown = new ArrayList<>();

    private BlockPlanView(BlockTask block, Scale scale) {
        this.block = block;
        this.scale = scale;
        this.letter = block.task().lettering().figures();
    }

    static View of(BlockTask block, Scale scale) {
        BlockPlanView view = new BlockPlanView(block, scale);
        view.outlines();
        view.rows();
        view.lengths();
        view.directions();
        return ViewTitle.above(block.name().toUpperCase(java.util.Locale.ROOT) + " SEEN FROM BELOW: STARBOARD IS UP",
                "Bow right. Seen along the hole's axis." + (block.rows().isEmpty() ? "" : " Numbered rows: heights in the table."),
                view.shown, block.task().lettering(), 0);
    }

    private Point at(FlatPoint point) {
        return BlockTask.below(scale, point.u(), point.v());
    }

    private void outlines() {
        Template plan = block.plan();
        shown.add(Polyline.closed(Layer.CUT, plan.outline().stream().map(this::at).toList()));
        plan.openings().forEach(opening -> shown.add(Polyline.closed(Layer.CUT, opening.stream().map(this::at).toList())));
        plan.holes().forEach(hole -> shown.add(new Circle(Layer.CUT, at(hole.centre()), scale.paper(hole.diameter() / 2))));
        plan.marks().stream().filter(mark -> mark.kind() == Template.Kind.SCRIBED)
                .forEach(mark -> shown.add(Polyline.open(Layer.HULL, mark.line().stream().map(this::at).toList())));
        double over = 1.5 * letter;
        shown.add(new Line(Layer.CENTRE, BlockTask.below(scale, block.tail(), 0).movedBy(-over, 0), BlockTask.below(scale, block.nose(), 0).movedBy(over, 0)));
        shown.add(new Line(Layer.CENTRE, BlockTask.below(scale, 0, -block.half()), BlockTask.below(scale, 0, block.half())));
    }

    /** A line across at each row; numbers above, as many as find room. */
    private void rows() {
        double top = scale.paper(block.half()) + 1.5 * letter;
        double last = Double.POSITIVE_INFINITY;
        for (int i = 0; i < block.rows().size(); i++) {
            double aft = block.rows().get(i).aft();
            double half = block.rows().get(i).halfBreadth();
            Point at = BlockTask.below(scale, aft, 0);
            shown.add(new Line(Layer.GRID, at.movedBy(0, -scale.paper(half)), new Point(at.x(), top - 0.3 * letter)));
            String number = String.valueOf(i + 1);
            if (last - at.x() > LetterWidths.extent(number, letter) + 0.4 * letter) {
                shown.add(Text.level(Layer.TEXT, number, new Point(at.x(), top), letter, Anchor.MIDDLE));
                last = at.x();
            }
        }
    }

    private void lengths() {
        Box box = View.around("block", shown).frame();
        double row = -scale.paper(block.half()) - 10;
        double next = 2.2 * letter;
        Point stem = new Point(0, 0);
        for (Template.RoundHole hole : block.plan().holes()) {
            Point at = at(hole.centre());
            if (Math.abs(at.x()) > 1e-3 && Math.abs(at.y()) < 1e-3) {
                shown.add(new LinearDimension(Direction.HORIZONTAL, at.x() < 0 ? at : stem, at.x() < 0 ? stem : at, new Point(0, row),
                        Figures.tenths(Math.abs(hole.centre().u()) * 1000), letter));
                row -= next;
            }
        }
        shown.add(new LinearDimension(Direction.HORIZONTAL, BlockTask.below(scale, block.tail(), 0), BlockTask.below(scale, block.nose(), 0),
                new Point(0, row), block.task().figures().fine(block.length()), letter));
        FlatPoint widest = block.plan().outline().stream().max((a, b) -> Double.compare(a.v(), b.v())).orElseThrow();
        shown.add(new LinearDimension(Direction.VERTICAL, BlockTask.below(scale, widest.u(), -widest.v()), at(widest), new Point(box.right() + 12, 0),
                block.task().figures().fine(2 * widest.v()), letter));
    }

    private void directions() {
        Box box = View.around("plan", shown).frame();
        double middle = LetterWidths.extent("STBD", letter) / 2 + 2;
        shown.add(Text.centred(Layer.TEXT, "STBD", new Point(box.left() - letter, middle), letter, 90));
        shown.add(Text.centred(Layer.TEXT, "PORT", new Point(box.left() - letter, -middle), letter, 90));
        Point bow = new Point(box.right() + 2, 0);
        shown.add(new Leader(Layer.DIM, Leader.End.ARROW, List.of(bow.movedBy(3.5 * letter, 0), bow)));
        shown.add(Text.level(Layer.TEXT, "FWD", bow.movedBy(0, 0.7 * letter), letter, Anchor.LEFT));
    }
}
