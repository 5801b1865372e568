package org.garboard.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.garboard.job.RecordedSet;
import org.garboard.mount.FairedThroughHull;
import org.garboard.siting.Site;

/** On which sheets of a set something moved between two records. */
public final class SheetsMoved {
    /** Half of the last digit that a record prints [m]. */
    private static final double PRINTED = 5e-7;
    private static final Set<String> NAMES = Set.of("name", "hull-number");

    private SheetsMoved() {
    }

    /** Number and name of each, in their order; none where both sets draw the same. */
    public static List<String> of(RecordedSet earlier, RecordedSet later, List<Change> changes) {
        boolean hull = !earlier.tableHash().equals(later.tableHash());
        boolean place = false;
        for (int i = 0; i < Math.max(earlier.sitings().size(), later.sitings().size()); i++) {
            place |= moved(drawn(earlier, i), drawn(later, i));
        }
        boolean parts = changes.stream().anyMatch(SheetsMoved::isOfParts)
            || hasBlock(later) && changes.stream().anyMatch(change -> change.kind() == Change.Kind.INPUT && change.subject().startsWith("inputs, job"));
        List<String> sheets = new ArrayList<>();
        if (hull || place || parts || changes.stream().anyMatch(change -> change.kind().compareTo(Change.Kind.FEATURE) >= 0)) {
            sheets.add("1 siting");
        }
        if (hull || place || parts) {
            sheets.addAll(List.of("2 marking out", "3 template", "4 cutout or pocket", "5 blocks"));
        }
        if (!sheets.isEmpty()) {
            sheets.add("7 check");
        }
        return sheets;
    }

    /** Speeds, weights, skin and limits shape a part as its own measures do; words of the title block do not. */
    private static boolean isOfParts(Change change) {
        return change.kind() == Change.Kind.FIGURE && !change.subject().startsWith("drawing") && !NAMES.contains(change.what());
    }

    /** What a job wishes of a fairing block stands in no record, so that any change of the job may be one of the block. */
    private static boolean hasBlock(RecordedSet set) {
        return set.sitings().stream().flatMap(siting -> siting.place().stream()).anyMatch(site -> site.mount() instanceof FairedThroughHull);
    }

    private static Optional<Site> drawn(RecordedSet set, int transducer) {
        return transducer < set.sitings().size() ? set.sitings().get(transducer).place() : Optional.empty();
    }

    private static boolean moved(Optional<Site> before, Optional<Site> after) {
        if (before.isEmpty() || after.isEmpty()) {
            return before.isPresent() || after.isPresent();
        }
        return !before.get().mount().equals(after.get().mount()) || Math.hypot(after.get().x() - before.get().x(), after.get().y() - before.get().y()) > PRINTED;
    }
}
