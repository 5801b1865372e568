package org.garboard.job;

import java.util.List;
import java.util.Optional;
import org.garboard.mount.Mount;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;

/**
 * What was decided for one transducer, as a record tells it.
 *
 * @param transducer its name
 * @param mounts what was found, a row per mount
 * @param advised the mount that was advised; where the yard gave the place, the given one
 * @param answer in words
 * @param chooser who chose the place
 */
public record RecordedSiting(String transducer, List<MountSiting> mounts, Optional<Mount> advised, String answer, Chooser chooser) {
    public RecordedSiting {
        mounts = List.copyOf(mounts);
    }

    /** Whether the place is the yard's own, and nobody advised it. */
    public boolean isGiven() {
        return chooser == Chooser.YARD;
    }

    /** The place that is drawn, advised or given. */
    public Optional<Site> place() {
        return mounts.stream().filter(siting -> advised.equals(Optional.of(siting.mount()))).flatMap(siting -> siting.sites().stream()).findFirst();
    }
}
