package org.garboard.cutout.fairing;

/**
 * How the face's forward edge is taken off by hand, last of all: seen from the side a quarter of an ellipse, upright at the
 * skin, running out into the face. The block is milled or sawn with the edge square. Lengths [m].
 *
 * @param height of the block at its nose
 * @param length over which the ellipse runs out: all the room there is ahead of the body
 */
public record NoseRound(double height, double length) {

    /** How far the face is taken back at a distance abaft of the nose. */
    double back(double fromNose) {
        double ahead = Math.max(0, 1 - fromNose / length);
        return height * (1 - Math.sqrt(1 - ahead * ahead));
    }
}
