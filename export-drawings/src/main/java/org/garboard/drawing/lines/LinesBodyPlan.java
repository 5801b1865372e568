package org.garboard.drawing.lines;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.NameColumn;
import org.garboard.drawing.layout.NameColumn.Name;
import org.garboard.drawing.sheets.StationLabels;
import org.garboard.drawing.sheets.ViewTitle;
import org.garboard.hull.HullCurves;
import org.garboard.hull.HullLine;
import org.garboard.lines.DrawnLine.Diagonal;

/**
 * The sections, looking forward: of those up to amidships the starboard half, on the right, of the others the port
 * half, on the left; waterlines, buttocks and diagonals straight.
 */
final class LinesBodyPlan {

    private final LinesPaper lines;
    private final double bottom;
    private final double top;
    private final double beam;
    private final List<Entity> shown = new ArrayList<>();
    private final List<Name> starboard = new ArrayList<>();
    private final List<Name> port = new ArrayList<>();
    /** Waterlines and diagonals, by their starboard ends. */
    private final List<Name> straight = new ArrayList<>();

    private LinesBodyPlan(LinesPaper lines) {
        this.lines = lines;
        this.bottom = Math.min(0, lines.scale().paper(lines.extent().lowest()));
        this.top = lines.scale().paper(lines.extent().highest()) + 2;
        this.beam = lines.scale().paper(lines.extent().halfBeam()) + 2;
    }

    static View of(LinesPaper lines, String origin) {
        LinesBodyPlan view = new LinesBodyPlan(lines);
        view.levels();
        view.diagonals();
        view.sections();
        view.transom();
        view.stem();
        view.names();
        view.buttocks();
        return ViewTitle.above("BODY PLAN, LOOKING FORWARD", "Starboard right. Forward sections right, after sections left, "
                + "with distance aft of " + origin + ".", view.shown, lines.lettering(), 0);
    }

    private void sections() {
        double amidships = (lines.hull().forwardEnd() + lines.hull().afterEnd()) / 2;
        HullLine sheer = lines.hull().lines().get(lines.hull().lines().size() - 1);
        for (GridLine section : lines.grid().sections()) {
            int side = section.at() <= amidships ? 1 : -1;
            shown.add(lines.paper().section(Layer.FORM, section.at(), side));
            lines.keel().ifPresent(keel -> shown.addAll(lines.paper().cut(Layer.FORM, keel, section.at(), side)));
            Point end = lines.paper().lookingForward(side * sheer.y(section.at()), sheer.z(section.at()));
            (side > 0 ? starboard : port).add(new Name(section.words(), end));
        }
    }

    /** A transom that is not square shows as a shape of its own, on the side of the after sections. */
    private void transom() {
        if (!lines.hull().endsSquare()) {
            shown.addAll(lines.paper().drawn(Layer.HULL, new HullCurves(lines.hull()).afterEdge(),
                    point -> lines.paper().lookingForward(-point.getY(), point.getZ())));
        }
    }

    /** On the side of the forward sections: the centreline, or the edge of the skin at the stem's half-siding. */
    private void stem() {
        shown.addAll(lines.paper().drawn(Layer.HULL, new HullCurves(lines.hull()).stemEdge(),
                point -> lines.paper().lookingForward(point.getY(), point.getZ())));
    }

    private void levels() {
        level("Base line", 0);
        lines.grid().waterlines().stream().filter(waterline -> Math.abs(waterline.at()) > 1e-6)
                .forEach(waterline -> level(waterline.words(), lines.scale().paper(waterline.at())));
    }

    private void level(String words, double y) {
        shown.add(new Line(Layer.GRID, new Point(-beam, y), new Point(beam, y)));
        straight.add(new Name(words, new Point(beam, y)));
    }

    /** Both sides, from the centreline to the beam or the bottom of the view. */
    private void diagonals() {
        List<Diagonal> diagonals = lines.grid().diagonals();
        for (int i = 0; i < diagonals.size(); i++) {
            double start = lines.scale().paper(diagonals.get(i).z());
            double slope = Math.tan(diagonals.get(i).below().radians());
            double reach = Math.min(beam, (start - bottom) / slope);
            if (reach > 0) {
                Point end = new Point(reach, start - reach * slope);
                shown.add(new Line(Layer.GRID, new Point(0, start), end));
                shown.add(new Line(Layer.GRID, new Point(0, start), new Point(-reach, end.y())));
                straight.add(new Name(LinesNotes.mark(i), end));
            }
        }
    }

    /** Sections at their sheer; waterlines and diagonals on the side where fewer sections are. */
    private void names() {
        int side = port.size() < starboard.size() ? -1 : 1;
        for (Name name : straight) {
            (side < 0 ? port : starboard).add(new Name(name.words(), new Point(side * name.end().x(), name.end().y())));
        }
        shown.addAll(NameColumn.rightOf(beam + 5, bottom, starboard, lines.letter()));
        shown.addAll(NameColumn.leftOf(-beam - 5, bottom, port, lines.letter()));
    }

    private void buttocks() {
        List<StationLabels.Label> labels = new ArrayList<>();
        labels.add(new StationLabels.Label(0, "CL"));
        shown.add(new Line(Layer.CENTRE, new Point(0, bottom), new Point(0, top)));
        for (GridLine buttock : lines.grid().buttocks()) {
            for (int side = -1; side <= 1; side += 2) {
                double at = side * lines.scale().paper(buttock.at());
                shown.add(new Line(Layer.GRID, new Point(at, bottom), new Point(at, top)));
                labels.add(new StationLabels.Label(at, buttock.words()));
            }
        }
        StationLabels.of(labels, lines.letter()).forEach(label -> shown.add(label.movedBy(0, bottom)));
    }
}
