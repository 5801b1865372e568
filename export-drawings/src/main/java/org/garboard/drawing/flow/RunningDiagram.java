package org.garboard.drawing.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.Notes;
import org.garboard.drawing.layout.Piece;
import org.garboard.drawing.layout.Piece.Corner;
import org.garboard.drawing.layout.SheetLayout;
import org.garboard.drawing.sheets.DrawnSet;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetFormat;
import org.garboard.drawing.sheets.SheetRefusal;
import org.garboard.drawing.sheets.ViewTitle;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish;
import org.garboard.offsets.HullOffsets;
import org.garboard.units.FixedDecimal;

/** Trim and wetted lengths against speed, as curves; they break where nothing is known. */
public final class RunningDiagram {
    private static final String TITLE = FlowDrawing.TITLE + ": running trim and wetted lengths";
    /** Of the graph to the paper's width and height: our choice. */
    private static final double BROAD = 0.5;
    private static final double HIGH = 0.25;
    private static final int STEPS = 5;

    private final Lettering lettering;
    private final List<AtKnots> figures;
    private final double width;
    private final double height;
    private final double most;

    /**
     * Figures at one speed, NaN where they are not known.
     *
     * @param knots the speed
     * @param trimDegrees bow up
     * @param keel wetted length [m]
     * @param chine wetted length [m]
     */
    public record AtKnots(double knots, double trimDegrees, double keel, double chine) {
    }

    private RunningDiagram(FlowTask task, List<AtKnots> figures) {
        this.lettering = task.lettering();
        this.figures = figures;
        this.width = BROAD * task.paper().width();
        this.height = HIGH * task.paper().height();
        this.most = round(figures.get(figures.size() - 1).knots());
    }

    /** @param figures slowest first, at least one */
    public static DrawnSet draw(String name, HullOffsets table, Hull hull, List<AtKnots> figures, DrawingWish drawing, String tableFile,
                                Provenance provenance) {
        FlowTask task = new FlowTask(table, hull, new FlowPicture("", List.of(), List.of(), List.of(), List.of()), drawing, tableFile, provenance);
        RunningDiagram diagram = new RunningDiagram(task, figures);
        List<Piece> pieces = List.of(new Piece(List.of(Cluster.stack(List.of(
                diagram.graph("TRIM [degrees, bow up]", List.of(new Curve("", AtKnots::trimDegrees, Layer.FORM))),
                diagram.graph("WETTED LENGTHS [m]", List.of(new Curve("keel", AtKnots::keel, Layer.FORM), new Curve("chine", AtKnots::chine, Layer.HULL)))),
                task.lettering().gap())), List.of(Corner.TOP_LEFT)),
            new Piece(Notes.numbered("NOTES", List.of("At the mean of the weights light and full.",
                "Lengths are forward from the after end of the bottom, of a stepped one from its first step; known of planing alone.",
                "Curves break where no method holds: what is not drawn is NOT KNOWN.")).shapes(task.lettering()),
                List.of(Corner.BOTTOM_RIGHT, Corner.BOTTOM_LEFT, Corner.TOP_RIGHT)));
        return new SheetLayout(task.paper(), task.lettering(), task.titleBlock(TITLE, "Diagram", "1", "none"))
            .set(task.boat() + ": " + TITLE, "Trim and wetted lengths of keel and chine against speed.", new Scale(1), pieces)
            .map(sheet -> new DrawnSet(List.of(SheetFormat.SVG.drawing(name, sheet)), List.of()))
            .orElseGet(() -> new DrawnSet(List.of(), List.of(new SheetRefusal(name, task.paper().name() + " does not hold the diagram and its notes",
                "choose a larger paper"))));
    }

    private record Curve(String label, ToDoubleFunction<AtKnots> value, Layer layer) {
    }

    private View graph(String title, List<Curve> curves) {
        double low = 0;
        double high = 0;
        for (AtKnots each : figures) {
            for (Curve curve : curves) {
                double value = curve.value().applyAsDouble(each);
                low = Math.min(low, Double.isNaN(value) ? 0 : value);
                high = Math.max(high, Double.isNaN(value) ? 0 : value);
            }
        }
        double bottom = low < 0 ? -round(-low) : 0;
        double top = round(Math.max(high, 1e-3));
        List<Entity> shown = new ArrayList<>();
        grid(bottom, top, shown);
        curves.forEach(curve -> curve(curve, bottom, top, shown));
        return ViewTitle.above(title, "against speed in knots", shown, lettering, 0);
    }

    private void grid(double bottom, double top, List<Entity> shown) {
        double h = lettering.figures();
        for (int i = 0; i <= STEPS; i++) {
            double x = width * i / STEPS;
            double y = height * i / STEPS;
            shown.add(new Line(Layer.GRID, new Point(x, 0), new Point(x, height)));
            shown.add(new Line(Layer.GRID, new Point(0, y), new Point(width, y)));
            shown.add(Text.level(Layer.TEXT, FixedDecimal.format(most * i / STEPS, 1), new Point(x, -2 * h), h, Anchor.MIDDLE));
            shown.add(Text.level(Layer.TEXT, FixedDecimal.format(bottom + (top - bottom) * i / STEPS, 1), new Point(-h, y - h / 2), h, Anchor.RIGHT));
        }
    }

    private void curve(Curve curve, double bottom, double top, List<Entity> shown) {
        List<Point> points = new ArrayList<>();
        Point last = null;
        for (AtKnots each : figures) {
            double value = curve.value().applyAsDouble(each);
            if (Double.isNaN(value)) {
                add(curve.layer(), points, shown);
                points.clear();
            } else {
                last = new Point(width * each.knots() / most, height * (value - bottom) / (top - bottom));
                points.add(last);
            }
        }
        add(curve.layer(), points, shown);
        if (last != null && !curve.label().isEmpty()) {
            double h = lettering.figures();
            shown.add(Text.level(Layer.TEXT, curve.label(), new Point(width + h, last.y() - h / 2), h, Anchor.LEFT));
        }
    }

    private static void add(Layer layer, List<Point> points, List<Entity> shown) {
        if (points.size() > 1) {
            shown.add(Polyline.open(layer, points));
        }
    }

    /** The next of 1, 2, 2.5, 5 times a power of ten that is not less. */
    private static double round(double value) {
        double ten = Math.pow(10, Math.floor(Math.log10(value)));
        for (double step : new double[] {1, 2, 2.5, 5, 10}) {
            if (step * ten >= value * (1 - 1e-12)) {
                return step * ten;
            }
        }
        return 10 * ten;
    }
}
