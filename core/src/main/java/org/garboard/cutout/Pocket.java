package org.garboard.cutout;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.template.Template;

/**
 * A pocket as it is to be cut, finished outside faces. Hull frame and metres.
 *
 * <p>The floor is level athwartships, or square to the skin, and runs fore and aft along the bottom under it or with its after edge a
 * little lower. Walls lean out by their draft angle.
 *
 * @param site where the pocket's middle meets the skin
 * @param along unit vector aft along the floor
 * @param across unit vector to starboard along it
 * @param length of the floor (body and gap), fore and aft
 * @param width of the floor, athwartships
 * @param cornerRadius of the floor's outline
 * @param depth of the floor above the keel line at the site, square to the floor
 * @param faceDepth of the transducer's face above the keel line at the site, square to the floor
 * @param wallHeight least height of wall at the floor's outer edges: depth less the rise of the V
 * @param rampRatio of the fore and aft ramps, 0 for none
 * @param foreRamp length of the fore ramp on the centreline, along the floor
 * @param aftRamp length of the aft ramp on the centreline, along the floor
 * @param floor outline of the floor, closed ring, last point not repeated
 * @param pocketEdge where the walls meet the skin or the ramps, same number of points as the floor
 * @param opening where pocket and ramps together meet the skin, closed ring from forward on the keel,
 *     first along starboard, then port
 * @param developedOpening the opening unrolled flat, point for point
 * @param developedPocket the pocket's outline alone, unrolled flat
 * @param developmentStretch largest difference between a length along the skin and the same length laid flat [m]
 * @param volume between cut surface and skin [m3]
 * @param openingArea of skin cut away [m2]
 * @param sections long section and cross sections
 * @param solids what it is made of and milled to, as closed bodies
 * @param templates flat outlines beside the opening's own
 * @param details how it is made and what it costs
 */
public record Pocket(Vector3D site, Vector3D along, Vector3D across, double length, double width, double cornerRadius,
                     double depth, double faceDepth, double wallHeight, double rampRatio,
                     double foreRamp, double aftRamp,
                     List<Vector3D> floor, List<Vector3D> pocketEdge, List<Vector3D> opening,
                     List<FlatPoint> developedOpening, List<FlatPoint> developedPocket,
                     double developmentStretch, double volume, double openingArea,
                     List<PocketSection> sections, List<NamedSolid> solids,
                     List<Template> templates, PocketDetails details) {
    public Pocket {
        floor = List.copyOf(floor);
        pocketEdge = List.copyOf(pocketEdge);
        opening = List.copyOf(opening);
        developedOpening = List.copyOf(developedOpening);
        developedPocket = List.copyOf(developedPocket);
        sections = List.copyOf(sections);
        solids = List.copyOf(solids);
        templates = List.copyOf(templates);
    }

    /** Slope of the floor fore and aft, dz/dx [rad], positive rising aft. */
    public double slope() {
        return Math.atan2(along.getZ(), along.getX());
    }

    /** Lean of the floor athwartships [rad], positive rising to starboard; 0 where it lies level. */
    public double lean() {
        return Math.atan2(across.getZ(), across.getY());
    }

    /** Unit vector into the boat, square to the floor. */
    public Vector3D up() {
        return along.cross(across);
    }
}
