package org.garboard.revision;

import java.util.Optional;
import org.garboard.job.RecordedSet;
import org.garboard.job.RecordedSiting;
import org.garboard.mount.Mount;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;

/**
 * The best place of one mount, before and after.
 *
 * @param transducer its name in the later record
 * @param mount the mount
 * @param before best place in the earlier record; none where it has none
 * @param after best place in the later record
 */
public record Shift(String transducer, Mount mount, Optional<Site> before, Optional<Site> after) {

    /** Aft positive [m]; NaN where one of them has no place. */
    public double aft() {
        return before.isPresent() && after.isPresent() ? after.get().x() - before.get().x() : Double.NaN;
    }

    /** To starboard positive [m]; NaN where one of them has no place. */
    public double toStarboard() {
        return before.isPresent() && after.isPresent() ? after.get().y() - before.get().y() : Double.NaN;
    }

    /** The place that each draws, advised or given, of a transducer of both records. */
    public static Optional<Shift> drawn(RecordedSet earlier, RecordedSet later, int transducer) {
        if (transducer >= later.sitings().size()) {
            return Optional.empty();
        }
        RecordedSiting now = later.sitings().get(transducer);
        Optional<Site> before = transducer < earlier.sitings().size() ? earlier.sitings().get(transducer).place() : Optional.empty();
        return now.place().or(() -> before).map(place -> new Shift(now.transducer(), place.mount(), before, now.place()));
    }

    static Shift of(RecordedSiting earlier, RecordedSiting later, Mount mount) {
        return new Shift(later.transducer(), mount, best(earlier, mount), best(later, mount));
    }

    private static Optional<Site> best(RecordedSiting siting, Mount mount) {
        return siting.mounts().stream().filter(each -> each.mount().equals(mount)).map(MountSiting::sites).flatMap(sites -> sites.stream().limit(1)).findFirst();
    }
}
