package org.garboard.drawing.lines;

import java.util.List;
import org.garboard.drawing.Scale;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Piece;
import org.garboard.drawing.layout.Piece.Corner;
import org.garboard.drawing.sheets.WholeHull;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish.Projection;

/** The lines drawing: profile, half-breadth plan and body plan. */
final class LinesSheet implements WholeHull {

    private final LinesTask task;

    LinesSheet(LinesTask task) {
        this.task = task;
    }

    @Override
    public int number() {
        return 1;
    }

    @Override
    public String title() {
        return LinesDrawing.TITLE;
    }

    @Override
    public String documentType() {
        return "Lines drawing";
    }

    @Override
    public String description() {
        return "Profile from starboard with bow to the right, half-breadth plan seen from above with starboard down, "
                + "body plan looking forward.";
    }

    @Override
    public Hull hull() {
        return task.hull();
    }

    @Override
    public List<List<Piece>> arrangements(Scale scale) {
        LinesPaper lines = task.at(scale);
        return List.of(List.of(new Piece(List.of(lengthwise(lines)), List.of(Corner.TOP_LEFT)),
                new Piece(List.of(Cluster.of(LinesBodyPlan.of(lines, task.table().origin()))),
                        List.of(Corner.TOP_RIGHT, Corner.BOTTOM_LEFT, Corner.TOP_LEFT)),
                new Piece(LinesNotes.of(task).shapes(task.lettering()),
                        List.of(Corner.BOTTOM_RIGHT, Corner.TOP_RIGHT, Corner.BOTTOM_LEFT))));
    }

    /** Lengths in line. The view from above stands below the profile in first angle, above it in third (ISO 5456-2). */
    private Cluster lengthwise(LinesPaper lines) {
        View profile = LinesProfile.of(lines, task.table().origin());
        View plan = HalfBreadthPlan.of(lines);
        boolean first = task.drawing().projection() == Projection.FIRST_ANGLE;
        return Cluster.inLine(first ? profile : plan, first ? plan : profile, task.lettering().gap());
    }
}
