package org.garboard.flow.planing;

/**
 * The formulas of Savitsky 1964, one method each. Trim tau and deadrise beta in degrees; lambda is the mean
 * wetted length in beams, cv the speed coefficient.
 */
final class Savitsky {
    static final double LEAST_CV = 1.0;
    static final double MOST_CV = 13;
    static final double LEAST_TRIM = 2;
    static final double MOST_TRIM = 15;
    static final double MOST_BEAMS = 4;
    /** ATTC standard roughness allowance, as the paper takes it. */
    static final double ROUGHNESS = 0.0004;

    private Savitsky() {
    }

    /** (15): lift coefficient of a flat bottom. */
    static double flatLift(double tau, double lambda, double cv) {
        return Math.pow(tau, 1.1) * (0.0120 * Math.sqrt(lambda) + 0.0055 * Math.pow(lambda, 2.5) / (cv * cv));
    }

    /** (16): lift coefficient with deadrise, from that of a flat bottom. */
    static double deadriseLift(double flat, double beta) {
        return flat - 0.0065 * beta * Math.pow(flat, 0.60);
    }

    /** (16) turned round, on its rising branch: convex there, so that Newton's steps come down from above. */
    static double flatLiftFor(double lift, double beta) {
        double flat = lift + 0.0065 * beta * Math.pow(lift, 0.60) + Math.pow(0.0065 * beta, 2.5);
        for (int turn = 0; turn < 100; turn++) {
            double step = (deadriseLift(flat, beta) - lift) / (1 - 0.0065 * 0.60 * beta * Math.pow(flat, -0.40));
            flat -= step;
            if (Math.abs(step) <= 1e-15 * flat) {
                break;
            }
        }
        return flat;
    }

    /** (15) turned round: convex in the root of lambda, so that Newton's steps come down from above. */
    static double beamsFor(double flat, double tau, double cv) {
        double need = flat / Math.pow(tau, 1.1);
        double wave = 0.0055 / (cv * cv);
        double root = Math.min(need / 0.0120, Math.pow(need / wave, 0.2));
        for (int turn = 0; turn < 100; turn++) {
            double fourth = wave * root * root * root * root;
            double step = (root * (0.0120 + fourth) - need) / (0.0120 + 5 * fourth);
            root -= step;
            if (Math.abs(step) <= 1e-15 * root) {
                break;
            }
        }
        return root * root;
    }

    /** (3): keel less chine wetted length, in beams. */
    static double keelLessChine(double tau, double beta) {
        return tan(beta) / (Math.PI * tan(tau));
    }

    /** (5) at L_C = 0: with fewer mean beams wetted the chines are dry, and the method does not hold. */
    static double driestBeams(double tau, double beta) {
        return 0.5 * keelLessChine(tau, beta);
    }

    /** Angle of the stagnation line to the keel in plan [deg]; follows from (3). */
    static double stagnationAngle(double tau, double beta) {
        return Math.toDegrees(Math.atan2(Math.PI * tan(tau), 2 * tan(beta)));
    }

    /** (22) to (24): mean velocity on the bottom over the boat's speed; NaN where the formula leaves nothing. */
    static double velocity(double tau, double lambda, double beta) {
        double flat = 0.0120 * Math.sqrt(lambda) * Math.pow(tau, 1.1);
        double lift = beta > 0 ? Math.max(0, deadriseLift(flat, beta)) : flat;
        return Math.sqrt(1 - lift / (lambda * cos(tau)));
    }

    /** (28): centre of pressure forward of the transom over the mean wetted length. */
    static double pressureCentre(double lambda, double cv) {
        return 0.75 - 1 / (5.21 * cv * cv / (lambda * lambda) + 2.39);
    }

    /**
     * (35): moment about the centre of gravity [N m], positive bow-down. It takes the thrust as W sin(tau) + D_f
     * (cos eps = 1) and leaves D_f sin(eps) out of the pressure's moment.
     *
     * @param a (31): arm of the friction below the centre of gravity [m]
     * @param c arm of the pressure aft of it [m]
     */
    static double moment(Loading loading, double tau, double friction, double a, double c) {
        double sin = sin(tau);
        double pressure = (1 - sin * Math.sin(Math.toRadians(tau) + loading.shaft().radians())) * c / cos(tau);
        return loading.weight() * (pressure - loading.thrustArm() * sin) + friction * (a - loading.thrustArm());
    }

    static double sin(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }

    static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }

    static double tan(double degrees) {
        return Math.tan(Math.toRadians(degrees));
    }
}
