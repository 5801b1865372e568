package org.garboard.lines;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * One tooth of a comb of curvature.
 *
 * @param foot on the line, hull frame [m]
 * @param away unit vector square to the line in the plane in which it is judged, away from its centre of curvature
 * @param curvature there, never negative [1/m]
 */
public record Tooth(Vector3D foot, Vector3D away, double curvature) {
}
