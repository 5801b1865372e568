package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
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
import org.garboard.drawing.Scale;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.ClearPlace;

/** What is cut, seen from below along the axis: openings, their cross, the stem's hole in the block beyond. */
final class CutoutPlanView {
    private final CutTask cut;
    private final Scale scale;
    private final double letter;
    private final List<Entity> shown = new ArrayList<>();

    private CutoutPlanView(CutTask cut, Scale scale) {
        this.cut = cut;
        this.scale = scale;
        this.letter = cut.letter();
    }

    static View of(CutTask cut, Scale scale) {
        CutoutPlanView view = new CutoutPlanView(cut, scale);
        cut.openings().forEach(opening -> view.shown.add(opening.below(scale, Layer.CUT)));
        cut.inBlock().ifPresent(hole -> view.shown.add(new Circle(Layer.HIDDEN, new Point(0, 0), scale.paper(hole / 2))));
        view.cross();
        view.lengths();
        view.rounds();
        view.directions();
        return ViewTitle.above("CUTOUT SEEN FROM BELOW: STARBOARD IS UP", "Bow right. Seen along the hole's axis; the cross is mark E of sheet 2."
                + (cut.inBlock().isPresent() ? " Dashed: the stem's hole in the block inside." : ""), view.shown, cut.task().lettering(), 24 * view.letter);
    }

    private void cross() {
        Box box = View.around("openings", shown).frame();
        double over = 1.5 * letter;
        shown.add(new Line(Layer.CENTRE, new Point(box.left() - over, 0), new Point(box.right() + over, 0)));
        for (Opening opening : cut.openings()) {
            Point middle = BlockTask.below(scale, opening.aft(), 0);
            double half = scale.paper(opening.outline().width() / 2) + over;
            shown.add(new Line(Layer.CENTRE, middle.movedBy(0, -half), middle.movedBy(0, half)));
        }
    }

    private void lengths() {
        Box box = View.around("openings", shown).frame();
        double row = box.bottom() - 8;
        // from forward aft: a figure that finds no room between its arrows stands forward of them, below what is drawn already
        for (Opening opening : cut.openings().stream().sorted(Comparator.comparingDouble(Opening::aft)).toList()) {
            Point at = BlockTask.below(scale, opening.aft(), 0);
            if (Math.abs(at.x()) > 1e-3) {
                fromAxis(at, row, cut.figures().fine(Math.abs(opening.aft())));
            }
        }
        if (!cut.main().isRound()) {
            double half = cut.main().outline().length() / 2;
            double wide = cut.main().outline().width() / 2;
            shown.add(new LinearDimension(Direction.HORIZONTAL, BlockTask.below(scale, half, 0), BlockTask.below(scale, -half, 0), new Point(0, row),
                    cut.figures().fine(2 * half), letter));
            shown.add(new LinearDimension(Direction.VERTICAL, BlockTask.below(scale, 0, -wide), BlockTask.below(scale, 0, wide),
                    new Point(box.right() + 8 + letter, 0), cut.figures().fine(2 * wide), letter));
        }
    }

    private void fromAxis(Point at, double firstRow, String words) {
        Point axis = new Point(0, 0);
        shown.addAll(ClearPlace.among(IntStream.range(0, 5).mapToObj(row -> List.<Entity>of(new LinearDimension(Direction.HORIZONTAL, at.x() < 0 ? at : axis,
                at.x() < 0 ? axis : at, new Point(0, firstRow - 2.2 * row * letter), words, letter))).toList(), shown));
    }

    /** By leaders: some readers turn a radius's lettering along its arrow, across its neighbours. */
    private void rounds() {
        for (Opening opening : cut.openings()) {
            if (opening.isRound()) {
                round(BlockTask.below(scale, opening.aft(), 0), opening.outline().radius(), "Ø" + cut.figures().fine(opening.outline().length()), 60);
            } else if (opening.outline().radius() > 0) {
                round(BlockTask.below(scale, opening.aft() + opening.cornersAlong(), opening.cornersAcross()), opening.outline().radius(),
                        "R" + cut.figures().fine(opening.outline().radius()), 120);
            }
        }
        OptionalDouble hole = cut.inBlock();
        if (hole.isPresent()) {
            round(new Point(0, 0), hole.getAsDouble() / 2, "Ø" + cut.figures().fine(hole.getAsDouble()) + " in the block", 60);
        }
    }

    /** Lettered above all openings, where it is clear. */
    private void round(Point centre, double radius, String words, double direction) {
        double top = View.around("openings", shown).frame().top() + 2.5 * letter;
        List<List<Entity>> places = new ArrayList<>();
        for (double from : new double[] {direction, 180 - direction}) {
            Point onCurve = centre.towards(from, scale.paper(radius));
            int side = from < 90 ? 1 : -1;
            for (double lean : new double[] {0.6, 1, 0.3, 1.5, 2.2, 0.1}) {
                double rise = top - onCurve.y();
                Point end = onCurve.movedBy(side * lean * rise, rise);
                places.add(List.of(new Leader(Layer.DIM, Leader.End.ARROW, List.of(onCurve, end)),
                        Text.level(Layer.DIM, words, end.movedBy(side, -letter / 2), letter, side > 0 ? Anchor.LEFT : Anchor.RIGHT)));
            }
        }
        shown.addAll(ClearPlace.among(places, shown));
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
