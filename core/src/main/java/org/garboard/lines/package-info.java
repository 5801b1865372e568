/**
 * The curves of a hull as the loft draws and judges them: named lines, sections, buttocks, waterlines
 * and diagonals, sections laid out by girth, and combs of curvature.
 *
 * <p>Frame and units are those of {@link org.garboard.hull}; everything is starboard. Figures only:
 * paper belongs to whoever draws.
 */
package org.garboard.lines;
