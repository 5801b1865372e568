package org.garboard.siting;

import java.util.Arrays;
import java.util.List;
import org.garboard.hull.Hull;
import org.garboard.mount.Check;
import org.garboard.mount.Demand;
import org.garboard.mount.Mount;
import org.garboard.mount.Verdict;

/** All that is asked of every place for one mount; owns its array. */
final class Asked {
    private final Demand[] demands;
    private final List<Check> settled;
    private final boolean refused;

    private Asked(Demand[] demands, List<Check> settled) {
        this.demands = demands;
        this.settled = settled;
        this.refused = settled.stream().anyMatch(check -> check.verdict() == Verdict.NOT_MET);
    }

    static Asked of(Hull hull, SitingTask task, Mount mount) {
        List<Demand> demands = Demands.of(hull, task, mount);
        return new Asked(demands.toArray(Demand[]::new), task.settled(mount));
    }

    int count() {
        return demands.length;
    }

    Demand demand(int i) {
        return demands[i];
    }

    List<String> names() {
        return Arrays.stream(demands).map(Demand::name).toList();
    }

    /** What is the same for every place. */
    List<Check> settled() {
        return settled;
    }

    /** Whether the mount is refused wherever it is put. */
    boolean refused() {
        return refused;
    }
}
