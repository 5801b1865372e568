package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketSection;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Leader;
import org.garboard.drawing.LetterWidths;
import org.garboard.drawing.Line;
import org.garboard.drawing.LinearDimension;
import org.garboard.drawing.LinearDimension.Direction;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.ClearPlace;

/** The pocket cut fore and aft through its middle, bow to the right, seen from starboard. */
final class PocketLongView {

    /** So much skin is drawn on either side of the opening [mm on paper]: our choice, for two heights. */
    private static final double BEYOND = 20;

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
        return ViewTitle.above("LONG SECTION " + (task.athwartKeel() ? "ON CL" : "THROUGH THE MIDDLE, " + task.aside()), "Bow right, seen from starboard. Up: into the boat. Chain lines: face of "
                + "the body, skin cut away.", view.shown, task.lettering(), 0);
    }

    private void section() {
        PocketSection section = task.longSection();
        shown.addAll(CutLine.of(PocketOnPaper.run(section.skin(), paper::lengthwise),
                PocketOnPaper.run(section.cut(), paper::lengthwise), after() - BEYOND, fore() + BEYOND));
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

    /** The opening's after end on paper, negative [mm]. */
    private double after() {
        return -paper.paper(pocket.length() / 2 + Math.max(0, pocket.aftRamp()));
    }

    /** Its fore end. */
    private double fore() {
        return paper.paper(pocket.length() / 2 + Math.max(0, pocket.foreRamp()));
    }

    /** Floor depth in the middle, or forward of all where the face would run through its figure; face depth aft of all. */
    private void depths() {
        double half = paper.paper(pocket.length() / 2);
        String depth = task.figures().fine(pocket.depth());
        Point foreSkin = new Point(fore(), 0);
        Point foreFloor = new Point(half, paper.paper(pocket.depth()));
        shown.addAll(ClearPlace.among(List.of(List.of(height(new Point(0, 0), new Point(0, foreFloor.y()), 0, depth)),
                List.of(height(foreSkin, foreFloor, foreSkin.x() + task.firstRow(), depth))), shown));
        if (paper.paper(Math.abs(pocket.faceDepth())) > 0.5) {
            Point aftSkin = new Point(after(), 0);
            shown.add(height(aftSkin, new Point(-half, paper.paper(pocket.faceDepth())), aftSkin.x() - task.firstRow(),
                    task.figures().fine(pocket.faceDepth())));
        }
    }

    private LinearDimension height(Point skin, Point cut, double at, String words) {
        return new LinearDimension(Direction.VERTICAL, skin, cut, new Point(at, 0), words, letter);
    }

    /** Under each ramp, from its outer end inward, or once for both where there is little room. */
    private void ramps() {
        if (pocket.rampRatio() <= 0) {
            return;
        }
        String words = "ramp 1:" + Figures.tenths(pocket.rampRatio());
        double row = -1.6 * letter - 1;
        if (fore() - after() > 2 * LetterWidths.extent(words, letter) + 2 * letter) {
            shown.add(Text.level(Layer.TEXT, words, new Point(after(), row), letter, Anchor.LEFT));
            shown.add(Text.level(Layer.TEXT, words, new Point(fore(), row), letter, Anchor.RIGHT));
        } else {
            shown.addAll(ClearPlace.among(DoubleStream.of(row, row - 2 * letter).mapToObj(y -> List.<Entity>of(
                    Text.level(Layer.TEXT, words, new Point(0, y), letter, Anchor.MIDDLE))).toList(), shown));
        }
    }
}
