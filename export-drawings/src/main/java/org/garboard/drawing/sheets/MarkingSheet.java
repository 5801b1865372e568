package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Scale;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Piece;
import org.garboard.drawing.layout.Piece.Corner;
import org.garboard.marking.MarkingOut;

/** Sheet 2: how the advised place is found on the boat with a tape. */
final class MarkingSheet implements SheetContent {
    /** Drawn shorter, marks on the keel line stand on each other [mm]: our choice. */
    private static final double SHORTEST = 40;
    private static final List<Corner> NOTES = List.of(Corner.BOTTOM_RIGHT, Corner.TOP_RIGHT, Corner.BOTTOM_LEFT, Corner.TOP_LEFT);
    private static final List<Corner> TABLES = List.of(Corner.BOTTOM_LEFT, Corner.TOP_LEFT, Corner.TOP_RIGHT, Corner.BOTTOM_RIGHT);
    private final SheetTask task;
    private final MarkingOut plan;
    private final List<Piece> words;

    MarkingSheet(SheetTask task) {
        this.task = task;
        this.plan = task.marking().orElseThrow();
        MarkingTables tables = new MarkingTables(task, plan);
        this.words = List.of(tables.lengths(TABLES), tables.steps().piece(task.lettering(), NOTES),
                Cautions.of(task.table()).piece(task.lettering(), NOTES), tables.marks(TABLES));
    }

    @Override
    public int number() {
        return 2;
    }

    @Override
    public String title() {
        return "Marking out";
    }

    @Override
    public String documentType() {
        return "Marking-out drawing";
    }

    @Override
    public String description() {
        return "The bottom seen from below with bow to the right and starboard up; marks, the tapes between them, and how far off they may be.";
    }

    @Override
    public double longest() {
        return MarkingView.length(task.hull(), plan);
    }

    @Override
    public double shortestDrawn() {
        return SHORTEST;
    }

    @Override
    public List<Piece> onEveryPage() {
        return List.of(Cautions.brief().piece(task.lettering(), NOTES));
    }

    @Override
    public List<List<Piece>> arrangements(Scale scale) {
        List<Piece> pieces = new ArrayList<>(List.of(new Piece(List.of(Cluster.of(MarkingView.of(task, plan, scale))), List.of(Corner.TOP_LEFT))));
        pieces.addAll(words);
        return List.of(pieces);
    }
}
