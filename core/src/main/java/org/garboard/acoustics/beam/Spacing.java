package org.garboard.acoustics.beam;

import org.garboard.units.Angle;

/**
 * Two transducers beside one another: how far apart their edges must be so that the one that hangs lower stays
 * out of the other's beam.
 *
 * @param edge of the face's beam at the depth to which the other hangs, beyond the face's edge [m]
 * @param nearField how far the upper one's near field reaches [m]
 * @param drop how much lower the other hangs [m], 0 where they are level
 */
public record Spacing(double edge, double nearField, double drop) {
    /**
     * Least distance between the edges of two bodies side by side [m]: our choice, because two holes with their
     * backing blocks nearer than that weaken the skin and leave no room for a wrench. No source is known.
     */
    public static final double LEAST_BETWEEN_BODIES = 0.3;

    /**
     * @param upper the element whose face stands higher
     * @param halfAngle of the beam to keep clear: the first null, so that the whole main lobe is free
     * @param lean of the beam towards the other, negative away from it
     * @param drop how much lower the other hangs [m]; 0 or more
     */
    public static Spacing between(Element upper, Angle halfAngle, Angle lean, double drop) {
        double side = halfAngle.radians() + lean.radians();
        if (!(drop >= 0 && halfAngle.radians() > 0 && Math.abs(side) < Math.PI / 2)) {
            throw new IllegalArgumentException("a beam of half angle " + halfAngle.degrees() + " deg that leans by " + lean.degrees()
                + " deg, and a body " + drop + " m lower; the drop must be 0 or more and the beam stay below the level");
        }
        // inside the near field the beam does not narrow below the face itself
        return new Spacing(Math.max(0, drop * Math.tan(side)), upper.nearField(), drop);
    }

    /** Whether the lower body comes down beside the upper one's near field, where even its edge disturbs the beam most. */
    public boolean besideNearField() {
        return drop > 0 && drop < nearField;
    }

    /** Distance that must be between the edges of the bodies [m]. */
    public double least() {
        return Math.max(edge, LEAST_BETWEEN_BODIES);
    }
}
