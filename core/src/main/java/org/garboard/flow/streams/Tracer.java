package org.garboard.flow.streams;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;

/**
 * Follows water over a skin both ways from a place, to where the skin ends: Dormand and Prince's pair of order 5, its step
 * set by the error (J. Computational and Applied Mathematics 6, 1980; as the library Hipparchus has it). A higher order gains
 * nothing, as the interpolated motion is smooth in its first derivatives only; it took twice as long.
 */
final class Tracer {
    /** Error of a step in columns and rows. */
    private static final double WITHIN = 1e-7;
    /** No line is followed farther than so many lengths of the skin: our choice. */
    private static final double FARTHEST = 2;

    /** Of a line that goes round and round a place: far more than any that leaves the skin takes. */
    private static final int MOST_LOOKS = 20_000;

    private final SurfaceMotion skin;
    private final double longestStep;
    private final double farthest;

    Tracer(SurfaceMotion skin) {
        this.skin = skin;
        double[] one = new double[3];
        double[] other = new double[3];
        skin.position(0, 0.5 * skin.rows(), one);
        skin.position(skin.columns(), 0.5 * skin.rows(), other);
        double length = Math.sqrt(Math.pow(one[0] - other[0], 2) + Math.pow(one[1] - other[1], 2) + Math.pow(one[2] - other[2], 2));
        this.longestStep = length / skin.columns();
        this.farthest = FARTHEST * length;
    }

    /**
     * One way from a place.
     *
     * @param places (u, v), the one asked first
     * @param followed whether they come to where the skin ends
     */
    record Way(List<double[]> places, Streamline.Followed followed) {
    }

    /** With the stream. */
    Way down(double u, double v) {
        return trace(u, v, farthest);
    }

    /** Against the stream. */
    Way up(double u, double v) {
        return trace(u, v, -farthest);
    }

    private Way trace(double u, double v, double to) {
        List<double[]> places = new ArrayList<>();
        places.add(new double[] {u, v});
        if (atEnd(u, v, to > 0)) {
            return new Way(places, Streamline.Followed.TO_THE_END);
        }
        DormandPrince54Integrator integrator = new DormandPrince54Integrator(1e-9 * longestStep, longestStep, WITHIN, 0);
        integrator.addEventDetector(new Leaving());
        integrator.addStepHandler(step -> places.add(step.getCurrentState().getPrimaryState().clone()));
        integrator.setMaxEvaluations(MOST_LOOKS);
        try {
            integrator.integrate(new Motion(), new ODEState(0, new double[] {u, v}), to);
        } catch (MathRuntimeException withoutDirection) {
            // a stagnation point or the tip of a skin has no direction of flow: the line ends just before it
            return new Way(places, followed(places, to > 0));
        }
        return new Way(places, followed(places, to > 0));
    }

    /** Within a panel of the end that it makes for, the line has come there: our choice, as the motion is not known more finely. */
    private Streamline.Followed followed(List<double[]> places, boolean withStream) {
        double u = places.get(places.size() - 1)[0];
        boolean arrived = withStream ? u >= skin.columns() - 1 : u <= 1;
        return arrived ? Streamline.Followed.TO_THE_END : Streamline.Followed.LOST;
    }

    /** Whether the water there leaves the skin at once. */
    private boolean atEnd(double u, double v, boolean withStream) {
        double[] rate = new double[2];
        skin.rate(u, v, rate);
        double onward = withStream ? rate[0] : -rate[0];
        return u <= 0 && onward <= 0 || u >= skin.columns() && onward >= 0;
    }

    private final class Motion implements OrdinaryDifferentialEquation {
        @Override
        public int getDimension() {
            return 2;
        }

        @Override
        public double[] computeDerivatives(double s, double[] place) {
            double[] rate = new double[2];
            skin.rate(place[0], place[1], rate);
            return rate;
        }
    }

    /** Stops at the first and the last column's outer edge. */
    private final class Leaving implements ODEEventDetector {
        private final BracketedUnivariateSolver<UnivariateFunction> solver = new BracketingNthOrderBrentSolver(0, 1e-12, 0, 5);

        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return (state, forward) -> longestStep;
        }

        @Override
        public int getMaxIterationCount() {
            return 200;
        }

        @Override
        public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
            return solver;
        }

        @Override
        public ODEEventHandler getHandler() {
            return (state, detector, increasing) -> Action.STOP;
        }

        @Override
        public double g(ODEStateAndDerivative state) {
            double u = state.getPrimaryState()[0];
            return Math.min(u, skin.columns() - u) + 1e-9;
        }
    }
}
