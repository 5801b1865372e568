package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Scale;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Piece;
import org.garboard.drawing.layout.Piece.Corner;

/** Sheet 4: the keel pocket as it is built, and what is measured before it is cut. */
final class PocketSheet implements SheetContent {

    /** A pocket drawn shorter, or lower, than this [mm] shows no wall: our choice. */
    private static final double SHORTEST_POCKET = 20;
    private static final double LOWEST_POCKET = 4;
    private static final List<Corner> NOTES = List.of(Corner.BOTTOM_RIGHT, Corner.TOP_RIGHT, Corner.BOTTOM_LEFT, Corner.TOP_LEFT);
    private static final List<Corner> VIEWS = List.of(Corner.TOP_LEFT, Corner.BOTTOM_LEFT, Corner.TOP_RIGHT);

    private final SheetTask task;

    PocketSheet(SheetTask task) {
        this.task = task;
    }

    @Override
    public int number() {
        return 4;
    }

    @Override
    public String title() {
        return "Keel pocket";
    }

    @Override
    public String documentType() {
        return "Pocket drawing";
    }

    @Override
    public String description() {
        return "Keel pocket seen from below with bow to the right and starboard up, long section through its middle, "
                + "cross sections looking forward with starboard to the right.";
    }

    @Override
    public double longest() {
        return task.record().pocket().orElseThrow().length();
    }

    @Override
    public double shortestDrawn() {
        return Math.max(SHORTEST_POCKET, LOWEST_POCKET * longest() / task.record().pocket().orElseThrow().depth());
    }

    @Override
    public List<Piece> onEveryPage() {
        return List.of(Cautions.brief().piece(task.lettering(), NOTES));
    }

    @Override
    public List<List<Piece>> arrangements(Scale scale) {
        PocketTask pocket = PocketTask.of(task, scale);
        List<Piece> lengthwise = List.of(new Piece(List.of(task.inLine(PocketLongView.of(pocket), PocketPlanView.of(pocket))), List.of(Corner.TOP_LEFT)));
        List<View> sections = sections(pocket);
        double gap = task.lettering().gap();
        Piece together = new Piece(List.of(Cluster.row(sections, 2 * gap), Cluster.row(sections, gap),
                Cluster.stack(sections, gap)), VIEWS);
        return List.of(pieces(pocket, lengthwise, List.of(together)), pieces(pocket, lengthwise, apart(sections)));
    }

    /** On small sheets plan and long section stand apart too. */
    @Override
    public List<List<Piece>> runningOn(Scale scale) {
        PocketTask pocket = PocketTask.of(task, scale);
        List<List<Piece>> all = new ArrayList<>(arrangements(scale));
        all.add(pieces(pocket, apart(List.of(PocketPlanView.of(pocket), PocketLongView.of(pocket))), apart(sections(pocket))));
        return all;
    }

    private static List<View> sections(PocketTask pocket) {
        return pocket.crossSections().stream().map(section -> PocketCrossView.of(pocket, section)).toList();
    }

    private static List<Piece> apart(List<View> views) {
        return views.stream().map(view -> new Piece(List.of(Cluster.of(view)), VIEWS)).toList();
    }

    private List<Piece> pieces(PocketTask pocket, List<Piece> lengthwise, List<Piece> sections) {
        PocketTables tables = new PocketTables(task, pocket);
        List<Piece> pieces = new ArrayList<>();
        pieces.addAll(lengthwise);
        pieces.addAll(sections);
        pieces.add(tables.checks(NOTES));
        pieces.add(tables.pocket(List.of(Corner.TOP_RIGHT, Corner.BOTTOM_RIGHT, Corner.BOTTOM_LEFT, Corner.TOP_LEFT)));
        pieces.add(PocketNotes.cautions(task).piece(task.lettering(), NOTES));
        pieces.add(PocketNotes.of(task, pocket.pocket()).piece(task.lettering(), NOTES));
        return pieces;
    }
}
