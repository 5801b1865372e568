/**
 * Potential flow about a body of flat panels, each a source of constant strength.
 *
 * <p>J. L. Hess and A. M. O. Smith, Journal of Ship Research 8(2), 1964 (from memory); J. Katz and A. Plotkin,
 * <i>Low-Speed Aerodynamics</i>, chapter 10 (from memory); solid angles after A. van Oosterom and J. Strackee,
 * IEEE Transactions on Biomedical Engineering 30, 1983 (from memory). Good for water that stays level as a ship
 * passes, that is for low Froude numbers; below 0.3 as guidance, and not for a planing hull.
 *
 * <p>Frame: any in which the stream runs along +x; with images z = 0 is the water's surface, y = 0 the
 * centreline, and the panels lie below and to starboard. Lengths in metres, velocities over the stream's speed.
 * Knows nothing of boats.
 */
package org.garboard.flow.panels;
