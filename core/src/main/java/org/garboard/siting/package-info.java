/**
 * Checks at every place on the bottom, feasible regions, and the best site of each mount.
 *
 * <p>Hull frame and metres, see {@link org.garboard.hull}. A check that could not be made is
 * NOT KNOWN, which never counts as met.
 *
 * <p>The search measures the nodes of a 10 mm grid from few samples each, which tells a limit to
 * about a hundredth; it bounds the regions and proposes places. What is said of a site, and of any
 * place asked about, is measured anew on the true surface from samples 10 mm apart or closer.
 * Rooms are least distances straight through space, level to the ends of the table.
 */
package org.garboard.siting;
