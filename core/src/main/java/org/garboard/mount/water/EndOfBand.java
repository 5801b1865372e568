package org.garboard.mount.water;

import java.util.Optional;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.attitude.StagnationLine;
import org.garboard.hull.Hull;

/** The water along the bottom at one end of the band of load and trim, or at its middle, as a search of many places reads it. */
sealed interface EndOfBand permits PlaningEnd, FloatingEnd, SteppedEnd {

    /** Of an attitude that is known. */
    static EndOfBand of(Hull hull, String name, Attitude attitude) {
        if (attitude instanceof Attitude.Wetted planes) {
            return new PlaningEnd(name, planes);
        }
        return attitude instanceof Attitude.Floats floats ? new FloatingEnd(name, floats) : new SteppedEnd(hull, name, (Attitude.Stepped) attitude);
    }

    /** "light, bow down". */
    String name();

    /** Of the base line, positive bow-up [rad]. */
    double trim();

    /** Speed of the water outside the layer [m/s]. */
    double outer();

    /**
     * How far the water has run along the bottom to a place [m], port is negative y: 0 and less where it is dry or in spray, by as
     * much as it lies ahead of solid water; NaN where that is not known.
     */
    double run(double x, double y);

    /** Where the water meets the bottom to starboard, from the keel out; empty where it does so along the whole of it, or that is not known. */
    Optional<StagnationLine> line();

    /** How deep a place lies below the water that the boat has not disturbed, negative above it [m]; NaN where that is not known. */
    double depth(double x, double z);

    /** Whether she floats as at rest. */
    boolean floats();

    /** Why the run is not known at some place, or what is dry there; empty where nothing is to be said. */
    String reason(double x, double y);
}
