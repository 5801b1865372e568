/**
 * The hull and her image in the water's surface: panels from the hull's surface, and the flow past both.
 *
 * <p>The mesh is the starboard half below the water. Columns of it stand at constant x, hull frame, from the
 * forward end of the wet length to the after; rows follow the girth from keel to water. It lies in the frame of the
 * water: X aft along the surface, Y to starboard, Z up from it, X = 0 where the surface has its given height;
 * {@link org.garboard.flow.doublebody.WaterFrame} turns one frame into the other.
 *
 * <p>The water's surface stays level: the flow of a boat that goes slowly for her length. See
 * {@link org.garboard.flow.doublebody.Froude} for how far that serves.
 */
package org.garboard.flow.doublebody;
