package org.garboard.siting;

import java.util.ArrayList;
import java.util.List;
import org.garboard.hull.Hull;
import org.garboard.mount.Demand;
import org.garboard.mount.Mount;
import org.garboard.mount.StepChecks;

/** What is asked of a place on one hull: what the task asks, and to keep ahead of steps where there are any. */
final class Demands {

    private Demands() {
    }

    static List<Demand> of(Hull hull, SitingTask task, Mount mount) {
        List<Demand> demands = new ArrayList<>(task.demands(mount));
        if (!hull.steps().isEmpty()) {
            demands.add(StepChecks.clear(task.installation(), task.around()));
            demands.add(StepChecks.behind(hull, task.installation(), task.around()));
        }
        return demands;
    }
}
