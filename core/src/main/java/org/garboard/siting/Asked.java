package org.garboard.siting;

import java.util.List;
import org.garboard.hull.Hull;
import org.garboard.mount.Demand;
import org.garboard.mount.Mount;
import org.garboard.mount.Verdict;

/** All that is asked of every place for one mount; owns its array. */
final class Asked {
    private final Demand[] demands;
    private final boolean refused;

    private Asked(Demand[] demands, boolean refused) {
        this.demands = demands;
        this.refused = refused;
    }

    static Asked of(Hull hull, SitingTask task, Mount mount) {
        List<Demand> demands = Demands.of(hull, task, mount);
        return new Asked(demands.toArray(Demand[]::new),
            task.settled(mount).stream().anyMatch(check -> check.verdict() == Verdict.NOT_MET));
    }

    int count() {
        return demands.length;
    }

    Demand demand(int i) {
        return demands[i];
    }

    /** Whether the mount is refused wherever it is put. */
    boolean refused() {
        return refused;
    }
}
