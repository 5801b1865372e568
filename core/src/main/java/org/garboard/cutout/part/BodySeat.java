package org.garboard.cutout.part;

/**
 * Where a block bears on the body: the ground of a recess in it, or the end of a lip round the stem that hangs out of the
 * saw's cut. Heights are above what the block lies on as it is sawn [m].
 *
 * @param outline of recess or lip, square to the axis
 * @param mouth height over the body's middle of the face, plane or sawn, that the recess is sunk in or the lip stands on
 * @param bearing height of the plane that comes down on the body
 * @param lip whether it is a lip; else a recess
 */
public record BodySeat(BodyOutline outline, double mouth, double bearing, boolean lip) {

    /** Depth of the recess or height of the lip [m]. */
    public double depth() {
        return Math.abs(bearing - mouth);
    }
}
