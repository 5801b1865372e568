/**
 * One drawing, whatever file it ends in: sheet, views, layers, entities, dimensions.
 *
 * <p><b>The paper frame</b>, used throughout: millimetres on the paper, x to the right and y up
 * from the lower left corner of the trimmed sheet. A sheet has one scale; a {@link Canvas} that
 * writes at true size multiplies by its denominator. Angles are degrees, counter-clockwise from
 * x, because every format drawn to says degrees.
 *
 * <p>Line widths, lettering and layout follow ISO 128-2, ISO 129-1, ISO 3098, ISO 5455, ISO 5457
 * and ISO 7200 as far as public summaries give them; the standards themselves were not to hand.
 */
package org.garboard.drawing;
