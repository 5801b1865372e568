package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.PocketSection;
import org.garboard.drawing.Scale;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.Notes;
import org.garboard.drawing.layout.Piece;
import org.garboard.drawing.layout.Piece.Corner;
import org.garboard.units.FixedDecimal;

/** Sheet 4: the keel pocket as it is built, and what is measured before it is cut. */
final class PocketSheet implements SheetContent {

    /** A pocket drawn shorter than this [mm] shows no wall: our choice. */
    private static final double SHORTEST_POCKET = 30;
    private static final List<Corner> NOTES = List.of(Corner.BOTTOM_RIGHT, Corner.TOP_RIGHT, Corner.BOTTOM_LEFT);
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
        return "Keel pocket seen from below with bow to the right and starboard up, long section on the centreline, "
                + "cross sections looking forward with starboard to the right.";
    }

    @Override
    public boolean legible(Scale scale) {
        return scale.paper(task.record().pocket().orElseThrow().length()) >= SHORTEST_POCKET;
    }

    @Override
    public List<Piece> pieces(Scale scale) {
        PocketTask pocket = PocketTask.of(task, scale);
        PocketTables tables = new PocketTables(task, pocket);
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece(List.of(lengthwise(pocket)), List.of(Corner.TOP_LEFT)));
        for (PocketSection section : pocket.pocket().sections()) {
            if (!PocketTask.lengthwise(section)) {
                pieces.add(new Piece(List.of(Cluster.of(PocketCrossView.of(pocket, section))), VIEWS));
            }
        }
        pieces.add(new Piece(tables.checkShapes(), NOTES));
        pieces.add(new Piece(tables.pocketShapes(), NOTES));
        pieces.add(new Piece(cautions(pocket).shapes(task.lettering()), NOTES));
        return pieces;
    }

    private Notes cautions(PocketTask pocket) {
        double stretch = pocket.pocket().developmentStretch() * 1000;
        String flattening = stretch < 0.05 ? "Laying the skin flat changes no length."
                : "Laying the skin flat changes lengths by up to " + FixedDecimal.format(stretch, 1) + " mm.";
        return Cautions.with(List.of(
                "Sheet 1 lists under LOOK BEFORE CUTTING what is NOT KNOWN of this place: answer each first.",
                "Structure: not to be cut until whoever answers for the boat's structure has approved the pocket. No keelson, "
                        + "floor, bearer or keel bolt may be cut.",
                "Cut file pocket-outside-up_mm_1to1.dxf: outside up, true millimetres, origin in the middle of the pocket on "
                        + "the keel line. Kerf and tool offset are not allowed for. " + flattening));
    }

    /** Long section over plan, lengths in line. */
    private Cluster lengthwise(PocketTask pocket) {
        View plan = PocketPlanView.of(pocket);
        View section = PocketLongView.of(pocket);
        Lettering lettering = task.lettering();
        double lift = plan.frame().top() + lettering.gap() - section.frame().bottom();
        return Cluster.of(section.movedBy(0, lift), plan);
    }
}
