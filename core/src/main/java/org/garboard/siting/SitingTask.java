package org.garboard.siting;

import java.util.List;
import org.garboard.mount.Installation;
import org.garboard.mount.Mount;

/**
 * The part of a job that decides where.
 *
 * @param draught height of the waterline above base at rest [m]
 * @param installation what is to be sited
 * @param mounts the ways it may go in, in the order of the job
 * @param mark the step to which places are rounded
 */
public record SitingTask(double draught, Installation installation, List<Mount> mounts, Mark mark) {
    public SitingTask {
        mounts = List.copyOf(mounts);
    }
}
