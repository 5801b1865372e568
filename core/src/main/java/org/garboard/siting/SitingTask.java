package org.garboard.siting;

import java.util.ArrayList;
import java.util.List;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.LaidFeature;
import org.garboard.mount.Check;
import org.garboard.mount.Demand;
import org.garboard.mount.FeatureChecks;
import org.garboard.mount.Installation;
import org.garboard.mount.Mount;

/**
 * The part of a job that decides where.
 *
 * @param draught height of the waterline above base at rest [m]
 * @param installation what is to be sited
 * @param mounts the ways it may go in, in the order of the job
 * @param mark the step to which places are rounded
 * @param features what is on the bottom
 */
public record SitingTask(double draught, Installation installation, List<Mount> mounts, Mark mark,
                         BottomFeatures features) {
    public SitingTask {
        mounts = List.copyOf(mounts);
    }

    /** What a mount demands, and what this boat's strakes and fittings demand of every mount. */
    List<Demand> demands(Mount mount) {
        List<Demand> demands = new ArrayList<>(mount.demands(installation));
        if (!features.laid().isEmpty() || features.list() == BottomFeatures.FeatureList.GIVEN) {
            demands.add(FeatureChecks.ROOM);
        }
        if (features.laid().stream().anyMatch(LaidFeature::isPropeller)) {
            demands.add(FeatureChecks.AHEAD_OF_PROPELLERS);
        }
        return demands;
    }

    List<Check> openQuestions(Mount mount) {
        List<Check> open = new ArrayList<>(mount.openQuestions());
        if (features.list() == BottomFeatures.FeatureList.MISSING) {
            open.add(FeatureChecks.notListed());
        }
        return open;
    }
}
