package org.garboard.mount.pocket;

import java.util.Optional;
import org.garboard.units.Angle;

/**
 * The walls between floor and face. Lengths [m].
 *
 * @param draft by how much they lean out from square to the floor
 * @param floorRadius between floor and wall
 * @param edgeRadius between wall and the surface outside
 * @param rebate for a flange of the body, where there is one
 */
public record Walls(Angle draft, double floorRadius, double edgeRadius, Optional<Rebate> rebate) {
    /** Common practice, no source, all three. */
    public static final Walls USUAL = new Walls(Angle.ofDegrees(5), 0.010, 0.005, Optional.empty());
    /** Less than this does not come off a former: common practice, no source [deg]. */
    public static final double LEAST_DRAFT_DEG = 3;

    /**
     * A step in the walls that takes a flange.
     *
     * @param width of its ledge, square to the outline
     * @param depth of the ledge above the face
     * @param screws that hold the flange to it, where they are told
     */
    public record Rebate(double width, double depth, Optional<Screws> screws) {
        /** Without screws. */
        public Rebate(double width, double depth) {
            this(width, depth, Optional.empty());
        }
    }

    /**
     * Screws along the middle of a ledge.
     *
     * @param hole diameter that is drilled for one
     * @param apart how far they may stand apart
     */
    public record Screws(double hole, double apart) {
    }

    /** How far the walls reach beyond the floor's outline where they fall so far to a level face [m]. */
    public double run(double fall) {
        double steep = Math.PI / 2 - draft.radians();
        double round = Math.tan(steep / 2);
        return floorRadius * round + edgeRadius * round + fall / Math.tan(steep) + rebate.map(Rebate::width).orElse(0.0);
    }
}
