/**
 * Closed meshes of triangles, and how they are built: loops in a plane are filled with triangles, lifted to
 * surfaces, and joined by walls. Knows nothing of boats. Metres, in whatever frame the caller works in.
 *
 * <p>A {@link org.garboard.solid.Solid} is verified when it is made: closed, right side out, in one piece,
 * each edge between two triangles and each corner in one fan. A mesh that is not cannot be had.
 */
package org.garboard.solid;
