package org.garboard.drawing.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.NameColumn;
import org.garboard.drawing.layout.NameColumn.Name;
import org.garboard.drawing.sheets.StationLabels;
import org.garboard.drawing.sheets.ViewTitle;
import org.garboard.lines.Comb;
import org.garboard.lines.DrawnLine;
import org.garboard.lines.Tooth;

/** One line square to the plane in which it is judged, and its comb. */
final class CombView {

    private final CombTask task;
    private final Comb comb;
    private final Vector3D along;
    private final Vector3D up;
    private final List<Entity> shown = new ArrayList<>();

    private CombView(CombTask task, Comb comb) {
        this.task = task;
        this.comb = comb;
        boolean athwart = comb.square().getX() != 0;
        this.along = athwart ? Vector3D.of(0, 1, 0) : Vector3D.of(-1, 0, 0);
        this.up = athwart ? Vector3D.of(0, 0, 1) : Vector3D.of(0, -comb.square().getZ(), comb.square().getY());
    }

    static View of(CombTask task, Comb comb) {
        CombView view = new CombView(task, comb);
        view.shown.addAll(task.lines().paper().drawn(Layer.HULL, task.line().on(task.lines().hull(), task.lines().paper().chord()),
                view::place));
        comb.branches().forEach(view::teeth);
        if (view.athwart()) {
            view.levels();
        } else {
            view.stations();
        }
        return ViewTitle.above(view.name(), "", view.shown, task.lines().lettering(), 20 * task.lines().letter());
    }

    private boolean athwart() {
        return comb.square().getX() != 0;
    }

    private Point place(Vector3D point) {
        double origin = athwart() ? 0 : task.lines().hull().afterEnd();
        return new Point(task.lines().scale().paper(origin + point.dot(along)), task.lines().scale().paper(point.dot(up)));
    }

    private void teeth(List<Tooth> teeth) {
        List<Point> tips = new ArrayList<>();
        for (Tooth tooth : teeth) {
            Point foot = place(tooth.foot());
            double length = task.teeth().paper(tooth.curvature());
            Point tip = foot.movedBy(length * tooth.away().dot(along), length * tooth.away().dot(up));
            if (foot.distanceTo(tip) > 0.01) {
                shown.add(new Line(Layer.DIM, foot, tip));
            }
            tips.add(tip);
        }
        shown.add(Polyline.open(Layer.MARK, tips));
    }

    /** Every station across the view, named below it. */
    private void stations() {
        Box box = View.around("comb", shown).frame().grownBy(2);
        List<StationLabels.Label> labels = new ArrayList<>();
        for (GridLine section : task.lines().grid().sections()) {
            double at = task.lines().paper().lengthwise(section.at());
            shown.add(new Line(Layer.GRID, new Point(at, box.bottom()), new Point(at, box.top())));
            labels.add(new StationLabels.Label(at, section.words()));
        }
        StationLabels.of(labels, task.lines().letter()).forEach(label -> shown.add(label.movedBy(0, box.bottom())));
    }

    /** Centreline and those waterlines that cross the view. */
    private void levels() {
        Box box = View.around("comb", shown).frame().grownBy(2);
        double left = Math.min(0, box.left());
        List<Name> names = new ArrayList<>();
        for (GridLine waterline : task.lines().grid().waterlines()) {
            double y = task.lines().scale().paper(waterline.at());
            if (y > box.bottom() && y < box.top()) {
                shown.add(new Line(Layer.GRID, new Point(left, y), new Point(box.right(), y)));
                names.add(new Name(waterline.words(), new Point(box.right(), y)));
            }
        }
        shown.addAll(NameColumn.rightOf(box.right() + 1, box.bottom(), names, task.lines().letter()));
        shown.add(new Line(Layer.CENTRE, new Point(0, box.bottom()), new Point(0, box.top())));
        StationLabels.of(List.of(new StationLabels.Label(0, "CL")), task.lines().letter())
                .forEach(label -> shown.add(label.movedBy(0, box.bottom())));
    }

    private String name() {
        return task.line().words(task.lines().figures()::brief).toUpperCase(Locale.ROOT) + seen(task.line(), comb);
    }

    /** How a line is seen. */
    static String seen(DrawnLine line, Comb comb) {
        if (line instanceof DrawnLine.Diagonal) {
            return " FLAT IN ITS PLANE: OUTWARD IS DOWN";
        }
        if (comb.square().getX() != 0) {
            return " LOOKING FORWARD, STARBOARD HALF";
        }
        return comb.square().getZ() != 0 ? " SEEN FROM ABOVE: STARBOARD IS DOWN" : " IN PROFILE FROM STARBOARD";
    }
}
