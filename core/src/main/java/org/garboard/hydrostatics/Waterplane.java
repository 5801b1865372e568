package org.garboard.hydrostatics;

/**
 * The figure that the water cuts out of the hull, measured in the water's surface.
 *
 * @param area both sides [m2]
 * @param lcf x of its centroid (centre of flotation) [m]
 * @param transverse second moment of area about the centreline [m4]
 * @param longitudinal second moment of area about the athwartships line through the centroid [m4]
 */
public record Waterplane(double area, double lcf, double transverse, double longitudinal) {
}
