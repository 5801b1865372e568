package org.garboard.job;

import java.util.List;
import java.util.Optional;
import org.garboard.craft.BottomFeatures;
import org.garboard.cutout.Pocket;
import org.garboard.mount.Check;
import org.garboard.mount.Verdict;
import org.garboard.siting.MountSiting;

/**
 * Everything that was decided for one transducer.
 *
 * @param job the job
 * @param features what is on the bottom
 * @param sitings what the search found, a row per mount of the job, in the order of its preference
 * @param advised the mount of {@code sitings} that is advised: the first that has a site; where the yard gave the place, the
 *     given mount, with the given place first among its sites
 * @param pocket the keel pocket at its best site, where one can be built
 * @param refusal why no pocket is drawn though the job wants one: reason and remedy; empty otherwise
 * @param chooser who chose the place
 */
public record SitingRecord(Job job, BottomFeatures features, List<MountSiting> sitings, Optional<MountSiting> advised,
                           Optional<Pocket> pocket, String refusal, Chooser chooser) {
    public SitingRecord {
        sitings = List.copyOf(sitings);
    }

    /** What the search advises. */
    public SitingRecord(Job job, BottomFeatures features, List<MountSiting> sitings, Optional<MountSiting> advised,
                        Optional<Pocket> pocket, String refusal) {
        this(job, features, sitings, advised, pocket, refusal, Chooser.SEARCH);
    }

    /** Whether the place is the yard's own. */
    public boolean isGiven() {
        return chooser == Chooser.YARD;
    }

    /** The checks that are not met at the place that is drawn, as may be where the yard gave it. */
    public List<Check> notMet() {
        return advised.stream().flatMap(siting -> siting.sites().get(0).checks().stream())
            .filter(check -> check.verdict() == Verdict.NOT_MET).toList();
    }

    /** Whether a mount of {@code sitings} is the advised one. */
    public boolean isAdvised(MountSiting siting) {
        return advised.filter(one -> one.mount().equals(siting.mount())).isPresent();
    }
}
