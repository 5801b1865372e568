/**
 * The hull surface: panels between named lines, lofted through the stations.
 *
 * <p><b>The hull frame</b>, used throughout: x aft from the table's origin (its station
 * 0, or its forward-most station where they are measured from aft; some other if the table says so), y to starboard from the centreline, z up from the baseline; right-handed; metres. The surface
 * is held for the starboard side; port is its mirror image.
 *
 * <p>Deadrise is positive when the bottom rises outboard, buttock slope dz/dx positive when it
 * rises aft. The normal points into the water. Principal curvatures k1 &gt;= k2 are positive
 * where the skin bulges into the water: a sphere of radius R seen from outside has +1/R twice.
 * Girth is measured along the skin from the keel line.
 */
package org.garboard.hull;
