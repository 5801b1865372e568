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
 * @param advised the mount that was advised
 * @param answer in words
 */
public record RecordedSiting(String transducer, List<MountSiting> mounts, Optional<Mount> advised, String answer) {
    public RecordedSiting {
        mounts = List.copyOf(mounts);
    }

    /** The advised place. */
    public Optional<Site> place() {
        return mounts.stream().filter(siting -> advised.equals(Optional.of(siting.mount()))).flatMap(siting -> siting.sites().stream()).findFirst();
    }
}
