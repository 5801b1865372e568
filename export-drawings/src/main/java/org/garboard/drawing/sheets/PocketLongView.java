package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketSection;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Leader;
import org.garboard.drawing.Line;
import org.garboard.drawing.LinearDimension;
import org.garboard.drawing.LinearDimension.Direction;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;

/** The pocket cut on the centreline, bow to the right, seen from starboard. */
final class PocketLongView {

    private final PocketTask task;
    private final Pocket pocket;
    private final PocketOnPaper paper;
    private final double letter;
    private final List<Entity> shown = new ArrayList<>();

    private PocketLongView(PocketTask task) {
        this.task = task;
        this.pocket = task.pocket();
        this.paper = task.paper();
        this.letter = task.letter();
    }

    static View of(PocketTask task) {
        PocketLongView view = new PocketLongView(task);
        view.section();
        view.depths();
        view.ramps();
        return ViewTitle.above("LONG SECTION ON CL", "Bow right, seen from starboard. Up: into the boat. Chain lines: face of "
                + "the body, skin cut away.", view.shown, task.lettering(), 0);
    }

    private void section() {
        PocketSection section = task.longSection();
        shown.addAll(CutLine.of(PocketOnPaper.run(section.skin(), paper::lengthwise),
                PocketOnPaper.run(section.cut(), paper::lengthwise)));
        double half = task.body().length() / 2;
        if (!task.bodyStandsClear()) {
            shown.add(new Line(Layer.ADJACENT, paper.lengthwise(pocket.length() / 2, pocket.faceDepth()),
                    paper.lengthwise(-pocket.length() / 2, pocket.faceDepth())));
        } else {
            body(half);
        }
        Box box = View.around("section", shown).frame();
        Point bow = new Point(box.right() + 2, 0);
        shown.add(new Leader(Layer.DIM, Leader.End.ARROW, List.of(bow.movedBy(3.5 * letter, 0), bow)));
        shown.add(Text.level(Layer.TEXT, "FWD", bow.movedBy(0, 0.7 * letter), letter, Anchor.LEFT));
    }

    private void body(double half) {
        shown.add(Polyline.closed(Layer.ADJACENT, List.of(paper.lengthwise(half, pocket.faceDepth()),
                paper.lengthwise(-half, pocket.faceDepth()), paper.lengthwise(-half, pocket.depth()),
                paper.lengthwise(half, pocket.depth()))));
    }

    /** Floor depth in the middle; face depth beyond the after end of the opening, clear of the body. */
    private void depths() {
        Point keel = paper.lengthwise(0, 0);
        shown.add(new LinearDimension(Direction.VERTICAL, keel, paper.lengthwise(0, pocket.depth()), keel,
                task.figures().fine(pocket.depth()), letter));
        if (paper.paper(Math.abs(pocket.faceDepth())) > 0.5) {
            double half = pocket.length() / 2;
            Point through = paper.lengthwise(half + Math.max(0, pocket.aftRamp()), 0).movedBy(-task.firstRow(), 0);
            shown.add(new LinearDimension(Direction.VERTICAL, through, paper.lengthwise(half, pocket.faceDepth()), through,
                    task.figures().fine(pocket.faceDepth()), letter));
        }
    }

    private void ramps() {
        if (pocket.rampRatio() <= 0) {
            return;
        }
        String words = "ramp 1:" + Figures.tenths(pocket.rampRatio());
        double middle = (pocket.length() + Math.min(pocket.foreRamp(), pocket.aftRamp())) / 2;
        double row = -1.6 * letter - 1;
        for (int end = -1; end <= 1; end += 2) {
            shown.add(Text.level(Layer.TEXT, words, new Point(end * paper.paper(middle), row), letter,
                    end < 0 ? Anchor.RIGHT : Anchor.LEFT));
        }
    }
}
