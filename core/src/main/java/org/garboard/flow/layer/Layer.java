package org.garboard.flow.layer;

/**
 * The layer at one place.
 *
 * @param run of the water from where it begins [m]
 * @param speed of the outer flow [m/s]
 * @param thickness to the edge [m]
 * @param displacement thickness [m]
 * @param momentum thickness [m]
 * @param friction local coefficient: wall stress over 1/2 rho U^2
 * @param profile shape of the mean velocity
 */
public record Layer(double run, double speed, double thickness, double displacement, double momentum, double friction,
                    Profile profile) {

    /** How the mean velocity falls towards the wall. */
    public sealed interface Profile permits SeventhPower.Profile, WallWake.Profile, LaminarProfile {

        /** Mean velocity over the outer flow's at a height over the thickness; 1 from the edge outward. */
        double velocity(double height);

        /** Height over the thickness at which the mean velocity is such a part of the outer flow's, below 1. */
        double height(double velocity);
    }

    /** Mean velocity at a height above the skin [m/s]. */
    public double velocityAt(double height) {
        return speed * profile.velocity(height / thickness);
    }

    /** Height above the skin at which the mean velocity is such a part of the outer flow's, 0 to 1 [m]. */
    public double heightOf(double part) {
        if (!(part > 0 && part < 1)) {
            throw new IllegalArgumentException("part of the outer flow " + part + "; it must lie between 0 and 1");
        }
        return thickness * profile.height(part);
    }

    /** Where the mean velocity is 0.99 of the outer flow's [m]. */
    public double thickness99() {
        return heightOf(0.99);
    }

    /**
     * How far a face must stand proud of the skin to be clear of the layer [m]: the mean velocity there is 0.9 of
     * the outer flow's, and it clears the displacement thickness. Our choice: most of the slow water, and the
     * bubbles that ride in it, then pass below the face.
     */
    public double clearHeight() {
        return Math.max(heightOf(0.9), displacement);
    }
}
