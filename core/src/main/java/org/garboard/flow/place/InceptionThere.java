package org.garboard.flow.place;

/** When a shape at a place begins to cavitate. */
public sealed interface InceptionThere permits InceptionThere.From, InceptionThere.NotKnown {

    /**
     * @param depth below the undisturbed water at this speed's trim [m]
     * @param speed of the boat from which water boils there [m/s]
     * @param share the boat's speed over that one: below 1 nothing boils
     * @param standing at this speed
     */
    record From(double depth, double speed, double share, Standing standing) implements InceptionThere {
    }

    /** No figure. @param reason in words */
    record NotKnown(String reason) implements InceptionThere {
    }
}
