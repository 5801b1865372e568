package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.Arrays;
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
import org.garboard.drawing.layout.ClearPlace;

/** One cross section of the pocket, looking forward: starboard to the right. */
final class PocketCrossView {

    /** So much skin is drawn on either side of the pocket [mm on paper]: our choice, for the angle and its figure. */
    private static final double BEYOND = 26;

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
        double reach = view.paper.paper(view.pocket.width() / 2) + BEYOND;
        view.shown.addAll(CutLine.of(PocketOnPaper.run(section.skin(), view.paper::lookingForward),
                PocketOnPaper.run(section.cut(), view.paper::lookingForward), -reach, reach));
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

    /** The skin over the pocket's middle in this plane, above that of its very middle [m]. */
    private double skin() {
        return overMiddle(paper, section.skin());
    }

    /** Height of a line from port to starboard where it runs over the pocket's middle [m]. */
    private static double overMiddle(PocketOnPaper paper, List<Vector3D> line) {
        for (int i = 0; i + 1 < line.size(); i++) {
            Vector3D port = line.get(i);
            Vector3D starboard = line.get(i + 1);
            if (paper.across(port) <= 0 && paper.across(starboard) > 0) {
                double share = -paper.across(port) / (paper.across(starboard) - paper.across(port));
                return paper.up(port) + share * (paper.up(starboard) - paper.up(port));
            }
        }
        return paper.up(line.get(0));
    }

    private void dimensions() {
        Vector3D foot = section.cut().get(0);
        Vector3D otherFoot = section.cut().get(section.cut().size() - 1);
        double level = overMiddle(paper, section.cut());
        double top = section.cut().stream().mapToDouble(paper::up).max().orElseThrow();
        double half = paper.paper(Math.abs(paper.across(foot)));
        double width = paper.across(otherFoot) - paper.across(foot);
        boolean middle = section.equals(task.middleSection());
        shown.add(new LinearDimension(Direction.HORIZONTAL, paper.lookingForward(foot), paper.lookingForward(otherFoot),
                new Point(0, paper.paper(Math.min(skin(), Math.min(paper.up(foot), paper.up(otherFoot)))) - task.firstRow()),
                middle ? task.figures().fine(width) : task.figures().bench(width), letter));
        if (middle) {
            deadrise(half);
        }
        height(0, skin(), level, task.figures().fine(level - skin()), depthPlaces(half));
        height(-half, paper.up(foot), top, task.figures().bench(top - paper.up(foot)), wallPlaces(half));
    }

    /** At the keel, lettered clear of the centreline: to starboard of it, in a narrow cut beyond its edge, else beyond all. */
    private double[] depthPlaces(double half) {
        double clear = letter + 2.5;
        return new double[] {Math.max(0.35 * half, clear), Math.max(0.55 * half, clear), Math.max(0.75 * half, clear),
            half + clear, half + BEYOND + clear};
    }

    /** Inside the pocket, where no skin slants; else outside, on either side of where the skin may pass. */
    private double[] wallPlaces(double half) {
        double inside = -half + letter + 3;
        return new double[] {inside, inside + 0.15 * half, inside + 0.3 * half, -half - 2, -half - letter,
            -half - task.firstRow(), -half - BEYOND};
    }

    /**
     * A height from the skin to the cut at a distance from the centreline, lettered upward at the first clear
     * place of several [all mm on paper, heights m].
     */
    private void height(double across, double from, double to, String words, double[] places) {
        if (paper.paper(to - from) > 0.5) {
            shown.addAll(ClearPlace.among(Arrays.stream(places).mapToObj(at -> List.<Entity>of(
                    new LinearDimension(Direction.VERTICAL, new Point(across, paper.paper(from)),
                            new Point(across, paper.paper(to)), new Point(at, 0), words, letter))).toList(), shown));
        }
    }

    /** From level to the skin on the starboard side, keel to the edge of the pocket. */
    private void deadrise(double half) {
        Point keel = paper.lookingForward(0, skin());
        double angle = deadrise(paper, section);
        if (Math.toDegrees(angle) < 2) {
            return;
        }
        Point onSkin = paper.lookingForward(section.cut().get(section.cut().size() - 1));
        shown.add(new AngularDimension(keel, keel.movedBy(1, 0), onSkin, half + task.firstRow(),
                Figures.degrees(angle), letter));
    }

    /** Rise of the chord from the skin at the middle to the pocket's edge, starboard [rad]; athwart the keel it is the deadrise. */
    static double deadrise(PocketOnPaper paper, PocketSection section) {
        Vector3D edge = section.cut().get(section.cut().size() - 1);
        return Math.atan2(paper.up(edge) - overMiddle(paper, section.skin()), Math.abs(paper.across(edge)));
    }
}
