package org.garboard.job;

import java.util.List;
import org.garboard.craft.Transducer;
import org.garboard.hull.Fit;
import org.garboard.mount.Installation;
import org.garboard.mount.Mount;
import org.garboard.mount.PocketWish;
import org.garboard.siting.Mark;
import org.garboard.siting.SitingTask;

/**
 * One boat and one task.
 *
 * @param boat name of the boat or model
 * @param hullNumber builder's hull number, empty when none is told
 * @param tableFile the table of offsets as the job names it
 * @param fit how the hull is drawn from it
 * @param draught height of the floating waterline above base at rest [m]
 * @param transducer what is to be sited
 * @param mounts the ways it may go in, in the order of the job
 * @param pocket wishes for a keel pocket
 * @param drawing how the sheets are to look
 */
public record Job(String boat, String hullNumber, String tableFile, Fit fit, double draught,
                  Transducer transducer, List<Mount> mounts, PocketWish pocket, DrawingWish drawing) {
    public Job {
        mounts = List.copyOf(mounts);
    }

    /** What the search of the bottom needs to know of the job. */
    public SitingTask sitingTask() {
        return new SitingTask(draught, new Installation(transducer, pocket), mounts,
            switch (drawing.units()) {
                case MILLIMETRES -> Mark.FIVE_MILLIMETRES;
                case FEET_INCHES_EIGHTHS -> Mark.QUARTER_INCH;
            });
    }
}
