package org.garboard.cutout.template;

import org.garboard.cutout.skin.Skin;

/**
 * Straightest lines along the skin, z = f(x, y), parameterised by length: x'' = -f_x q / (1 + f_x^2 + f_y^2), and
 * so for y, q = f_xx x'^2 + 2 f_xy x' y' + f_yy y'^2 (do Carmo, <i>Differential Geometry of Curves and
 * Surfaces</i>, 4-4, geodesic equations written for a graph; from memory). Runge-Kutta, fourth order.
 */
final class Geodesic {
    /** Longest step in plan [m]: on a skin round to half a metre a line of 0.3 m then errs by a nanometre. */
    private static final double LONGEST = 0.012;
    private static final int FEWEST = 4;
    /** Over which the slope's change is taken [m]. */
    private static final double NEAR = 1e-5;

    private final Skin skin;
    private final double[] face = new double[Skin.SIZE];
    private final double[] state = new double[4];
    private final double[] rate = new double[4];
    private final double[] sum = new double[4];
    private final double[] trial = new double[4];

    Geodesic(Skin skin) {
        this.skin = skin;
    }

    /**
     * Follows the line that starts at a place with a velocity in plan for one unit of time.
     *
     * @return false where it leaves the skin
     */
    boolean shoot(double x, double y, double vx, double vy) {
        state[0] = x;
        state[1] = y;
        state[2] = vx;
        state[3] = vy;
        int steps = (int) Math.max(FEWEST, Math.ceil(Math.hypot(vx, vy) / LONGEST));
        double step = 1.0 / steps;
        for (int i = 0; i < steps; i++) {
            System.arraycopy(state, 0, sum, 0, 4);
            System.arraycopy(state, 0, trial, 0, 4);
            if (!stage(step / 6, step / 2) || !stage(step / 3, step / 2) || !stage(step / 3, step) || !stage(step / 6, 0)) {
                return false;
            }
            System.arraycopy(sum, 0, state, 0, 4);
        }
        return true;
    }

    private boolean stage(double weight, double ahead) {
        if (!slopeOf(trial)) {
            return false;
        }
        for (int k = 0; k < 4; k++) {
            sum[k] += weight * rate[k];
            trial[k] = state[k] + ahead * rate[k];
        }
        return true;
    }

    private boolean slopeOf(double[] at) {
        double speed = Math.hypot(at[2], at[3]);
        rate[0] = at[2];
        rate[1] = at[3];
        rate[2] = 0;
        rate[3] = 0;
        if (speed == 0) {
            return true;
        }
        double ux = at[2] / speed;
        double uy = at[3] / speed;
        if (!skin.at(at[0] + NEAR * ux, at[1] + NEAR * uy, face)) {
            return false;
        }
        double ahead = face[1] * ux + face[2] * uy;
        if (!skin.at(at[0] - NEAR * ux, at[1] - NEAR * uy, face)) {
            return false;
        }
        double behind = face[1] * ux + face[2] * uy;
        if (!skin.at(at[0], at[1], face)) {
            return false;
        }
        double pull = (ahead - behind) / (2 * NEAR) * speed * speed / (1 + face[1] * face[1] + face[2] * face[2]);
        rate[2] = -face[1] * pull;
        rate[3] = -face[2] * pull;
        return true;
    }

    double x() {
        return state[0];
    }

    double y() {
        return state[1];
    }
}
