package org.garboard.flow.planing;

import org.garboard.flow.layer.FrictionLine;
import org.garboard.units.Angle;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * How a prism runs under a load: at a trim that is told, or at the one that balances its moments.
 * The formulas are worked out over any trim on the way; {@link PlaningRange} judges what comes of it.
 */
public final class PrismBalance {
    /** Trims between which a balance is looked for [deg]. */
    private static final double LEAST = 0.3;
    private static final double MOST = 15;
    /** First bracket round a trim that is near [deg]. */
    private static final double NEAR = 0.05;
    private static final double CLOSE = 1e-13;
    private static final int TURNS = 200;

    private final Prism prism;
    private final Stream stream;
    private final Loading loading;
    private final double frictionDensity;
    private final double cv;
    private final double beta;
    private final double flatLift;

    private PrismBalance(Prism prism, Stream stream, Loading loading, double frictionDensity) {
        this.prism = prism;
        this.stream = stream;
        this.loading = loading;
        this.frictionDensity = frictionDensity;
        this.cv = prism.speedCoefficient(stream);
        this.beta = prism.deadrise().degrees();
        this.flatLift = Savitsky.flatLiftFor(loading.weight() / (stream.pressure() * prism.beam() * prism.beam()), beta);
    }

    public static PrismBalance of(Prism prism, Stream stream, Loading loading) {
        return new PrismBalance(prism, stream, loading, stream.density());
    }

    /** With another density in the friction than in the lift, as the paper's tables have it. */
    static PrismBalance withFrictionDensity(Prism prism, Stream stream, Loading loading, double density) {
        return new PrismBalance(prism, stream, loading, density);
    }

    /** The run at this trim, the load carried. */
    public PrismRun at(Angle trim) {
        double tau = trim.degrees();
        return run(trim, Savitsky.beamsFor(flatLift, tau, cv));
    }

    /** The run at this trim and mean wetted length, which were measured, carrying what the method lifts so. */
    public static PrismRun lifting(Prism prism, Stream stream, Angle trim, double beams) {
        return of(prism, stream, Loading.ofWeight(PrismRun.lift(prism, stream, trim, beams))).measured(trim, beams);
    }

    /** The run at this trim and mean wetted length, whatever it lifts. */
    PrismRun measured(Angle trim, double beams) {
        return run(trim, beams);
    }

    /** The trim at which (35) is nought; the nearer end of 0.3 to 15 degrees where it is nought nowhere between. */
    public Angle trim() {
        return trimIn(LEAST, moment(LEAST), MOST, moment(MOST));
    }

    /** The same, looked for first about a trim that is near. */
    public Angle trimNear(Angle near) {
        double low = Math.max(LEAST, near.degrees() - NEAR);
        double high = Math.min(MOST, near.degrees() + NEAR);
        double atLow = low < high ? moment(low) : Double.NaN;
        double atHigh = low < high ? moment(high) : Double.NaN;
        while (!(atLow < 0 && atHigh > 0)) {
            if (!(low < high) || low <= LEAST && high >= MOST) {
                return trim();
            }
            double width = high - low;
            if (atLow >= 0) {
                high = low;
                atHigh = atLow;
                low = Math.max(LEAST, low - 2 * width);
                atLow = moment(low);
                if (low == LEAST && atLow >= 0) {
                    return trim();
                }
            } else {
                low = high;
                atLow = atHigh;
                high = Math.min(MOST, high + 2 * width);
                atHigh = moment(high);
                if (high == MOST && !(atHigh > 0)) {
                    return trim();
                }
            }
        }
        return trimIn(low, atLow, high, atHigh);
    }

    private Angle trimIn(double low, double atLow, double high, double atHigh) {
        if (!(atLow < 0 && atHigh > 0)) {
            return Angle.ofDegrees(atLow >= 0 ? LEAST : MOST);
        }
        return Angle.ofDegrees(new BracketingNthOrderBrentSolver(CLOSE, 5).solve(TURNS, this::moment, low, high));
    }

    private double moment(double tau) {
        return at(Angle.ofDegrees(tau)).moment();
    }

    private PrismRun run(Angle trim, double beams) {
        double tau = trim.degrees();
        double b = prism.beam();
        double bottomSpeed = stream.speed() * Savitsky.velocity(tau, beams, beta);
        double reynolds = bottomSpeed * beams * b / stream.viscosity();
        // (19); where so little is wet that no friction line holds there is none to speak of
        double friction = reynolds >= FrictionLine.LEAST_REYNOLDS ? 0.5 * frictionDensity * bottomSpeed * bottomSpeed
            * beams * b * b * (FrictionLine.SCHOENHERR.mean(reynolds) + Savitsky.ROUGHNESS) / Savitsky.cos(beta) : 0;
        double drag = loading.weight() * Savitsky.tan(tau) + friction / Savitsky.cos(tau);
        double centre = Savitsky.pressureCentre(beams, cv) * beams * b;
        double moment = Savitsky.moment(loading, tau, friction, loading.vcg() - 0.25 * b * Savitsky.tan(beta), loading.lcg() - centre);
        return new PrismRun(prism, stream, trim, beams, bottomSpeed, friction, drag, centre, moment);
    }
}
