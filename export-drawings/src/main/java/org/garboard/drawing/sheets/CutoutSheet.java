package org.garboard.drawing.sheets;

import java.util.List;
import org.garboard.drawing.Scale;
import org.garboard.drawing.layout.Piece;
import org.garboard.drawing.layout.Piece.Corner;

/** Sheet 4 of a through-hull: what is drilled and cut through the skin, where it is, how it stands. */
final class CutoutSheet implements SheetContent {
    /** Openings drawn shorter than this [mm] show no stem: our choice. */
    private static final double SHORTEST = 15;
    private static final List<Corner> NOTES = List.of(Corner.BOTTOM_RIGHT, Corner.TOP_RIGHT, Corner.BOTTOM_LEFT, Corner.TOP_LEFT);
    private static final List<Corner> TABLES = List.of(Corner.TOP_RIGHT, Corner.BOTTOM_LEFT, Corner.TOP_LEFT, Corner.BOTTOM_RIGHT);

    private final SheetTask task;
    private final CutTask cut;
    private final List<Piece> words;

    CutoutSheet(SheetTask task) {
        this.task = task;
        this.cut = CutTask.of(task);
        CutoutTables tables = new CutoutTables(cut);
        this.words = List.of(tables.sizes(TABLES), tables.place(TABLES), new Piece(List.of(CutParts.legend(task)), PlanAndSections.CORNERS),
                Cautions.of(task.table()).piece(task.lettering(), NOTES), tables.notes().piece(task.lettering(), NOTES));
    }

    @Override
    public int number() {
        return 4;
    }

    @Override
    public String title() {
        return "Cutout";
    }

    @Override
    public String documentType() {
        return "Cutout drawing";
    }

    @Override
    public String description() {
        return "What is cut through the skin, seen from below with bow to the right and starboard up; long section from starboard and section looking "
                + "forward through the hole's axis, plumb up; sizes, place and stand.";
    }

    @Override
    public double longest() {
        return cut.length();
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
        return List.of(views(scale).inLine(task));
    }

    @Override
    public List<List<Piece>> runningOn(Scale scale) {
        return List.of(views(scale).inLine(task), views(scale).apart());
    }

    private PlanAndSections views(Scale scale) {
        return new PlanAndSections(CutoutPlanView.of(cut, scale), CutoutSectionView.lengthwise(cut, scale), CutoutSectionView.athwart(cut, scale), words);
    }
}
