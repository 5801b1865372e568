package org.garboard.flow.cavitation;

import org.hipparchus.special.elliptic.carlson.CarlsonEllipticIntegral;

/**
 * An ellipsoid in a uniform stream: semi-axes along x, y, z [m].
 *
 * @see "H. Lamb, Hydrodynamics, art. 114; H. Lamb, The inertia coefficients of an ellipsoid, ARC R&M 623, 1918"
 */
public record Ellipsoid(double a, double b, double c) {
    public Ellipsoid {
        if (!(a > 0 && b > 0 && c > 0 && a < 1e6 && b < 1e6 && c < 1e6)) {
            throw new IllegalArgumentException("semi-axes of an ellipsoid " + a + ", " + b + ", " + c + " m; each must be more than 0");
        }
    }

    /** Inertia coefficient along x: added mass over displaced mass, alpha0 / (2 - alpha0). */
    public double inertiaAlong() {
        return inertia(alpha(b, c, a));
    }

    /** Along y. */
    public double inertiaAcross() {
        return inertia(alpha(a, c, b));
    }

    /** Along z. */
    public double inertiaUp() {
        return inertia(alpha(a, b, c));
    }

    /** Lamb's alpha0, beta0, gamma0 sum to 2: (2/3) abc R_D, the own axis last. */
    double alpha(double one, double other, double own) {
        return 2.0 / 3 * a * b * c * CarlsonEllipticIntegral.rD(one * one, other * other, own * own);
    }

    private static double inertia(double alpha) {
        return alpha / (2 - alpha);
    }

    /**
     * Least pressure coefficient on the surface for a stream (u, v, w) of any direction:
     * 1 - sum (1 + k_i)^2 U_i^2 / U^2, exactly (surface velocity is the tangential part of (1 + k_i) U_i).
     */
    public double leastPressure(double u, double v, double w) {
        double along = (1 + inertiaAlong()) * u;
        double across = (1 + inertiaAcross()) * v;
        double up = (1 + inertiaUp()) * w;
        return 1 - (along * along + across * across + up * up) / (u * u + v * v + w * w);
    }
}
