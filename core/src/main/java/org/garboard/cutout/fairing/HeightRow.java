package org.garboard.cutout.fairing;

/**
 * Heights of the block's hull side above its face, square to the face, at one place of its length [m].
 *
 * @param aft of the body's middle along the block
 * @param halfBreadth of the block there
 * @param port height at the port edge
 * @param middle height on the block's axis
 * @param starboard height at the starboard edge
 * @param back how far the face is taken back there to round the nose
 */
public record HeightRow(double aft, double halfBreadth, double port, double middle, double starboard, double back) {
}
