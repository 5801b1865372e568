package org.garboard.job;

import java.util.List;
import org.garboard.craft.Transducer;
import org.garboard.cutout.PocketWish;
import org.garboard.mount.Mount;

/**
 * One boat and one task.
 *
 * @param boat name of the boat or model
 * @param hullNumber builder's hull number, empty when none is told
 * @param tableFile the table of offsets as the job names it
 * @param draught height of the floating waterline above base at rest [m]
 * @param transducer what is to be sited
 * @param mounts the ways it may go in, in the order of the job
 * @param pocket wishes for a keel pocket
 * @param drawing how the sheets are to look
 */
public record Job(String boat, String hullNumber, String tableFile, double draught,
                  Transducer transducer, List<Mount> mounts, PocketWish pocket, DrawingWish drawing) {
    public Job {
        mounts = List.copyOf(mounts);
    }
}
