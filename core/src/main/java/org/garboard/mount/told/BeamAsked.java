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
import org.garboard.mount.LimitName;
import org.garboard.mount.Surroundings;
import org.garboard.units.FixedDecimal;

/** The widest beam gets away from keel, strakes and fittings. */
public final class BeamAsked {
    /** How far a fitting may hang of which nobody tells it [m]: our choice, more than a rudder of a 60 ft boat. */
    private static final double MOST_HANGING = 1.5;

    private BeamAsked() {
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
        LaidBottom bottom = around.bottom().get();
        double half = width(widest.get()) / 2;
        BeamWay.Face face = new BeamWay.Face(installation.transducer().elementInclination().radians(),
            Math.min(installation.transducer().length(), installation.transducer().width()) / 2, half);
        BeamWay told = BeamWay.told(bottom, face);
        BeamWay untold = BeamWay.untold(bottom, face, MOST_HANGING);
        boolean keelUntold = bottom.hull().skinLine() != 0 && bottom.features().keel().isEmpty();
        return List.of(Demand.atMost("beam clear of keel and fittings, " + SoundAsked.kilohertz(widest.get()), installation.limits().of(LimitName.BEAM_BLOCKED),
            bed -> told.blocked(bed, below.applyAsDouble(bed), lean.applyAsDouble(bed), slope.applyAsDouble(bed)),
            "The beam gets away from keel, strakes and fittings.", "Something stands in the beam.")
            .leavingOut(bed -> keelUntold ? "How deep the keel hangs below the rabbet is not told: see whether it stands in the beam."
                : doubt(untold.by(bed, below.applyAsDouble(bed), lean.applyAsDouble(bed), slope.applyAsDouble(bed))))
            .telling(bed -> {
                String by = told.by(bed, below.applyAsDouble(bed), lean.applyAsDouble(bed), slope.applyAsDouble(bed));
                return by.isEmpty() ? "" : "In the beam of " + FixedDecimal.format(2 * Math.toDegrees(half), 0) + " deg stands: " + by + ".";
            }).byRays());
    }

    private static double width(SoundBeam beam) {
        return Math.max(beam.athwart().radians(), beam.foreAndAft().radians());
    }

    private static String doubt(String by) {
        return by.isEmpty() ? "" : "How far \"" + by + "\" hangs below the skin is not told, and it may stand in the beam.";
    }
}
