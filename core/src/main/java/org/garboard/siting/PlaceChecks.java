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
import org.garboard.mount.Verdict;
import org.garboard.units.FixedDecimal;

/** Every check of one mount at single places, on the true surface. Port mirrors starboard. */
final class PlaceChecks {
    private static final String OFF_SKIN =
        "The footprint or its ramps leave the skin of the table of offsets here; nothing can be measured.";
    private static final String OFF_KEEL = "The pocket's middle lies as far aside as the job tells: ask at y = ";
    /** Rounding [m]. */
    private static final double SAME = 1e-9;

    private final Hull hull;
    private final Mount mount;
    private static final String OFF_TRANSOM =
        "This mount hangs on the lower edge of the transom: ask at x = ";
    /** A place asked about is taken to be on the transom's edge within this [m]: our choice, a finger's breadth. */
    private static final double ON_TRANSOM = 0.02;

    private final double aside;
    private final Asked asked;
    private final MeasuredBed bed;
    private final PlaceJudge judge;
    private final Ground ground;

    PlaceChecks(Hull hull, Ground ground, SitingTask task, Mount mount) {
        this(hull, ground, task, mount, Asked.of(hull, task, mount));
    }

    /** Where what is asked has been made already: its tables are dear. */
    PlaceChecks(Hull hull, Ground ground, SitingTask task, Mount mount, Asked asked) {
        this.hull = hull;
        this.mount = mount;
        this.ground = ground;
        this.asked = asked;
        this.aside = task.installation().pocket().aside();
        this.bed = Beds.fine(ground, mount, task.installation());
        this.judge = new PlaceJudge(bed, asked);
    }

    /** x of the transom's lower edge. */
    double transom() {
        return TransomBed.edge(ground.lines());
    }

    /** y to starboard of a place that is looked at as if to starboard [m]. */
    double signed(double y) {
        return ground.signed(y);
    }

    /** y to starboard of a pocket's middle, as the job tells [m]. */
    double aside() {
        return aside;
    }

    /** The place with every check. */
    Site at(double x, double y) {
        String astray = astray(x, y);
        boolean measured = astray.isEmpty() && bed.measure(x, Math.abs(y));
        List<Check> checks = new ArrayList<>();
        checks.add(seatCheck(measured, astray.isEmpty() ? OFF_SKIN : astray));
        for (int i = 0; i < asked.count(); i++) {
            Demand demand = asked.demand(i);
            checks.add(measured ? named(demand.check(bed), demand) : demand.unmeasured("Not measured: the footprint finds no seat here."));
        }
        checks.addAll(asked.settled());
        return new Site(mount, x, y, hull.height(x, y), hull.girth(x, y),
            measured ? bed.deadrise() : Double.NaN, measured ? bed.slope() : Double.NaN, checks, Optional.empty());
    }

    /** Why a place is none for the seat; empty where it is one. */
    private String astray(double x, double y) {
        double edge = TransomBed.edge(ground.lines());
        return switch (mount.seat()) {
            case BESIDE_KEEL -> "";
            case ATHWART_KEEL -> Math.abs(y - aside) < SAME ? "" : OFF_KEEL + FixedDecimal.format(aside, 3) + " m.";
            case BEHIND_TRANSOM -> Math.abs(x - edge) <= ON_TRANSOM ? "" : OFF_TRANSOM + FixedDecimal.format(edge, 3) + " m.";
        };
    }

    /** Which strake or fitting is the nearest. */
    private Check named(Check check, Demand demand) {
        Optional<LaidFeature> nearest = FeatureChecks.isRoom(demand) ? bed.nearestFeature() : Optional.empty();
        return nearest.map(feature -> check.saying(check.sentence() + " Nearest: " + feature.kind() + " \"" + feature.name()
            + "\", " + feature.sides().words() + ".")).orElse(check);
    }

    private static Check seatCheck(boolean seated, String otherwise) {
        return new Check("seat on the skin", Check.Sense.YES_NO, Double.NaN, Double.NaN, "",
            seated ? 0 : Double.POSITIVE_INFINITY, seated ? Verdict.MET : Verdict.NOT_MET,
            "our choice, because nothing is said of skin that the table does not show",
            seated ? "The whole footprint lies on the skin of the table of offsets." : otherwise);
    }

    /** Whether every check that can be made is met at a place. */
    boolean serves(double x, double y) {
        return judge.serves(x, Math.abs(y));
    }
}
