/**
 * What the hull's own shape says of it afloat: displacement, centroids, wetted skin and waterplane,
 * to any waterline and trim, upright, in still water.
 *
 * <p>Frame and units are those of {@link org.garboard.hull}; trim is positive bow-up. The skin is
 * closed by its steps' faces, its transom, and flat ends where it begins and ends square; nothing outside it (keel below the rabbet,
 * deadwood, skeg, rudder, drives) is counted, and nothing inside it. The figures are integrals over
 * the wet skin by Gauss's theorem, so that hollow sections and turned-back bilges need no special case.
 */
package org.garboard.hydrostatics;
