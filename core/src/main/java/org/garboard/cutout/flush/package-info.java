/**
 * A housing flush with the skin: the cutout, its template, the backing block inside. Hull frame and metres, see
 * {@link org.garboard.hull}.
 */
package org.garboard.cutout.flush;
