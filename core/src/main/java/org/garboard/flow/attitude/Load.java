package org.garboard.flow.attitude;

import java.util.Locale;
import java.util.Optional;
import org.garboard.flow.planing.Loading;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.units.Angle;

/**
 * What acts on the boat beside the water, in the hull frame.
 *
 * @param mass [kg]
 * @param x of the centre of gravity [m]
 * @param z of the centre of gravity, above base [m]
 * @param thrustHeight where the line of thrust crosses the plane of the transom, above the keel's after end, negative below [m]
 * @param shaft angle of that line to the base line, positive where it rises forward
 */
public record Load(double mass, double x, double z, double thrustHeight, Angle shaft) {
    private static final int LOOKS = 100;

    public Load {
        if (!(mass > 0) || !Double.isFinite(mass + x + z + thrustHeight + shaft.radians())) {
            throw new IllegalArgumentException("mass " + mass + " kg, centre of gravity at x = " + x + " m, " + z
                + " m above base, thrust " + thrustHeight + " m above the keel's end; the mass must be more than 0, all of them finite");
        }
    }

    /** The same with another mass [kg]. */
    public Load withMass(double other) {
        return new Load(other, x, z, thrustHeight, shaft);
    }

    /** Weight [N]. */
    public double weight() {
        return mass * Water.GRAVITY;
    }

    /** Why the centre of gravity cannot be this boat's: it must lie between her ends, her lowest keel and her highest sheer. */
    public Optional<String> outside(Hull hull) {
        if (!(x >= hull.forwardEnd() && x <= hull.afterEnd())) {
            return Optional.of(String.format(Locale.ROOT, "centre of gravity at x = %.3f m is outside the boat; it must be from %.3f to %.3f m",
                x, hull.forwardEnd(), hull.afterEnd()));
        }
        HullLine sheer = hull.lines().get(hull.lines().size() - 1);
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= LOOKS; i++) {
            double at = hull.forwardEnd() + (hull.foot() - hull.forwardEnd()) * i / LOOKS;
            lowest = Math.min(lowest, hull.keel().z(Math.max(at, hull.keel().forwardEnd())));
            highest = Math.max(highest, sheer.z(at));
        }
        return z >= lowest && z <= highest ? Optional.empty() : Optional.of(String.format(Locale.ROOT,
            "centre of gravity %.3f m above base is outside the boat; it must be from %.3f m (keel) to %.3f m (sheer)", z, lowest, highest));
    }

    /**
     * Turned to a chord of the keel, as the planing method counts.
     *
     * @param end x of the after end of the bottom, from where it counts [m]
     * @param keel height of the keel there [m]
     * @param rise of the chord, positive where it rises forward
     */
    Loading alongKeel(Hull hull, double end, double keel, Angle rise) {
        double cos = Math.cos(rise.radians());
        double sin = Math.sin(rise.radians());
        double forward = end - x;
        double up = z - keel;
        double line = hull.keel().z(hull.foot()) + thrustHeight;
        double arm = (z - line) * Math.cos(shaft.radians()) - (hull.foot() - x) * Math.sin(shaft.radians());
        return new Loading(weight(), forward * cos + up * sin, up * cos - forward * sin, arm,
            Angle.ofRadians(shaft.radians() - rise.radians()));
    }
}
