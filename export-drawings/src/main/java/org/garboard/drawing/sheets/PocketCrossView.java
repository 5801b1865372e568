package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketSection;
import org.garboard.drawing.AngularDimension;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.LinearDimension;
import org.garboard.drawing.LinearDimension.Direction;
import org.garboard.drawing.Point;
import org.garboard.drawing.View;

/** One cross section of the pocket, looking forward: starboard to the right. */
final class PocketCrossView {

    private final PocketTask task;
    private final Pocket pocket;
    private final PocketSection section;
    private final PocketOnPaper paper;
    private final double letter;
    private final List<Entity> shown = new ArrayList<>();

    private PocketCrossView(PocketTask task, PocketSection section) {
        this.task = task;
        this.pocket = task.pocket();
        this.section = section;
        this.paper = task.paper();
        this.letter = task.letter();
    }

    static View of(PocketTask task, PocketSection section) {
        PocketCrossView view = new PocketCrossView(task, section);
        view.shown.addAll(CutLine.of(PocketOnPaper.run(section.skin(), view.paper::lookingForward),
                PocketOnPaper.run(section.cut(), view.paper::lookingForward)));
        view.centreline();
        if (section.cut().size() >= 4) {
            view.dimensions();
        }
        return ViewTitle.above("SECTION " + section.name() + "-" + section.name() + " LOOKING FORWARD",
                "Starboard right; " + task.whereabouts(section) + ".", view.shown, task.lettering(), 24 * task.letter());
    }

    private void centreline() {
        Box box = View.around("section", shown).frame();
        shown.add(new Line(Layer.CENTRE, new Point(0, box.bottom() - 2), new Point(0, box.top() + 2)));
    }

    /** The keel's skin in this plane, above the middle's [m]. */
    private double keel() {
        Vector3D best = section.skin().get(0);
        for (Vector3D place : section.skin()) {
            if (Math.abs(place.getY()) < Math.abs(best.getY())) {
                best = place;
            }
        }
        return paper.up(best);
    }

    private void dimensions() {
        Vector3D foot = section.cut().get(0);
        Vector3D corner = section.cut().get(1);
        Vector3D otherFoot = section.cut().get(section.cut().size() - 1);
        double level = paper.up(corner);
        double half = Math.abs(foot.getY());
        double below = paper.paper(keel()) - task.firstRow();
        shown.add(new LinearDimension(Direction.HORIZONTAL, paper.lookingForward(foot), paper.lookingForward(otherFoot),
                new Point(0, below), task.figures().fine(otherFoot.getY() - foot.getY()), letter));
        depth(level, half);
        double wall = level - paper.up(foot);
        if (paper.paper(wall) > 0.5) {
            upright(-half, paper.up(foot), level, -half - task.firstRow() / paper.paper(1));
        }
        if (section.equals(task.middleSection())) {
            deadrise(half);
        }
    }

    /** At the keel, clear of the centreline. */
    private void depth(double level, double half) {
        upright(0, keel(), level, Math.max(0.35 * half, (letter + 2.5) / paper.paper(1)));
    }

    /** A height from the skin to the cut, dimensioned at a distance off the centreline [m]; lettered upward. */
    private void upright(double across, double from, double to, double at) {
        if (paper.paper(to - from) > 0.5) {
            shown.add(new LinearDimension(Direction.VERTICAL, paper.lookingForward(across, from),
                    paper.lookingForward(across, to), paper.lookingForward(at, from), task.figures().fine(to - from), letter));
        }
    }

    /** From level to the skin on the starboard side, keel to the edge of the pocket. */
    private void deadrise(double half) {
        Point keel = paper.lookingForward(0, keel());
        Vector3D edge = section.cut().get(section.cut().size() - 1);
        double angle = deadrise(paper, section);
        if (Math.toDegrees(angle) < 2) {
            return;
        }
        double reach = paper.paper(half) + task.firstRow();
        Point onSkin = paper.lookingForward(edge);
        Point level = new Point(keel.x() + reach * 0.6, keel.y());
        shown.add(new AngularDimension(keel, level, onSkin, reach, Figures.degrees(angle), letter));
    }

    /** Deadrise of the chord from the keel to the pocket's edge, starboard [rad]. */
    static double deadrise(PocketOnPaper paper, PocketSection section) {
        Vector3D edge = section.cut().get(section.cut().size() - 1);
        double keel = Double.POSITIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        for (Vector3D place : section.skin()) {
            if (Math.abs(place.getY()) < least) {
                least = Math.abs(place.getY());
                keel = paper.up(place);
            }
        }
        return Math.atan2(paper.up(edge) - keel, Math.abs(edge.getY()));
    }
}
