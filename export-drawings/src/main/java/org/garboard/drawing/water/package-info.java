/**
 * The water along a bottom over a plan of it: stagnation lines, streamlines, wakes, spray, air. Used by the pictures of the flow and
 * by the siting sheet alike. Does no sums: lines and regions come from {@code core}.
 */
package org.garboard.drawing.water;
