package org.garboard.flow.layer;

import org.garboard.geometry.GaussRule;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The full law: wall and wake (D. Coles, J. Fluid Mech. 1, 1956), carried along by the momentum equation
 * of a flat plate.
 *
 * <p>With S = U/u_tau = sqrt(2/c_f): S = ln(delta U/(nu S))/k + B - r + 2 Pi/k, theta/delta = (1+Pi)/(k S)
 * - (2 + 3.179 Pi + 1.5 Pi^2)/(k S)^2, and dRe_x = S^2 dRe_theta. Constants k = 0.41, B = 5.0, Pi = 0.45
 * as in White, <i>Viscous Fluid Flow</i>, ch. 6, from memory. Its momentum thickness is 1.5 to 4 % above
 * Schoenherr's friction line from 1e7 to 5e8.
 *
 * <p>Roughness moves the wall law down by r = ln(1 + 0.3 k_s u_tau/nu)/k (C. F. Colebrook's curve for paint
 * and the like, in N. Grigson's form; from memory).
 */
public final class WallWake {
    static final double K = 0.41;
    static final double B = 5.0;
    static final double PI = 0.45;
    /** dstar/delta = FULL/S. */
    private static final double FULL = (1 + PI) / K;
    /** theta/delta = FULL/S - LOSS/S^2. */
    private static final double LOSS = (2 + 3.179 * PI + 1.5 * PI * PI) / (K * K);
    /** Where theta is nothing: the layer's beginning. */
    private static final double START = LOSS / FULL;
    private static final double MOST = 80;
    private static final double PIECE = 4;
    private static final GaussRule RULE = GaussRule.of(16);
    private static final int TURNS = 200;

    /** k_s U / nu: 0 for a smooth skin. */
    private final double rough;
    /** Re_x less the integral, fixed by where the layer became turbulent. */
    private final double lead;

    private WallWake(double rough, double lead) {
        this.rough = rough;
        this.lead = lead;
    }

    /** Turbulent from the very beginning. */
    static WallWake turbulent(double roughReynolds) {
        return new WallWake(roughReynolds, 0);
    }

    /** Laminar (Blasius) up to a Reynolds number of the run, then turbulent with the same momentum thickness. */
    static WallWake after(double transition, double roughReynolds) {
        double theta = Laminar.MOMENTUM * Math.sqrt(transition);
        double s = solve(each -> new WallWake(roughReynolds, 0).momentum(each) - theta);
        return new WallWake(roughReynolds, transition - new WallWake(roughReynolds, 0).run(s));
    }

    /** Shape of the mean velocity: log law and wake, S at the edge. */
    public record Profile(double s, double edge, double shift) implements Layer.Profile {
        @Override
        public double velocity(double height) {
            if (height >= 1) {
                return 1;
            }
            double sine = Math.sin(0.5 * Math.PI * height);
            double law = Math.log(Math.max(edge * height, Double.MIN_NORMAL)) / K + B - shift + 2 * PI / K * sine * sine;
            // within the sublayer u+ = y+, which the log law does not know; their smaller size serves
            double wall = Math.max(0, Math.min(edge * height, law));
            return Math.min(1, wall / s);
        }

        @Override
        public double height(double velocity) {
            return velocity <= 0 ? 0 : new BracketingNthOrderBrentSolver(1e-13, 5)
                .solve(TURNS, height -> velocity(height) - velocity, 0, 1);
        }
    }

    /** S after a run of this Reynolds number. */
    double s(double reynolds) {
        return solve(s -> lead + run(s) - reynolds);
    }

    private static double solve(org.hipparchus.analysis.UnivariateFunction miss) {
        return new BracketingNthOrderBrentSolver(1e-12, 5).solve(TURNS, miss, START, MOST);
    }

    /** The layer after a run [m] at a speed [m/s], its Reynolds number beside. */
    Layer layer(double run, double speed, double reynolds) {
        double s = s(reynolds);
        double delta = thickness(s) * run / reynolds;
        return new Layer(run, speed, delta, delta * FULL / s, delta * (FULL / s - LOSS / (s * s)), 2 / (s * s),
            new Profile(s, thickness(s) / s, shift(s)));
    }

    private double shift(double s) {
        return Math.log1p(0.3 * rough / s) / K;
    }

    /** Re of the thickness. */
    private double thickness(double s) {
        return s * Math.exp(K * (s - B) - 2 * PI) * (1 + 0.3 * rough / s);
    }

    /** Re of the momentum thickness. */
    double momentum(double s) {
        return thickness(s) * (FULL / s - LOSS / (s * s));
    }

    /** Re of the run: the integral of S^2 dRe_theta, by parts so that nothing is differentiated. */
    double run(double s) {
        double sum = 0;
        double from = START;
        while (from < s) {
            double to = Math.min(s, from + PIECE);
            for (int i = 0; i < RULE.size(); i++) {
                double each = from + (to - from) * RULE.at(i);
                sum += (to - from) * RULE.weight(i) * 2 * each * momentum(each);
            }
            from = to;
        }
        return s * s * momentum(s) - sum;
    }
}
