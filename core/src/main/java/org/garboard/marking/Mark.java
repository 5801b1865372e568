package org.garboard.marking;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A mark on the boat.
 *
 * @param letter it is called by
 * @param words what it is
 * @param place hull frame [m]
 */
public record Mark(String letter, String words, Vector3D place) {
}
