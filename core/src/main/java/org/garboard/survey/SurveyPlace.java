package org.garboard.survey;

import java.util.Optional;

/**
 * A place as a surveyor tells it.
 *
 * @param along how far along the boat; none of a region that is meant as a whole
 * @param out how far out, or which region
 * @param side on which side; none on the centreline, or where the region has no sides
 */
public record SurveyPlace(Optional<Along> along, Out out, Optional<Side> side) {

    /** On which side. */
    public enum Side { PORT, STARBOARD, BOTH }

    /** How far along the boat. */
    public sealed interface Along {
    }

    /** At a station of the table, by its name. */
    public record AtStation(String name) implements Along {
    }

    /** Aft of the table's origin [m]. */
    public record AftOfOrigin(double metres) implements Along {
    }

    /** Ahead of where the keel line ends aft [m]. */
    public record AheadOfAfterEnd(double metres) implements Along {
    }

    /** How far out. */
    public sealed interface Out {
    }

    /** With a tape along the skin from the keel line, or from the rabbet [m]. */
    public record Girth(double metres) implements Out {
    }

    /** Level from the centreline [m]. */
    public record HalfBreadth(double metres) implements Out {
    }

    /** In a part of the boat, by its name; see {@link Regions}. */
    public record InRegion(String name) implements Out {
    }

    /** Anywhere from the keel line to the edge of the bottom. */
    public record NotTold() implements Out {
    }
}
