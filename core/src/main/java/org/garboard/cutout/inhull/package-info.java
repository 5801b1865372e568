/** The bath of an in-hull transducer, scribed to the inside of the skin. Hull frame and metres, see {@link org.garboard.hull}. */
package org.garboard.cutout.inhull;
