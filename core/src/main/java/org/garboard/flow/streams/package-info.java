/**
 * Lines along which the water runs over a skin, and what they tell: where water from the surface at the bow goes.
 *
 * <p>The skin is a grid of panels from {@link org.garboard.flow.doublebody}; velocities are interpolated
 * over it, not summed anew at each step. Results are in the hull frame, see {@link org.garboard.hull}.
 */
package org.garboard.flow.streams;
