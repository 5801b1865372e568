/**
 * Sheets as PDF: a page for each, in true paper millimetres, its letters embedded.
 *
 * <p>The same sheets give the same bytes: dates and the document's id are set, never taken from the clock.
 */
package org.garboard.drawing.pdf;
