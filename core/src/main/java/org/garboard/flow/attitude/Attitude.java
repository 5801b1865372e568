package org.garboard.flow.attitude;

import java.util.List;
import java.util.Optional;
import org.garboard.flow.planing.PrismRun;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.flow.steps.SteppedBottom;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.units.Angle;

/** How a hull lies to the water at a speed; where no method holds, which limit was met, and no number. */
public sealed interface Attitude permits Attitude.Wetted, Attitude.Floats, Attitude.Stepped, Attitude.NotKnown {

    /** [m/s] */
    double speed();

    Regime regime();

    /** The water that she has not yet disturbed, as it lies to her; empty where that is not known. */
    Optional<WaterSurface> level();

    /** Trim of the base line, positive bow-up; empty where it is not known. */
    Optional<Angle> knownTrim();

    /** The foremost bottom that carries her, with its stagnation line; empty where she does not plane, or that is not known. */
    default Optional<Wetted> carrying() {
        return Optional.empty();
    }

    /** A planing bottom on which the stagnation line is laid. Lengths count from the after end of it, along the base line. */
    sealed interface Wetted extends Attitude permits Planes, ChinesDry {

        /** Of the base line, positive bow-up. */
        Angle trim();

        Basis basis();

        /** x from which lengths count forward [m]. */
        double end();

        /** Undisturbed. */
        WaterSurface water();

        /** Where the water meets her own bottom. */
        StagnationLine line();

        /** Wetted by spray alone, ahead of the line to starboard; empty where it is thrown ahead. */
        Optional<PlanRegion> spray();

        /** Of the line to the keel, of the prism that stands for her. */
        Angle stagnationAngle();

        /** Of the water along the bottom [m/s]. */
        double bottomSpeed();

        double speedCoefficient();

        List<String> doubts();

        @Override
        default Optional<Wetted> carrying() {
            return Optional.of(this);
        }

        /** What is in solid water, to starboard. */
        default PlanRegion solid(Hull hull) {
            return WetAhead.of(hull, line(), end());
        }

        /** Of the true bottom [m]. */
        default double wettedKeel() {
            return end() - line().atKeel();
        }

        @Override
        default Regime regime() {
            return Regime.PLANING;
        }

        @Override
        default Optional<Angle> knownTrim() {
            return Optional.of(trim());
        }

        @Override
        default Optional<WaterSurface> level() {
            return Optional.of(water());
        }
    }

    /**
     * She planes. Lengths count from the after end of the bottom, or of the part of it that carries her, along the base line.
     *
     * @param speed [m/s]
     * @param basis where the trim comes from
     * @param trim of the base line, positive bow-up
     * @param end x from which lengths count forward [m]
     * @param water undisturbed
     * @param line where the water meets her own bottom
     * @param run the prism that stands for her
     * @param spray wetted by spray alone, ahead of the line to starboard; empty where it is thrown ahead
     * @param doubts what is to be said of it, porpoising among it
     */
    record Planes(double speed, Basis basis, Angle trim, double end, WaterSurface water, StagnationLine line, PrismRun run,
                  Optional<PlanRegion> spray, List<String> doubts) implements Wetted {
        public Planes {
            doubts = List.copyOf(doubts);
        }

        @Override
        public Angle stagnationAngle() {
            return run.stagnationAngle();
        }

        /** The mean that the method gives. */
        @Override
        public double bottomSpeed() {
            return run.bottomSpeed();
        }

        @Override
        public double speedCoefficient() {
            return run.speedCoefficient();
        }

        /** Of the true bottom [m]. */
        public double wettedChine() {
            return end - line.atChine();
        }

        /** Mean wetted length of the true bottom over the mean beam. */
        public double beams() {
            return 0.5 * (wettedKeel() + wettedChine()) / run.prism().beam();
        }

        /** Of the bare bottom [N]. */
        public double drag() {
            return run.drag();
        }
    }

    /**
     * She planes inside dry chines, at a trim and a wetted keel that were measured: the line is known, lift and drag are not.
     *
     * @param stagnationAngle of the line to the keel, of the prism of her mean beam and deadrise
     * @param speedCoefficient on that beam
     */
    record ChinesDry(double speed, Basis basis, Angle trim, double end, WaterSurface water, StagnationLine line, Angle stagnationAngle,
                     double speedCoefficient, Optional<PlanRegion> spray, List<String> doubts) implements Wetted {
        public ChinesDry {
            doubts = List.copyOf(doubts);
        }

        /** The boat's: by how little the water is slower along the bottom is not known. */
        @Override
        public double bottomSpeed() {
            return speed;
        }
    }

    /**
     * She floats as at rest.
     *
     * @param speed [m/s]
     * @param basis where the trim comes from
     * @param afloat how she lies
     * @param draught from the water down to the lowest place of the keel line, square to the water [m]
     * @param froude speed over the root of gravity times wet length
     * @param doubts what is to be said of it
     */
    record Floats(double speed, Basis basis, Flotation.Afloat afloat, double draught, double froude, List<String> doubts) implements Attitude {
        public Floats {
            doubts = List.copyOf(doubts);
        }

        public Angle trim() {
            return afloat.trim();
        }

        @Override
        public Regime regime() {
            return Regime.DISPLACEMENT;
        }

        @Override
        public Optional<Angle> knownTrim() {
            return Optional.of(trim());
        }

        @Override
        public Optional<WaterSurface> level() {
            return Optional.of(afloat.hull().water());
        }
    }

    /**
     * She runs on a bottom with steps, at a trim that was measured.
     *
     * @param speed [m/s]
     * @param basis which was measured
     * @param trim of the base line
     * @param forward the planing surface ahead of the first step; empty where only the trim was measured, or where the method does not hold there
     * @param bottom what is dry behind each step, and what remains
     * @param doubts what is to be said of it
     */
    record Stepped(double speed, Basis basis, Angle trim, Optional<Wetted> forward, SteppedBottom bottom, List<String> doubts) implements Attitude {
        public Stepped {
            doubts = List.copyOf(doubts);
        }

        @Override
        public Regime regime() {
            return Regime.STEPPED;
        }

        @Override
        public Optional<Wetted> carrying() {
            return forward;
        }

        @Override
        public Optional<Angle> knownTrim() {
            return Optional.of(trim);
        }

        @Override
        public Optional<WaterSurface> level() {
            return forward.map(Wetted::water);
        }
    }

    /**
     * How the water lies to her is not known.
     *
     * @param speed [m/s]
     * @param regime in which she is taken to be
     * @param knownTrim that was measured, if one was
     * @param reason which limit was met, in words
     */
    record NotKnown(double speed, Regime regime, Optional<Angle> knownTrim, String reason) implements Attitude {
        public NotKnown(double speed, Regime regime, String reason) {
            this(speed, regime, Optional.empty(), reason);
        }

        @Override
        public Optional<WaterSurface> level() {
            return Optional.empty();
        }
    }
}
