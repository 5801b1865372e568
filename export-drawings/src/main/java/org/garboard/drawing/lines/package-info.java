/**
 * The lines drawing of a hull, in three views with its grid, and pictures of a line's curvature.
 *
 * <p>Hull frame and metres come in (see {@link org.garboard.hull}); paper millimetres go out
 * (see {@link org.garboard.drawing}). Bow to the right throughout.
 */
package org.garboard.drawing.lines;
