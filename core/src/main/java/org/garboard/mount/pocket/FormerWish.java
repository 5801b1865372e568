package org.garboard.mount.pocket;

import org.garboard.units.Angle;

/**
 * What is asked of the former that gives the pocket its finished outside face.
 *
 * @param mold that the boat is, or its tray is, moulded in
 * @param pull of each half of a split mold off the boat, from plumb down towards its own side; 0 for a mold in one piece
 * @param shrinkage of the laminate, 0.002 for 0.2 %: the former is larger by so much
 * @param flange width of the rim along the skin round the former, for a tray laid up on it; 0 for none [m]
 */
public record FormerWish(Mold mold, Angle pull, double shrinkage, double flange) {
    /** Common practice for polyester, no source. */
    public static final double SHRINKAGE = 0.002;
    public static final FormerWish USUAL = new FormerWish(Mold.ONE_PIECE, Angle.ofDegrees(0), SHRINKAGE, 0);

    /** How the mold comes off. */
    public enum Mold { ONE_PIECE, SPLIT_ON_CENTRELINE }
}
