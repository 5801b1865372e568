package org.garboard.mount.told;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.garboard.craft.SoundBeam;
import org.garboard.mount.Bed;
import org.garboard.mount.Demand;
import org.garboard.mount.Installation;
import org.garboard.mount.LaidBottom;
import org.garboard.mount.Limit;
import org.garboard.mount.LimitName;
import org.garboard.mount.Surroundings;
import org.garboard.units.FixedDecimal;

/**
 * The widest beam gets away from keel, strakes and fittings. Beside the keel an inclined element looks towards the keel; on the
 * centreline the body may be turned either way: both are judged, the better one counts, and it is said.
 */
public final class BeamAsked {
    /** How far a fitting may hang of which nobody tells it [m]: our choice, more than a rudder of a 60 ft boat. */
    private static final double MOST_HANGING = 1.5;
    /** Which side is outboard: that from which an inclined element looks away. */
    private static final int STARBOARD = 1;
    private static final int PORT = -1;

    private final Limit limit;
    private final BeamWay.Face face;
    private final BeamWay told;
    private final BeamWay untold;
    private final boolean keelUntold;
    private final ToDoubleFunction<Bed> below;
    private final ToDoubleFunction<Bed> lean;
    private final ToDoubleFunction<Bed> slope;

    private BeamAsked(Limit limit, LaidBottom bottom, BeamWay.Face face, ToDoubleFunction<Bed> below, ToDoubleFunction<Bed> lean,
                      ToDoubleFunction<Bed> slope) {
        this.limit = limit;
        this.face = face;
        this.told = BeamWay.told(bottom, face);
        this.untold = BeamWay.untold(bottom, face, MOST_HANGING);
        this.keelUntold = bottom.hull().skinLine() != 0 && bottom.features().keel().isEmpty();
        this.below = below;
        this.lean = lean;
        this.slope = slope;
    }

    /**
     * @param below how far the face hangs below the skin [m]
     * @param lean how far the body leans outboard by its seat, as for {@link SoundAsked#atRest}
     * @param slope how far it leans with the skin fore and aft
     */
    public static List<Demand> demands(Installation installation, Surroundings around, ToDoubleFunction<Bed> below, ToDoubleFunction<Bed> lean,
                                       ToDoubleFunction<Bed> slope) {
        Optional<SoundBeam> widest = installation.details().beams().stream().max(Comparator.comparingDouble(BeamAsked::width));
        if (widest.isEmpty() || around.bottom().isEmpty()) {
            return List.of();
        }
        Limit limit = installation.limits().of(LimitName.BEAM_BLOCKED);
        BeamWay.Face face = new BeamWay.Face(installation.transducer().elementInclination().radians(),
            Math.min(installation.transducer().length(), installation.transducer().width()) / 2, width(widest.get()) / 2);
        BeamAsked beam = new BeamAsked(limit, around.bottom().get(), face, below, lean, slope);
        return List.of(Demand.atMost("beam clear of keel and fittings, " + SoundAsked.kilohertz(widest.get()), limit,
            bed -> beam.blocked(bed, beam.outboard(bed)),
            "The beam gets away from keel, strakes and fittings.", "Something stands in the beam.")
            .leavingOut(bed -> beam.doubt(bed, beam.outboard(bed))).telling(beam::standing).byRays());
    }

    private static double width(SoundBeam beam) {
        return Math.max(beam.athwart().radians(), beam.foreAndAft().radians());
    }

    /** On the centreline the side with which the beam serves; of two that do, or do not, the one that less stands in. */
    private int outboard(Bed bed) {
        if (!turns(bed)) {
            return bed.y() < 0 ? PORT : STARBOARD;
        }
        double one = blocked(bed, STARBOARD);
        double other = blocked(bed, PORT);
        boolean serves = one <= limit.value() && doubt(bed, STARBOARD).isEmpty();
        boolean otherServes = other <= limit.value() && doubt(bed, PORT).isEmpty();
        boolean turned = serves == otherServes ? other < one : otherServes;
        return turned ? PORT : STARBOARD;
    }

    /** Whether the body may look to either side. */
    private boolean turns(Bed bed) {
        return bed.y() == 0 && face.inclination() != 0;
    }

    private double blocked(Bed bed, int outboard) {
        return told.blocked(bed, outboard, below.applyAsDouble(bed), lean.applyAsDouble(bed), slope.applyAsDouble(bed));
    }

    private String by(BeamWay way, Bed bed, int outboard) {
        return way.by(bed, outboard, below.applyAsDouble(bed), lean.applyAsDouble(bed), slope.applyAsDouble(bed));
    }

    private String doubt(Bed bed, int outboard) {
        if (keelUntold) {
            return "How deep the keel hangs below the rabbet is not told: see whether it stands in the beam.";
        }
        String by = by(untold, bed, outboard);
        return by.isEmpty() ? "" : "How far \"" + by + "\" hangs below the skin is not told, and it may stand in the beam.";
    }

    /** What stands in it, and which way the element is to look where it may look either way. */
    private String standing(Bed bed) {
        int outboard = outboard(bed);
        String by = by(told, bed, outboard);
        String standing = by.isEmpty() ? "" : "In the beam of " + FixedDecimal.format(2 * Math.toDegrees(face.half()), 0) + " deg stands: " + by + ".";
        return turns(bed) ? (standing + " " + turned(bed, outboard)).strip() : standing;
    }

    private String turned(Bed bed, int outboard) {
        String other = by(told, bed, -outboard);
        String otherDoubt = doubt(bed, -outboard);
        boolean alike = blocked(bed, outboard) == blocked(bed, -outboard) && doubt(bed, outboard).isEmpty() == otherDoubt.isEmpty();
        if (alike && other.isEmpty()) {
            return otherDoubt.isEmpty() ? "Its element may look to either side." : "Turned round, it is in doubt too.";
        }
        if (alike) {
            return "Turned round, there stands: " + other + ".";
        }
        return "Its element is to look to " + (outboard == STARBOARD ? "port" : "starboard") + ". Turned round, "
            + (other.isEmpty() ? "it is in doubt: " + otherDoubt : "there stands in the beam: " + other + ".");
    }
}
