package org.garboard.cli.print;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.garboard.revision.Change;

/** What differs between two records, as text or as CSV. */
public final class ChangesReport {
    private final PrintWriter out;

    public ChangesReport(PrintWriter out) {
        this.out = out;
    }

    /**
     * A heading for each kind, a line for each change.
     *
     * @param sheets on which something moved
     */
    public void print(List<Change> changes, List<String> sheets) {
        if (changes.isEmpty()) {
            out.println("Nothing moved: both records decide the same from the same.");
        }
        Change.Kind kind = null;
        for (Change change : changes) {
            if (change.kind() != kind) {
                kind = change.kind();
                out.println(kind.word().toUpperCase(Locale.ROOT));
            }
            out.println("  " + change.words());
        }
        if (!sheets.isEmpty()) {
            out.println("SHEETS");
            out.println("  On these something moved, and what was marked or made by the earlier ones is void: " + String.join(", ", sheets) + ".");
        }
        out.flush();
    }

    /** A row for each change. */
    public void csv(List<Change> changes) {
        Csv csv = new Csv(out);
        csv.row("kind", "subject", "what", "before", "after", "unit", "difference");
        changes.forEach(change -> csv.row(change.kind().word(), change.subject(), change.what(), change.before(),
            change.after(), change.unit(), change.difference()));
        out.flush();
    }
}
