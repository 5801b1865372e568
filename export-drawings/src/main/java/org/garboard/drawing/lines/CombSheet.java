package org.garboard.drawing.lines;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.drawing.Scale;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Piece;
import org.garboard.drawing.layout.Piece.Corner;
import org.garboard.drawing.sheets.SheetContent;
import org.garboard.lines.DrawnLine;

/** The curvature of one line: a named line in profile and in plan, any other in its plane. */
final class CombSheet implements SheetContent {

    /** A line drawn smaller than this [mm] shows no curvature: our choice. */
    private static final double SHORTEST = 40;
    /** To see how large it is [m]. */
    private static final double ROUGH = 1e-2;
    private static final List<Corner> BELOW = List.of(Corner.BOTTOM_LEFT, Corner.BOTTOM_RIGHT, Corner.TOP_RIGHT);

    private final LinesTask task;
    private final DrawnLine line;

    CombSheet(LinesTask task, DrawnLine line) {
        this.task = task;
        this.line = line;
    }

    @Override
    public int number() {
        return 1;
    }

    @Override
    public String title() {
        return LinesDrawing.TITLE + ", curvature";
    }

    @Override
    public String documentType() {
        return "Lines drawing";
    }

    @Override
    public String description() {
        return "Curvature of " + line.words(task.figures()::brief) + ", bow to the right: comb teeth square to the line, as long as it is curved.";
    }

    /** Of a section its height or breadth; of any other line the hull's length, whose stations stand across it. */
    @Override
    public double longest() {
        if (!(line instanceof DrawnLine.Section)) {
            return task.hull().afterEnd() - task.hull().forwardEnd();
        }
        List<Vector3D> points = line.on(task.hull(), ROUGH).stream().flatMap(curve -> curve.points().stream()).toList();
        DoubleSummaryStatistics heights = points.stream().mapToDouble(Vector3D::getZ).summaryStatistics();
        return Math.max(heights.getMax() - heights.getMin(), points.stream().mapToDouble(Vector3D::getY).max().orElse(0));
    }

    @Override
    public double shortestDrawn() {
        return SHORTEST;
    }

    @Override
    public List<List<Piece>> arrangements(Scale scale) {
        CombTask comb = CombTask.of(task, line, scale);
        List<View> views = comb.combs().stream().map(each -> CombView.of(comb, each)).toList();
        double gap = task.lettering().gap();
        Cluster drawn = views.size() == 1 ? Cluster.of(views.get(0)) : Cluster.inLine(views.get(0), views.get(1), gap);
        return List.of(List.of(new Piece(List.of(drawn), List.of(Corner.TOP_LEFT)),
                new Piece(List.of(comb.teeth().legend(task.lettering(), task.figures())), BELOW),
                new Piece(CombNotes.of(task, comb).shapes(task.lettering()), BELOW)));
    }
}
