package org.garboard.drawing.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.garboard.drawing.Scale;
import org.garboard.drawing.layout.Cluster;
import org.garboard.drawing.layout.Notes;
import org.garboard.drawing.layout.Piece;
import org.garboard.drawing.layout.Piece.Corner;
import org.garboard.drawing.sheets.Cautions;
import org.garboard.drawing.sheets.Columns;
import org.garboard.drawing.sheets.WholeHull;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish;
import org.garboard.job.RecordedSiting;
import org.garboard.revision.Change;
import org.garboard.revision.SheetsMoved;

/** Sheet 8: the later set over the earlier, and a table of all that differs, which runs on to further pages. */
final class RevisionSheet implements WholeHull {
    private static final List<Corner> BELOW = List.of(Corner.BOTTOM_LEFT, Corner.TOP_LEFT, Corner.TOP_RIGHT, Corner.BOTTOM_RIGHT);
    private static final List<Corner> BESIDE = List.of(Corner.BOTTOM_RIGHT, Corner.TOP_RIGHT, Corner.BOTTOM_LEFT, Corner.TOP_LEFT);

    private final RevisionTask task;
    private final List<Piece> words = new ArrayList<>();

    RevisionSheet(RevisionTask task) {
        this.task = task;
        words.add(Columns.piece("TABLE OF REVISIONS", revisions(), task.lettering(), BELOW));
        words.add(Columns.piece("WHAT MOVED", rows(), task.lettering(), BELOW));
        words.add(Cautions.of(task.table()).piece(task.lettering(), BESIDE));
        words.add(notes().piece(task.lettering(), BESIDE));
    }

    @Override
    public int number() {
        return 8;
    }

    @Override
    public String title() {
        return "Revisions";
    }

    @Override
    public String documentType() {
        return "Revision drawing";
    }

    @Override
    public String description() {
        return "Bottom plan seen from below with bow to the right and starboard up: a later set drawn over an earlier one, and all that differs.";
    }

    @Override
    public Hull hull() {
        return task.later().hull();
    }

    @Override
    public List<Piece> onEveryPage() {
        return List.of(Cautions.brief().piece(task.lettering(), BESIDE));
    }

    @Override
    public List<List<Piece>> arrangements(Scale scale) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece(List.of(Cluster.of(RevisionPlan.of(task, scale))), List.of(Corner.TOP_LEFT)));
        pieces.addAll(words);
        return List.of(pieces);
    }

    private List<List<String>> revisions() {
        DrawingWish before = task.earlier().set().drawing();
        DrawingWish after = task.later().set().drawing();
        Map<Change.Kind, Long> count = task.changes().stream().collect(Collectors.groupingBy(Change::kind, TreeMap::new, Collectors.counting()));
        String said = count.entrySet().stream().map(entry -> entry.getKey().word() + " " + entry.getValue()).collect(Collectors.joining(", "));
        return List.of(List.of("Revision", "Date", "By", "Told", "Differences found"),
            List.of(before.revision(), before.date(), before.creator(), told(before), "-"),
            List.of(after.revision(), after.date(), after.creator(), told(after), said.isEmpty() ? "none" : said));
    }

    /** What the job says of its own revision. */
    private static String told(DrawingWish wish) {
        return wish.issues().isEmpty() ? "-" : wish.issues().get(wish.issues().size() - 1).changed();
    }

    private List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Kind", "Of", "What", "Was", "Is", "Unit", "Difference"));
        for (Change change : task.changes()) {
            rows.add(List.of(change.kind().word(), change.subject(), change.what(), brief(change.before()), brief(change.after()), change.unit(), change.difference()));
        }
        return rows;
    }

    /** Of a hash its beginning tells it apart. */
    private static String brief(String value) {
        return value.matches("[0-9a-f]{64}") ? value.substring(0, 12) + "…" : value;
    }

    private static void given(DrawnRecord drawn, List<String> notes) {
        drawn.set().sitings().stream().filter(RecordedSiting::isGiven).forEach(siting -> notes.add("Revision " + drawn.set().drawing().revision()
            + ": the place of " + siting.transducer() + " was GIVEN BY THE YARD; nobody advised it."));
    }

    private Notes notes() {
        List<String> notes = new ArrayList<>();
        notes.add("Both sets are drawn from their records; nothing was sited anew.");
        notes.add("Rectangles: length and width over all of the body, at the place drawn. Outlines: where that mount may go.");
        given(task.earlier(), notes);
        given(task.later(), notes);
        if (!task.earlier().set().tableHash().equals(task.later().set().tableHash())) {
            notes.add("The hull was drawn from another table before: both lie on x from their own origin.");
        }
        if (task.earlier().set().drawing().revision().equals(task.later().set().drawing().revision())) {
            notes.add("BOTH SETS CALL THEMSELVES REVISION " + task.later().set().drawing().revision() + ": tell them apart by their dates and hashes.");
        }
        List<String> sheets = SheetsMoved.of(task.earlier().set(), task.later().set(), task.changes());
        if (!sheets.isEmpty()) {
            notes.add("Something moved on sheets " + String.join(", ", sheets) + ": put the earlier ones out of use.");
        }
        notes.add("A place marked on the boat by the earlier set is void where it moved: rub it out.");
        return Notes.numbered("NOTES", notes);
    }
}
