package org.garboard.siting;

import java.util.ArrayList;
import java.util.List;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Drive;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.mount.Check;
import org.garboard.mount.Demand;
import org.garboard.mount.FeatureChecks;
import org.garboard.mount.Installation;
import org.garboard.mount.Mount;
import org.garboard.mount.Seat;
import org.garboard.mount.Surroundings;
import org.garboard.mount.told.DriveAsked;

/**
 * The part of a job that decides where.
 *
 * @param draught height of the waterline above base at rest [m]
 * @param installation what is to be sited
 * @param mounts the ways it may go in, in the order of the job
 * @param mark the step to which places are rounded
 * @param features what is on the bottom
 * @param around what else is told of the boat
 */
public record SitingTask(double draught, Installation installation, List<Mount> mounts, Mark mark,
                         BottomFeatures features, Surroundings around) {
    public SitingTask {
        mounts = List.copyOf(mounts);
    }

    /** Where nothing is told of the boat but her table and her bottom. */
    public SitingTask(double draught, Installation installation, List<Mount> mounts, Mark mark, BottomFeatures features) {
        this(draught, installation, mounts, mark, features, Surroundings.UNTOLD);
    }

    /** The same with other ways in. */
    public SitingTask by(List<Mount> others) {
        return new SitingTask(draught, installation, others, mark, features, around);
    }

    /** Whether what is told of port and starboard is alike for a mount. */
    boolean isSymmetrical(Mount mount) {
        return features.laid().stream().allMatch(feature -> feature.sides() == Sides.BOTH) && around.isSymmetrical()
            && !(mount.seat() == Seat.BEHIND_TRANSOM && DriveAsked.hasSide(around));
    }

    /** What a mount demands, and what this boat's strakes and fittings demand of every mount. */
    List<Demand> demands(Mount mount) {
        List<Demand> demands = new ArrayList<>(mount.demands(installation, around));
        if (!features.laid().isEmpty() || features.list() == BottomFeatures.FeatureList.GIVEN) {
            demands.add(FeatureChecks.room(installation.limits()));
        }
        features.laid().stream().filter(LaidFeature::isPropeller).mapToDouble(LaidFeature::breadth).max()
            .ifPresent(diameter -> demands.add(FeatureChecks.aheadOfPropellers(installation.limits(), diameter, lacking())));
        return demands;
    }

    /** What is the same for every place. */
    List<Check> settled(Mount mount) {
        List<Check> settled = new ArrayList<>(mount.settled(installation, around));
        if (features.list() == BottomFeatures.FeatureList.MISSING) {
            settled.add(FeatureChecks.notListed());
        }
        if (!lacking().isEmpty() && features.laid().stream().noneMatch(LaidFeature::isPropeller)) {
            settled.add(FeatureChecks.aheadOfUnlisted(lacking()));
        }
        return settled;
    }

    /** Which propellers under the bottom the job does not list. */
    private String lacking() {
        return around.drive().filter(drive -> drive.kind() != Drive.Kind.JET).map(features::lacks).orElse("");
    }
}
