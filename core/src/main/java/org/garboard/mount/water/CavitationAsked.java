package org.garboard.mount.water;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.garboard.flow.cavitation.Suction;
import org.garboard.flow.water.Water;
import org.garboard.mount.Bed;
import org.garboard.mount.Demand;
import org.garboard.mount.Installation;
import org.garboard.mount.LimitName;
import org.garboard.mount.Surroundings;
import org.garboard.mount.pocket.Blend;
import org.garboard.units.FixedDecimal;

/**
 * How much faster than she runs the water at a face, a nose or an edge would have to run before it boils.
 *
 * <p>A fair form does not boil at the speeds of boats; what does is a blunt nose, a step, a proud edge. Bedding fills its gap to the
 * skin, so that the gap's width is no step: what can stand across the flow is the bead that is left of it, as high as the workmanship
 * that is asked for on the sheets lets it be, deep in the slow water next to the skin. A recess whose ramps run out to the skin has
 * no edge across the flow either, but water runs faster where a ramp begins to turn away from it, whether ahead or abaft.
 */
public final class CavitationAsked {
    private static final double BEAD = Suction.RoundedEdge.BEAD.height();
    /** Edges across the flow are faired to this radius [m], as the bead is: our choice, the usual one outside. */
    private static final double FAIRED = Suction.RoundedEdge.BEAD.radius();

    /**
     * Greatest of 1/pi times the integral of 30 t^2 (1 - t)^2 / (x - t) over t from 0 to 1: the slope of t^3 (10 - 15 t + 6 t^2). At
     * x = 0.19; a wall that waves sets pi/2 against it.
     */
    static final double FASTER = 1.277;

    private CavitationAsked() {
    }

    /** The bead round a face that lies flush: it sees the slow water next to the skin alone. */
    public static List<Demand> ofBead(Installation installation, Surroundings around) {
        double suction = suction(BEAD);
        return ofEdge(installation, around, "bead round the face", bed -> BEAD, bed -> suction, " The bedding is taken to be struck off and feathered, no more than "
            + FixedDecimal.format(1000 * BEAD, 1) + " mm proud.");
    }

    /** The after edge of a recess that no ramp leads out of, as deep as it is [m]. */
    public static List<Demand> ofRecess(Installation installation, Surroundings around, ToDoubleFunction<Bed> step) {
        return ofEdge(installation, around, "after edge of the recess", bed -> Math.max(BEAD, step.applyAsDouble(bed)),
            bed -> suction(Math.max(BEAD, step.applyAsDouble(bed))), "");
    }

    /**
     * Where a ramp comes out to the skin, cut as the smooth curve of {@link Blend}: by the theory of slender bodies water runs faster
     * there by 1/pi times the integral of the slope over the distance along (thin aerofoils, in any textbook), at most {@link #FASTER}
     * times the ramp's mean slope, as it does abaft so ahead. A ramp is long against the layer, and so the water outside it counts.
     *
     * @param ratio of the ramp's length to its height
     */
    public static List<Demand> ofRamp(Installation installation, Surroundings around, double ratio) {
        double suction = Math.pow(1 + FASTER / ratio, 2) - 1;
        return ofForm(installation, around, "ends of the ramps", bed -> 0, high -> suction, "");
    }

    private static double suction(double height) {
        return -new Suction.RoundedEdge(height, FAIRED).least();
    }

    /** An edge across the flow, faired; the water at its height is that of the layer. */
    private static List<Demand> ofEdge(Installation installation, Surroundings around, String what, ToDoubleFunction<Bed> height,
                                       ToDoubleFunction<Bed> suction, String taken) {
        List<Demand> demands = new ArrayList<>();
        for (WaterAtSpeed water : FlowAsked.judged(installation, around)) {
            WaterAtSpeed.Reading reading = (end, bed) -> {
                double run = water.end(end).run(bed.x(), bed.y());
                return run <= 0 ? Double.POSITIVE_INFINITY : boils(water, end, bed, 0, suction.applyAsDouble(bed))
                    / (water.slowed(end, bed.x(), bed.y(), height.applyAsDouble(bed)) * water.end(end).outer());
            };
            demands.add(demand(installation, water, what, reading, taken));
        }
        return demands;
    }

    /**
     * Nose and sides of a block, as {@link Suction.FairingNose#ofBlock} has them: its edges lie along the flow.
     *
     * @param height of its high side [m]
     */
    public static List<Demand> ofBlock(Installation installation, Surroundings around, ToDoubleFunction<Bed> height) {
        NoseSuction nose = new NoseSuction(installation.block().nose(), installation.block().width());
        return ofForm(installation, around, "nose and sides of the block", height, nose::at, " A slimmer or a lower block boils later.");
    }

    /** A form that is large against the layer: the water outside it counts. */
    private static List<Demand> ofForm(Installation installation, Surroundings around, String what, ToDoubleFunction<Bed> height,
                                       DoubleUnaryOperator suction, String taken) {
        List<Demand> demands = new ArrayList<>();
        for (WaterAtSpeed water : FlowAsked.judged(installation, around)) {
            WaterAtSpeed.Reading reading = (end, bed) -> {
                double high = height.applyAsDouble(bed);
                double run = water.end(end).run(bed.x(), bed.y());
                return run <= 0 ? Double.POSITIVE_INFINITY : boils(water, end, bed, high, suction.applyAsDouble(high)) / water.end(end).outer();
            };
            demands.add(demand(installation, water, what, reading, taken));
        }
        return demands;
    }

    /** Speed at which water at the place boils under such a suction [m/s]: Inception of org.garboard.flow.cavitation, written out for a search. */
    private static double boils(WaterAtSpeed water, int end, Bed bed, double below, double suction) {
        Water in = water.water();
        double depth = Math.max(0, water.end(end).depth(bed.x(), bed.highest()) + below);
        return Math.sqrt((Water.ATMOSPHERE + in.density() * Water.GRAVITY * depth - in.vapourPressure()) / (0.5 * in.density() * suction));
    }

    private static Demand demand(Installation installation, WaterAtSpeed water, String what, WaterAtSpeed.Reading reading, String taken) {
        return Demand.atLeast("cavitation at the " + what + ", " + water.words(), installation.limits().of(LimitName.CAVITATION_MARGIN), bed -> water.least(reading, bed),
            "The water does not boil there.", "The water boils there, or nearly.")
            .leavingOut(bed -> water.left(reading, bed))
            .telling(bed -> {
                double times = water.least(reading, bed);
                return times > 0 && times < Double.POSITIVE_INFINITY ? "It would begin at " + FixedDecimal.format(times * water.knots(), 0) + " kn, "
                    + water.governing(reading, bed, times).name() + "." + taken : "";
            }).at(water.knots());
    }
}
