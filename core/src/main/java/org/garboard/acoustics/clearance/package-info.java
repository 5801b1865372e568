/**
 * Whether a beam gets away from the boat: rays of a cone against the skin and against plates, shafts and
 * other bodies. Hull frame, metres.
 *
 * <p>Rays stand in plain arrays, and every body is asked for all of them at once. A body narrower than the
 * distance between neighbouring rays ({@link org.garboard.acoustics.clearance.RayFan#spacing}) may be missed.
 */
package org.garboard.acoustics.clearance;
