/**
 * What each sheet of the set shows: sheet 1 siting, sheet 4 pocket, and the pocket's cut file.
 *
 * <p>Hull frame and metres come in (see {@link org.garboard.hull}); paper millimetres go out
 * (see {@link org.garboard.drawing}). Bow to the right throughout.
 */
package org.garboard.drawing.sheets;
