/**
 * How the water runs along the bottom, as pictures: streamlines, stagnation lines and shadows seen from below. Does no sums:
 * lines and regions come from {@code core}.
 */
package org.garboard.drawing.flow;
