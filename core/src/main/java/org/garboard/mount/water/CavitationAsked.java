package org.garboard.mount.water;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.garboard.flow.cavitation.Suction;
import org.garboard.flow.water.Water;
import org.garboard.mount.Bed;
import org.garboard.mount.Demand;
import org.garboard.mount.Installation;
import org.garboard.mount.LimitName;
import org.garboard.mount.Surroundings;
import org.garboard.units.FixedDecimal;

/** How much faster than she runs the water at a face, a nose or an edge would have to run before it boils. */
public final class CavitationAsked {
    private static final double BEAD = Suction.RoundedEdge.BEAD.height();
    /** Edges across the flow are faired to this radius [m], as the bead is: our choice, the usual one outside. */
    private static final double FAIRED = Suction.RoundedEdge.BEAD.radius();

    private CavitationAsked() {
    }

    /** The bead round a face that lies flush: it sees the slow water next to the skin alone. */
    public static List<Demand> ofBead(Installation installation, Surroundings around) {
        double suction = suction(BEAD);
        return ofEdge(installation, around, "bead round the face", bed -> BEAD, bed -> suction);
    }

    /** The after edge of a recess that no ramp leads out of, as deep as it is [m]. */
    public static List<Demand> ofRecess(Installation installation, Surroundings around, ToDoubleFunction<Bed> step) {
        return ofEdge(installation, around, "after edge of the recess", bed -> Math.max(BEAD, step.applyAsDouble(bed)),
            bed -> suction(Math.max(BEAD, step.applyAsDouble(bed))));
    }

    /**
     * Where a ramp comes out to the skin, a knuckle faired to the usual radius R: round a corner that turns by a, potential flow runs as
     * the distance to the power -a/(pi + a) (wedge flow, in any textbook), so at R it is (L/R)^(a/(pi + a)) times the stream's, L being
     * the ramp's length.
     *
     * @param ratio of the ramp's length to its height
     * @param length of the ramp [m]
     */
    public static List<Demand> ofRamp(Installation installation, Surroundings around, double ratio, ToDoubleFunction<Bed> length) {
        double turn = Math.atan(1 / ratio);
        double power = 2 * turn / (Math.PI + turn);
        return ofEdge(installation, around, "after end of the ramp", bed -> FAIRED,
            bed -> Math.max(1e-3, Math.pow(Math.max(1, length.applyAsDouble(bed) / FAIRED), power) - 1));
    }

    private static double suction(double height) {
        return -((Suction.Coefficient) new Suction.RoundedEdge(height, FAIRED).answer()).least();
    }

    /** An edge across the flow, faired; the water at its height is that of the layer. */
    private static List<Demand> ofEdge(Installation installation, Surroundings around, String what, ToDoubleFunction<Bed> height,
                                       ToDoubleFunction<Bed> suction) {
        List<Demand> demands = new ArrayList<>();
        for (WaterAtSpeed water : FlowAsked.judged(installation, around)) {
            WaterAtSpeed.Reading reading = (end, bed) -> {
                double run = water.end(end).run(bed.x(), bed.y());
                double high = height.applyAsDouble(bed);
                double thick = water.thickness(end, bed.x(), bed.y());
                // the seventh-power profile, as org.garboard.flow.layer.SeventhPower has it
                double slowed = high >= thick ? 1 : Math.pow(high / thick, 1.0 / 7);
                return run <= 0 ? Double.POSITIVE_INFINITY : boils(water, end, bed, 0, suction.applyAsDouble(bed)) / (slowed * water.end(end).outer());
            };
            demands.add(demand(installation, water, what, reading));
        }
        return demands;
    }

    /**
     * A block as half an ellipsoid with its flat side on the skin; its water passes yawed by as much as a boat makes leeway.
     *
     * @param height of the face below the skin [m]
     */
    public static List<Demand> ofBlock(Installation installation, Surroundings around, ToDoubleFunction<Bed> height) {
        NoseSuction nose = new NoseSuction(installation.block().length(), installation.block().width());
        List<Demand> demands = new ArrayList<>();
        for (WaterAtSpeed water : FlowAsked.judged(installation, around)) {
            WaterAtSpeed.Reading reading = (end, bed) -> {
                double high = height.applyAsDouble(bed);
                double run = water.end(end).run(bed.x(), bed.y());
                return run <= 0 ? Double.POSITIVE_INFINITY : boils(water, end, bed, high, nose.at(high)) / water.end(end).outer();
            };
            demands.add(demand(installation, water, "nose and sides of the block", reading));
        }
        return demands;
    }

    /** Speed at which water at the place boils under such a suction [m/s]: Inception of org.garboard.flow.cavitation, written out for a search. */
    private static double boils(WaterAtSpeed water, int end, Bed bed, double below, double suction) {
        Water in = water.water();
        double depth = Math.max(0, water.end(end).depth(bed.x(), bed.highest()) + below);
        return Math.sqrt((Water.ATMOSPHERE + in.density() * Water.GRAVITY * depth - in.vapourPressure()) / (0.5 * in.density() * suction));
    }

    private static Demand demand(Installation installation, WaterAtSpeed water, String what, WaterAtSpeed.Reading reading) {
        return Demand.atLeast("cavitation at the " + what + ", " + water.words(), installation.limits().of(LimitName.CAVITATION_MARGIN), bed -> water.least(reading, bed),
            "The water does not boil there.", "The water boils there, or nearly.")
            .leavingOut(bed -> water.left(reading, bed))
            .telling(bed -> {
                double times = water.least(reading, bed);
                return times > 0 && times < Double.POSITIVE_INFINITY ? "It would begin at " + FixedDecimal.format(times * water.knots(), 0) + " kn, "
                    + water.governing(reading, bed, times).name() + "." : "";
            }).at(water.knots());
    }
}
