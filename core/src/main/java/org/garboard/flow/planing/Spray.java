package org.garboard.flow.planing;

import org.garboard.units.Angle;

/**
 * The sheet of spray that runs out ahead of the stagnation line. Savitsky 1964, (6) and (7).
 *
 * @param edge angle between the keel and the spray's forward edge, in the plane of the bottom
 * @param area both sides, over the beam squared, as (7) has it. The triangle between line and edge in plan is
 *     smaller (its second term has 1/2 where (7) prints 1/4); the paper does not say what else it counts
 */
public record Spray(Angle edge, double area) {

    /** @param deadrise more than 0: a flat bottom throws its spray ahead */
    static Spray of(Angle trim, Angle deadrise) {
        double sinTau = Math.sin(trim.radians());
        double tanTau = Math.tan(trim.radians());
        double sin = Math.sin(deadrise.radians());
        double cos = Math.cos(deadrise.radians());
        double tan = Math.tan(deadrise.radians());
        double k = factor(deadrise);
        double a = Math.sqrt(sinTau * sinTau * (1 - 2 * k) + k * k * tanTau * tanTau * (1 / (sin * sin) - sinTau * sinTau))
            / (Math.cos(trim.radians()) + k * tanTau * sinTau);
        double k1 = k * tanTau / sin;
        double edge = Math.atan2(a + k1, 1 - a * k1);
        double area = 0.5 * (tan / (Math.PI * tanTau) - 1 / (4 * Math.tan(edge) * cos));
        return new Spray(Angle.ofRadians(edge), area);
    }

    /** K of (6). */
    static double factor(Angle deadrise) {
        double sin = Math.sin(deadrise.radians());
        double cos = Math.cos(deadrise.radians());
        double tan = Math.tan(deadrise.radians());
        return 0.5 * Math.PI * (1 - 3 * tan * tan * cos / (1.7 * Math.PI * Math.PI) - tan * sin * sin / (3.3 * Math.PI));
    }

    /** Angle between the keel and the spray's edge as seen in plan. */
    public Angle edgeInPlan(Angle deadrise) {
        return Angle.ofRadians(Math.atan2(Math.sin(edge.radians()) * Math.cos(deadrise.radians()), Math.cos(edge.radians())));
    }
}
