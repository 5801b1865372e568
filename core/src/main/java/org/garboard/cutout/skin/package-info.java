/**
 * The skin as parts meet it: seen along an axis, its inside face, what bounds a smooth piece of it.
 * Hull frame and metres, see {@link org.garboard.hull}.
 */
package org.garboard.cutout.skin;
