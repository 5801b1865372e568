package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.template.Template;
import org.garboard.drawing.Scale;
import org.garboard.drawing.layout.Notes;
import org.garboard.drawing.layout.Piece.Corner;
import org.garboard.drawing.layout.Piece;
import org.garboard.marking.MarkedLength;
import org.garboard.mount.Check;
import org.garboard.siting.Site;

/** The builder's check sheet: what is measured and signed before the cut, and where the work holds. */
final class CheckSheet implements SheetContent {
    /** Common practice, no source. */
    private static final List<String> HOLDS = List.of(
            "Before the pilot hole: every tape of sheet 2 within its limits, everything NOT KNOWN looked at, template measured.",
            "Pilot hole seen from inside: skin, core, structure, tanks, cables as told; place as marked.",
            "Dry fit: what is measured AFTER CUTTING within its limits, body in its place, fore end to the bow, element leaning as the sheets say, gaps even.",
            "Before launch: bedding cured and feathered, nowhere more than 0.5 mm proud, seal whole, cable clear, seacock or blank at hand, bilge pump tried.",
            "24 hours afloat: no water round the fitting, looked at when afloat, after one hour and after 24.");
    private static final String AFTER = "MEASURE AFTER CUTTING, at the dry fit";
    private static final List<Corner> CORNERS = List.of(Corner.TOP_LEFT, Corner.BOTTOM_LEFT, Corner.TOP_RIGHT, Corner.BOTTOM_RIGHT);

    private final SheetTask task;
    private final List<Piece> pieces;

    CheckSheet(SheetTask task) {
        this.task = task;
        List<Piece> wanted = new ArrayList<>(List.of(Columns.piece("MEASURE BEFORE CUTTING", before(), task.lettering(), CORNERS),
                Columns.piece("LOOK BEFORE CUTTING: " + (task.record().notMet().isEmpty() ? "" : "NOT MET, ") + "NOT KNOWN", looks(), task.lettering(), CORNERS),
                signing().piece(task.lettering(), CORNERS)));
        if (after().size() > 1) {
            wanted.add(Columns.piece(AFTER, after(), task.lettering(), CORNERS));
        }
        wanted.add(Columns.piece("HOLD POINTS: the work stops until each is signed", holds(), task.lettering(), CORNERS));
        wanted.add(Cautions.of(task.table()).piece(task.lettering(), CORNERS));
        this.pieces = List.copyOf(wanted);
    }

    @Override
    public int number() {
        return 7;
    }

    @Override
    public String title() {
        return "Check sheet";
    }

    @Override
    public String documentType() {
        return "Check list";
    }

    @Override
    public String description() {
        return "What is measured, looked at and signed before and after the cut. No views.";
    }

    @Override
    public double longest() {
        return 0;
    }

    @Override
    public double shortestDrawn() {
        return 0;
    }

    @Override
    public List<Piece> onEveryPage() {
        return List.of(Cautions.brief().piece(task.lettering(), CORNERS));
    }

    @Override
    public List<List<Piece>> arrangements(Scale scale) {
        return List.of(pieces);
    }

    private static List<List<String>> measures() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Measure", "Drawn", "Within", "Stop at", "Measured", "Initials", "Date"));
        return rows;
    }

    /** What the boat as she stands, the marks on her and the templates tell: while it can still be put right. */
    private List<List<String>> before() {
        List<List<String>> rows = measures();
        for (MarkedLength length : task.marking().orElseThrow().lengths()) {
            row(rows, "Tape " + MarkingTables.name(length) + ", " + MarkingTables.held(length), task.figures().length(length.metres()),
                    task.figures().within(length.within()), task.figures().within(2 * length.within()));
        }
        row(rows, "Deadrise at the place", deadrise(), "±1.0°", "more");
        if (isPocket()) {
            Pocket pocket = task.record().pocket().orElseThrow();
            CutOutline outline = CutOutline.of(pocket);
            CutOutline edge = CutOutline.finishedEdge(pocket);
            shape(rows, "Template: length over all", outline.extents().width());
            shape(rows, "Template: width over all", outline.extents().height());
            shape(rows, "Template: diagonal, tick 1 to tick 4", edge.diagonalFromStarboard());
            shape(rows, "Template: diagonal, tick 2 to tick 3", edge.diagonalFromPort());
        }
        for (Template template : task.templates()) {
            shape(rows, "Template " + template.name().replace('-', ' ') + ": between its points farthest apart", 1000 * template.checkLength());
        }
        task.made().fairing().ifPresent(block -> {
            row(rows, "Fairing block: side at its lowest", task.figures().fine(block.low()), task.figures().within(Marking.DEPTH),
                    task.figures().within(2 * Marking.DEPTH));
            row(rows, "Fairing block: side at its highest", task.figures().fine(block.high()), task.figures().within(Marking.DEPTH),
                    task.figures().within(2 * Marking.DEPTH));
        });
        return rows;
    }

    /** What is not there before the cut. */
    private List<List<String>> after() {
        List<List<String>> rows = measures();
        if (isPocket()) {
            row(rows, "Pocket: depth of floor at keel, middle", task.figures().bench(task.record().pocket().orElseThrow().depth()),
                    task.figures().within(Marking.DEPTH), task.figures().within(2 * Marking.DEPTH));
        }
        if (CutTask.isWanted(task.made())) {
            openings(rows, CutTask.of(task));
        }
        return rows;
    }

    private void openings(List<List<String>> rows, CutTask cut) {
        String larger = task.figures().upTo(Marking.OPENING);
        String stop = task.figures().upTo(2 * Marking.OPENING) + "; smaller: ease it";
        for (Opening opening : cut.openings()) {
            if (opening.isRound()) {
                row(rows, "Hole " + opening.use(), "Ø" + task.figures().fine(opening.outline().length()), larger, stop);
            } else {
                row(rows, "Opening " + opening.use() + ": length", task.figures().fine(opening.outline().length()), larger, stop);
                row(rows, "Opening " + opening.use() + ": width", task.figures().fine(opening.outline().width()), larger, stop);
            }
        }
        row(rows, "Hole's axis square to the " + (cut.isFlush() ? "skin" : "block's face"), "square", "±1.0°", "more");
    }

    private boolean isPocket() {
        return task.advisedIsPocket();
    }

    private String deadrise() {
        Site site = task.record().advised().orElseThrow().sites().get(0);
        return isPocket() && site.y() == 0 ? "both sides alike; sheet 4" : Figures.degrees(site.deadrise());
    }

    private void shape(List<List<String>> rows, String what, double mm) {
        row(rows, what, task.figures().bench(mm / 1000), task.figures().within(Marking.SHAPE), task.figures().within(2 * Marking.SHAPE));
    }

    private static void row(List<List<String>> rows, String what, String drawn, String within, String stop) {
        rows.add(List.of(what, drawn, within, stop, "", "", ""));
    }

    private List<List<String>> looks() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Look before cutting", "Found", "Initials", "Date"));
        for (Check check : task.record().notMet()) {
            rows.add(List.of("NOT MET: " + check.name() + ": " + check.sentence(), "", "", ""));
        }
        for (Check check : task.record().advised().orElseThrow().sites().get(0).notKnown()) {
            rows.add(List.of(check.name() + ": " + check.sentence(), "", "", ""));
        }
        return rows;
    }

    private static List<List<String>> holds() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("HOLD", "Signed", "Date"));
        HOLDS.forEach(hold -> rows.add(List.of(hold, "", "")));
        return rows;
    }

    private Notes signing() {
        return Notes.numbered("SIGN BEFORE CUTTING", List.of(
                "For check: not to be cut until the check measurements are signed.",
                "All that is called BEFORE CUTTING measured and looked at; nothing at or past its stop:",
                "Name, date: ______________________________", "Signed: ______________________________",
                "Structure approved by whoever answers for it. Name, date: ______________________________",
                "Signed: ______________________________"));
    }
}
