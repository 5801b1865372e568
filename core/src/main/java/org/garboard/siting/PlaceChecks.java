package org.garboard.siting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.craft.LaidFeature;
import org.garboard.hull.Hull;
import org.garboard.mount.Check;
import org.garboard.mount.Demand;
import org.garboard.mount.FeatureChecks;
import org.garboard.mount.Mount;
import org.garboard.mount.Seat;
import org.garboard.mount.StepChecks;
import org.garboard.mount.Verdict;

/** Every check of one mount at single places, on the true surface. Port mirrors starboard. */
final class PlaceChecks {
    private static final String OFF_SKIN =
        "The footprint or its ramps leave the skin of the table of offsets here; nothing can be measured.";
    private static final String OFF_KEEL =
        "This mount sits athwart the keel line: it has no place beside it; ask at y = 0.";

    private final Hull hull;
    private final SitingTask task;
    private final Mount mount;
    private final List<Demand> demands;
    private final MeasuredBed bed;

    PlaceChecks(Hull hull, Ground ground, SitingTask task, Mount mount) {
        this.hull = hull;
        this.mount = mount;
        this.task = task;
        this.demands = Demands.of(hull, task, mount);
        this.bed = Beds.fine(ground, mount, task.installation());
    }

    /** The place with every check. */
    Site at(double x, double y) {
        boolean beside = mount.seat() == Seat.ATHWART_KEEL && y != 0;
        boolean measured = !beside && bed.measure(x, Math.abs(y));
        List<Check> checks = new ArrayList<>();
        checks.add(seatCheck(measured, beside ? OFF_KEEL : OFF_SKIN));
        for (Demand demand : demands) {
            checks.add(measured ? named(demand.check(bed), demand) : demand.unmeasured("Not measured: the footprint finds no seat here."));
        }
        checks.addAll(task.openQuestions(mount));
        return new Site(mount, x, y, hull.height(x, y), hull.girth(x, y),
            measured ? bed.deadrise() : Double.NaN, measured ? bed.slope() : Double.NaN, checks, Optional.empty());
    }

    /** Which strake or fitting is the nearest. */
    private Check named(Check check, Demand demand) {
        if (demand == StepChecks.CLEAR && check.verdict() == Verdict.NOT_KNOWN) {
            return check.saying(StepChecks.BEHIND);
        }
        Optional<LaidFeature> nearest = demand == FeatureChecks.ROOM ? bed.nearestFeature() : Optional.empty();
        return nearest.map(feature -> check.saying(check.sentence() + " Nearest: " + feature.kind() + " \"" + feature.name()
            + "\", " + feature.sides().words() + ".")).orElse(check);
    }

    private static Check seatCheck(boolean seated, String otherwise) {
        return new Check("seat on the skin", Check.Sense.YES_NO, Double.NaN, Double.NaN, "",
            seated ? 0 : Double.POSITIVE_INFINITY, seated ? Verdict.MET : Verdict.NOT_MET,
            "our choice, because nothing is said of skin that the table does not show",
            seated ? "The whole footprint lies on the skin of the table of offsets." : otherwise);
    }

    /** Whether every check that can be made is met at a starboard place. */
    boolean serves(double x, double y) {
        if (!bed.measure(x, y)) {
            return false;
        }
        for (Demand demand : demands) {
            if (!(demand.utilisation(bed) <= 1)) {
                return false;
            }
        }
        return true;
    }
}
