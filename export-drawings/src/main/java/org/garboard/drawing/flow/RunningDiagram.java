package org.garboard.drawing.flow;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Scale;
import org.garboard.drawing.View;
import org.garboard.drawing.graph.Curve;
import org.garboard.drawing.graph.Graph;
import org.garboard.drawing.graph.Reading;
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

/** Trim and wetted lengths against speed, as curves; they break where nothing is known. */
public final class RunningDiagram {
    private static final String TITLE = FlowDrawing.TITLE + ": running trim and wetted lengths";
    /** Of the graph to the paper's width and height: our choice. */
    private static final double BROAD = 0.5;
    private static final double HIGH = 0.25;

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
        this.most = figures.get(figures.size() - 1).knots();
    }

    /** @param figures slowest first, at least one */
    public static DrawnSet draw(String name, HullOffsets table, Hull hull, List<AtKnots> figures, DrawingWish drawing, String tableFile,
                                Provenance provenance) {
        FlowTask task = new FlowTask(table, hull, new FlowPicture("", List.of(), List.of(), List.of(), List.of()), drawing, tableFile, provenance);
        RunningDiagram diagram = new RunningDiagram(task, figures);
        List<Piece> pieces = List.of(new Piece(List.of(Cluster.stack(List.of(
                diagram.graph("TRIM [degrees, bow up]", List.of(diagram.curve("", AtKnots::trimDegrees, Layer.FORM))),
                diagram.graph("WETTED LENGTHS [m]", List.of(diagram.curve("keel", AtKnots::keel, Layer.FORM), diagram.curve("chine", AtKnots::chine, Layer.HULL)))),
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

    private View graph(String title, List<Curve> curves) {
        return ViewTitle.above(title, "against speed in knots", Graph.of(width, height, lettering, most, curves), lettering, 0);
    }

    private Curve curve(String label, ToDoubleFunction<AtKnots> value, Layer layer) {
        return new Curve(label, layer, figures.stream().map(each -> new Reading(each.knots(), value.applyAsDouble(each))).toList());
    }
}
