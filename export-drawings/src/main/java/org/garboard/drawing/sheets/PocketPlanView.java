package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.LaidLine;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketDetails;
import org.garboard.cutout.PocketSection;
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
import org.garboard.drawing.Solid;
import org.garboard.drawing.Text;
import org.garboard.drawing.Vertex;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.ClearPlace;

/** Pocket and opening seen from below, square to the floor: bow to the right, starboard up. */
final class PocketPlanView {

    /** Bulge of a quarter round. */
    private static final double QUARTER = Math.tan(Math.PI / 8);

    private final PocketTask task;
    private final Pocket pocket;
    private final PocketOnPaper paper;
    private final double letter;
    private final Box reach;
    private final List<Entity> shown = new ArrayList<>();

    private PocketPlanView(PocketTask task) {
        this.task = task;
        this.pocket = task.pocket();
        this.paper = task.paper();
        this.letter = task.letter();
        LaidLine taper = pocket.details().taperEnd();
        this.reach = Box.around(PocketOnPaper.ring(taper.isEmpty() ? pocket.opening() : taper.onSkin(), paper::below));
    }

    static View of(PocketTask task) {
        PocketPlanView view = new PocketPlanView(task);
        view.outlines();
        view.lengths();
        view.sectionMarks();
        view.widths();
        view.names();
        view.directions();
        return ViewTitle.above("POCKET SEEN FROM BELOW: STARBOARD IS UP",
                "Bow right. Seen square to the floor: opening in the skin, and pocket in it"
                        + (view.pocket.details().hullCut().isEmpty() ? "." : "; outside it hull cut and end of taper."),
                view.shown, task.lettering(), 0);
    }

    private void outlines() {
        PocketDetails details = pocket.details();
        shown.add(Polyline.closed(details.hullCut().isEmpty() ? Layer.CUT : Layer.POCKET, PocketOnPaper.ring(pocket.opening(), paper::below)));
        if (!details.hullCut().isEmpty()) {
            shown.add(Polyline.closed(Layer.CUT, PocketOnPaper.ring(details.hullCut().onSkin(), paper::below)));
            shown.add(Polyline.closed(Layer.MARK, PocketOnPaper.ring(details.taperEnd().onSkin(), paper::below)));
        }
        if (pocket.rampRatio() > 0) {
            shown.add(Polyline.closed(Layer.POCKET, PocketOnPaper.ring(pocket.pocketEdge(), paper::below)));
        }
        pocket.templates().forEach(template -> template.holes().forEach(hole -> shown.add(new Circle(Layer.CUT,
                paper.lengthwise(hole.centre().u(), hole.centre().v()), paper.paper(hole.diameter() / 2)))));
        if (task.bodyStandsClear()) {
            shown.add(body());
        }
        double over = 1.5 * letter;
        shown.add(new Line(Layer.CENTRE, new Point(reach.left() - over, 0), new Point(reach.right() + over, 0)));
        shown.add(new Line(Layer.CENTRE, new Point(0, reach.bottom()), new Point(0, reach.top())));
    }

    /** The body's outline, rounded corners as arcs. */
    private Polyline body() {
        double length = paper.paper(task.body().length() / 2);
        double width = paper.paper(task.body().width() / 2);
        double radius = Math.min(paper.paper(task.body().cornerRadius()), Math.min(length, width));
        double l = length - radius;
        double w = width - radius;
        if (radius < 0.01) {
            return Polyline.closed(Layer.ADJACENT, List.of(new Point(-length, -width), new Point(length, -width),
                    new Point(length, width), new Point(-length, width)));
        }
        List<Vertex> corners = new ArrayList<>();
        corner(corners, new Point(l, -width), new Point(length, -w));
        corner(corners, new Point(length, w), new Point(l, width));
        corner(corners, new Point(-l, width), new Point(-length, w));
        corner(corners, new Point(-length, -w), new Point(-l, -width));
        return new Polyline(Layer.ADJACENT, Polyline.Run.CLOSED, withoutNothing(corners));
    }

    private static void corner(List<Vertex> corners, Point from, Point to) {
        corners.add(new Vertex(from, QUARTER));
        corners.add(Vertex.corner(to));
    }

    /** Leaves out straight runs of no length, between two arcs of a round end. */
    private static List<Vertex> withoutNothing(List<Vertex> corners) {
        List<Vertex> kept = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Vertex next = corners.get((i + 1) % corners.size());
            if (!corners.get(i).straight() || corners.get(i).at().distanceTo(next.at()) > 1e-6) {
                kept.add(corners.get(i));
            }
        }
        return kept;
    }

    /** Each cutting plane at both edges, with arrows the way it is looked: forward. The heads show beside the pen's width. */
    private void sectionMarks() {
        for (PocketSection section : task.crossSections()) {
            double x = -paper.paper(section.along());
            sectionMark(section.name(), x, reach.top(), 1);
            sectionMark(section.name(), x, reach.bottom(), -1);
        }
    }

    private void sectionMark(String name, double x, double edge, int side) {
        Point inner = new Point(x, edge + side * 1.5);
        Point outer = new Point(x, edge + side * (1.5 + letter));
        shown.add(new Line(Layer.SECTION, inner, outer));
        Point tip = outer.movedBy(1.5 * letter, 0);
        shown.add(new Line(Layer.DIM, outer, tip));
        shown.add(new Solid(Layer.SECTION, List.of(tip, tip.movedBy(-0.9 * letter, 0.24 * letter), tip.movedBy(-0.9 * letter, -0.24 * letter))));
        shown.addAll(ClearPlace.among(DoubleStream.of(-0.8, 2.4).mapToObj(aside -> List.<Entity>of(
                Text.centred(Layer.SECTION, name, outer.movedBy(aside * letter, 0), letter, 0))).toList(), shown));
    }

    /** Floor on the first row; ramps below it, where their figures can stand clear: the table gives them too. */
    private void lengths() {
        double half = pocket.length() / 2;
        double edge = -pocket.width() / 2;
        double first = reach.bottom() - task.firstRow() - letter;
        shown.add(new LinearDimension(Direction.HORIZONTAL, paper.lengthwise(half, edge), paper.lengthwise(-half, edge),
                new Point(0, first), task.figures().fine(pocket.length()), letter));
        ramp(paper.lengthwise(half + pocket.aftRamp(), 0), paper.lengthwise(half, edge), first, pocket.aftRamp());
        ramp(paper.lengthwise(-half, edge), paper.lengthwise(-half - pocket.foreRamp(), 0), first, pocket.foreRamp());
    }

    private void ramp(Point from, Point to, double above, double length) {
        if (Math.abs(from.x() - to.x()) > 1e-3) {
            List<List<Entity>> rows = new ArrayList<>();
            for (int row = 1; row <= 2; row++) {
                rows.add(List.of(new LinearDimension(Direction.HORIZONTAL, from, to, new Point(0, above - row * task.nextRow()),
                        task.figures().bench(length), letter)));
            }
            ClearPlace.clearAmong(rows, shown).ifPresent(shown::addAll);
        }
    }

    private void widths() {
        double half = pocket.length() / 2;
        double width = pocket.width() / 2;
        double column = reach.right() + task.firstRow() + 2;
        shown.add(new LinearDimension(Direction.VERTICAL, paper.lengthwise(-half + pocket.cornerRadius(), -width),
                paper.lengthwise(-half + pocket.cornerRadius(), width), new Point(column, 0),
                task.figures().fine(pocket.width()), letter));
        if (pocket.cornerRadius() > 0) {
            radius(paper.lengthwise(half - pocket.cornerRadius(), width - pocket.cornerRadius()));
        }
    }

    /** By a leader: some readers turn a radius's lettering along its arrow, across its neighbours. */
    private void radius(Point centre) {
        Point onCorner = centre.towards(135, paper.paper(pocket.cornerRadius()));
        double rise = reach.top() + 4 * letter + 2 - onCorner.y();
        shown.addAll(ClearPlace.among(DoubleStream.of(1, 1.4, 0.7, 2, 0.4).mapToObj(lean ->
                radius(onCorner, onCorner.movedBy(-lean * rise, rise))).toList(), shown));
    }

    private List<Entity> radius(Point onCorner, Point end) {
        return List.of(new Leader(Layer.DIM, Leader.End.ARROW, List.of(onCorner, end)),
                Text.level(Layer.DIM, "R" + task.figures().fine(pocket.cornerRadius()), end.movedBy(-1, -letter / 2),
                        letter, Anchor.RIGHT));
    }

    /** Of the three nested lines of an existing boat, by leaders from their forward ends. */
    private void names() {
        PocketDetails details = pocket.details();
        if (!details.hullCut().isEmpty()) {
            name("end of taper", details.taperEnd().onSkin(), 225);
            name("hull cut", details.hullCut().onSkin(), 250);
            name("finished edge", pocket.opening(), 275);
        }
    }

    /**
     * Below the view or else above it; where nothing is clear the lines go unnamed, for the notes tell them.
     *
     * @param towards direction from the middle in which the line is pointed at [deg]
     */
    private void name(String words, List<Vector3D> line, double towards) {
        List<List<Entity>> places = new ArrayList<>(places(words, line, towards, reach.bottom(), -1));
        places.addAll(places(words, line, -towards, reach.top(), 1));
        ClearPlace.clearAmong(places, shown).ifPresent(shown::addAll);
    }

    private List<List<Entity>> places(String words, List<Vector3D> line, double towards, double edge, int away) {
        Point middle = new Point(0, 0);
        Point at = PocketOnPaper.ring(line, paper::below).stream()
                .min(Comparator.comparingDouble(point -> Math.abs(Math.IEEEremainder(middle.directionTo(point) - towards, 360)))).orElseThrow();
        return DoubleStream.of(2.5, 4, 5.5, 7, 8.5, 10, 11.5).boxed().flatMap(rows -> DoubleStream.of(0, 1, 2, -1, 3, -2, 5, -4)
                .mapToObj(lean -> named(words, at, new Point(at.x() - lean * 2 * letter, edge + away * rows * letter)))).toList();
    }

    /** Lettered away from the line that is pointed at, so that the leader does not run through its own words. */
    private List<Entity> named(String words, Point at, Point end) {
        boolean right = end.x() > at.x();
        return List.of(new Leader(Layer.DIM, Leader.End.ARROW, List.of(at, end)),
                Text.level(Layer.DIM, words, end.movedBy(right ? 1 : -1, -letter / 2), letter, right ? Anchor.LEFT : Anchor.RIGHT));
    }

    private void directions() {
        double left = reach.left() - 3.5 * letter;
        double middle = Math.max(reach.top() / 2, LetterWidths.extent("STBD", letter) / 2 + 2);
        Box box = View.around("plan", shown).frame();
        shown.add(Text.centred(Layer.TEXT, "STBD", new Point(Math.min(left, box.left() - letter), middle), letter, 90));
        shown.add(Text.centred(Layer.TEXT, "PORT", new Point(Math.min(left, box.left() - letter), -middle), letter, 90));
        Point bow = new Point(box.right() + 2, 0);
        shown.add(new Leader(Layer.DIM, Leader.End.ARROW, List.of(bow.movedBy(3.5 * letter, 0), bow)));
        shown.add(Text.level(Layer.TEXT, "FWD", bow.movedBy(0, 0.7 * letter), letter, Anchor.LEFT));
        shown.add(Text.level(Layer.TEXT, task.athwartKeel() ? "CL" : "MIDDLE", bow.movedBy(0, -1.7 * letter), letter, Anchor.LEFT));
    }
}
