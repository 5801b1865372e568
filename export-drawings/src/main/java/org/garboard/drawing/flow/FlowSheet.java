package org.garboard.drawing.flow;

import java.util.List;
import org.garboard.drawing.Scale;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Piece;
import org.garboard.drawing.layout.Piece.Corner;
import org.garboard.drawing.sheets.WholeHull;
import org.garboard.hull.Hull;

/** The bottom plan with the flow, a legend and notes. */
final class FlowSheet implements WholeHull {

    private final FlowTask task;

    FlowSheet(FlowTask task) {
        this.task = task;
    }

    @Override
    public int number() {
        return 1;
    }

    @Override
    public String title() {
        return FlowDrawing.TITLE;
    }

    @Override
    public String documentType() {
        return "Bottom plan";
    }

    @Override
    public String description() {
        return "Bottom plan seen from below with bow to the right and starboard up: how the water runs, and what lies in the wake of "
            + "what is on the bottom. " + task.picture().heading() + ".";
    }

    @Override
    public Hull hull() {
        return task.hull();
    }

    @Override
    public List<List<Piece>> arrangements(Scale scale) {
        return List.of(List.of(new Piece(List.of(Cluster.of(FlowPlanView.of(task, scale))), List.of(Corner.TOP_LEFT)),
            new Piece(List.of(FlowLegend.of(task.picture(), task.lettering())),
                List.of(Corner.BOTTOM_LEFT, Corner.TOP_RIGHT, Corner.TOP_LEFT)),
            new Piece(FlowNotes.of(task.picture()).shapes(task.lettering()),
                List.of(Corner.BOTTOM_RIGHT, Corner.BOTTOM_LEFT, Corner.TOP_RIGHT))));
    }
}
