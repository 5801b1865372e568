/**
 * The beam of an element, where it points, what its echo loses by that, and how near two transducers may be.
 *
 * <p>Elements are flat and vibrate evenly all over (piston); real ones differ by a few parts in a hundred in
 * width and more in their side lobes. Angles count from the axis; beam widths are full, both sides of it.
 */
package org.garboard.acoustics.beam;
