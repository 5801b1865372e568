package org.garboard.job;

import java.util.List;
import java.util.Optional;
import org.garboard.craft.BottomFeatures;
import org.garboard.cutout.Pocket;
import org.garboard.siting.MountSiting;

/**
 * Everything that was decided for one transducer.
 *
 * @param job the job
 * @param features what is on the bottom
 * @param sitings what the search found, a row per mount of the job, in the order of its preference
 * @param advised the mount of {@code sitings} that is advised: the first that has a site
 * @param pocket the keel pocket at its best site, where one can be built
 * @param refusal why no pocket is drawn though the job wants one: reason and remedy; empty otherwise
 */
public record SitingRecord(Job job, BottomFeatures features, List<MountSiting> sitings, Optional<MountSiting> advised,
                           Optional<Pocket> pocket, String refusal) {
    public SitingRecord {
        sitings = List.copyOf(sitings);
    }

    /** Whether a mount of {@code sitings} is the advised one. */
    public boolean isAdvised(MountSiting siting) {
        return advised.filter(one -> one.mount().equals(siting.mount())).isPresent();
    }
}
