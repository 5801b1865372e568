/**
 * Templates at true size, tiled on the paper that an office printer takes.
 *
 * <p>The template's own frame: true millimetres, outside up, bow to +x, starboard to +y. Pages are portrait; their
 * frame is that of {@link org.garboard.drawing}.
 */
package org.garboard.drawing.template;
