package org.garboard.cutout.flush;

import org.garboard.units.Angle;

/**
 * Which way an inclined element leans inside its upright housing: towards the keel, to make up for the deadrise.
 *
 * @param towards port or starboard, or nowhere where the element stands upright or sits on the centreline
 * @param left beam off the vertical athwartships at rest, put in as it should be; positive towards the keel
 * @param turnedRound the same with the housing turned round, away from the keel
 */
public record ElementLean(Towards towards, Angle left, Angle turnedRound) {

    /** A side of the boat. */
    public enum Towards { PORT, STARBOARD, NOWHERE }

    /** Of an element in a skin of that deadrise, at a distance y to starboard [m]. */
    static ElementLean of(Angle inclination, Angle deadrise, double y) {
        Towards side = inclination.radians() == 0 || y == 0 ? Towards.NOWHERE : y > 0 ? Towards.PORT : Towards.STARBOARD;
        return new ElementLean(side, Angle.ofRadians(inclination.radians() - deadrise.radians()),
            Angle.ofRadians(-inclination.radians() - deadrise.radians()));
    }
}
