package org.garboard.drawing.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.NameColumn;
import org.garboard.drawing.layout.NameColumn.Name;
import org.garboard.drawing.sheets.ViewTitle;
import org.garboard.hull.Curve;
import org.garboard.hull.HullCurves;
import org.garboard.hull.HullLine;
import org.garboard.lines.DrawnLine.Diagonal;

/**
 * The starboard half seen from above, bow to the right: named lines and waterlines as curves, stations and buttocks
 * straight. Diagonals lie on the other side of the centreline, each flat in its own plane.
 */
final class HalfBreadthPlan {

    private final LinesPaper lines;
    private final double chord;
    private final List<Entity> shown = new ArrayList<>();
    private final List<Name> names = new ArrayList<>();

    private HalfBreadthPlan(LinesPaper lines) {
        this.lines = lines;
        this.chord = lines.paper().chord();
    }

    static View of(LinesPaper lines) {
        HalfBreadthPlan view = new HalfBreadthPlan(lines);
        view.curves();
        double port = view.diagonals();
        view.grid(port);
        view.shown.addAll(NameColumn.leftOf(-3, NameColumn.NO_FLOOR, view.names, lines.letter()));
        return ViewTitle.above("HALF-BREADTH PLAN SEEN FROM ABOVE: STARBOARD IS DOWN", remark(lines), view.shown,
                lines.lettering(), 0);
    }

    private static String remark(LinesPaper lines) {
        return lines.grid().diagonals().isEmpty() ? "Stations as in the profile."
                : "Stations as in the profile. Above the centreline: diagonals, each laid flat in its own plane.";
    }

    private void curves() {
        for (HullLine line : lines.hull().lines().subList(1, lines.hull().lines().size())) {
            curve(Layer.HULL, line.name(), lines.curves(line), this::place);
        }
        for (GridLine waterline : lines.grid().waterlines()) {
            curve(Layer.FORM, waterline.words(), new HullCurves(lines.hull()).waterline(waterline.at(), chord), this::place);
        }
        shown.addAll(lines.paper().stepsInPlan(Layer.HULL, this::place));
        if (lines.hull().endsSquare()) {
            ending(lines.hull().afterEnd());
        } else {
            shown.addAll(lines.paper().drawn(Layer.HULL, new HullCurves(lines.hull()).afterEdge(), this::place));
        }
        if (lines.hull().stem().isEmpty()) {
            ending(lines.hull().forwardEnd());
        } else {
            shown.addAll(lines.paper().drawn(Layer.HULL, new HullCurves(lines.hull()).stemEdge(), this::place));
        }
    }

    private void curve(Layer layer, String words, List<Curve> curves, Function<Vector3D, Point> place) {
        shown.addAll(lines.paper().drawn(layer, curves, place));
        LinesPaper.afterEnd(curves).ifPresent(end -> names.add(new Name(words, place.apply(end))));
    }

    private Point place(Vector3D point) {
        return lines.plan(point.getX(), point.getY());
    }

    /** How far they reach beyond the centreline [mm]. */
    private double diagonals() {
        double port = 0;
        List<Diagonal> diagonals = lines.grid().diagonals();
        for (int i = 0; i < diagonals.size(); i++) {
            Diagonal diagonal = diagonals.get(i);
            List<Curve> curves = diagonal.on(lines.hull(), chord);
            curve(Layer.FORM, LinesNotes.mark(i), curves,
                    point -> lines.plan(point.getX(), -diagonal.outward(point.getY())));
            for (Curve curve : curves) {
                for (Vector3D point : curve.points()) {
                    port = Math.max(port, lines.scale().paper(diagonal.outward(point.getY())));
                }
            }
        }
        return port;
    }

    private void grid(double port) {
        double beam = lines.scale().paper(lines.extent().halfBeam()) + 2;
        for (GridLine section : lines.grid().sections()) {
            double at = lines.paper().lengthwise(section.at());
            shown.add(new Line(Layer.GRID, new Point(at, port > 0 ? port + 2 : 0), new Point(at, -beam)));
        }
        double right = lines.length() + 2;
        List<Name> levels = new ArrayList<>();
        for (GridLine buttock : lines.grid().buttocks()) {
            double y = -lines.scale().paper(buttock.at());
            shown.add(new Line(Layer.GRID, new Point(0, y), new Point(right, y)));
            levels.add(new Name(buttock.words(), new Point(right, y)));
        }
        shown.add(new Line(Layer.CENTRE, new Point(-1, 0), new Point(right, 0)));
        levels.add(new Name("CL", new Point(right, 0)));
        shown.addAll(NameColumn.rightOf(right + 1, NameColumn.NO_FLOOR, levels, lines.letter()));
    }

    /** The skin's last section seen from above. */
    private void ending(double x) {
        double widest = new HullCurves(lines.hull()).section(x, chord).stream().flatMap(curve -> curve.points().stream())
                .mapToDouble(Vector3D::getY).max().orElse(0);
        if (lines.scale().paper(widest) > 0.01) {
            shown.add(new Line(Layer.HULL, lines.plan(x, 0), lines.plan(x, widest)));
        }
    }
}
