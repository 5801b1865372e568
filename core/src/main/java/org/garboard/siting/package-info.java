/**
 * Checks at every place on the bottom, feasible regions, and the best site of each mount.
 *
 * <p>Hull frame and metres, see {@link org.garboard.hull}. A check that could not be made is
 * NOT KNOWN, which never counts as met.
 */
package org.garboard.siting;
