package org.garboard.survey;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A place of the skin that a finding is marked at.
 *
 * @param face on which part of the skin
 * @param point hull frame [m], port with y below 0
 * @param girth along the skin from the keel line [m]; NaN where the place is not of the skin
 */
public record Spot(Face face, Vector3D point, double girth) {

    /** A part of the outside. */
    public enum Face { BOTTOM, TOPSIDES }
}
