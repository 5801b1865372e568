/**
 * Sheets as SVG: one user unit is one millimetre, one group per layer.
 *
 * <p>For screens and drawing programs. Nothing outside the file is referred to.
 */
package org.garboard.drawing.svg;
