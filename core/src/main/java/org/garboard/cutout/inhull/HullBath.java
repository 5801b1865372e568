package org.garboard.cutout.inhull;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.part.SawCut;
import org.garboard.cutout.template.Template;

/**
 * A bath as it is to be made: an open ring, plumb, its foot scribed to the inside of the skin, its brim level with the base
 * line. Hull frame and metres.
 *
 * @param site where the bath's axis meets the skin it is scribed to
 * @param length fore and aft, over the walls
 * @param width over the walls
 * @param wall thickness
 * @param face height of the transducer's face over the site, level, just clear of the skin
 * @param under least and greatest depth of liquid between skin and face
 * @param level height of the liquid over the site: with it the face stays wet to the heel asked
 * @param brim height of the ring's brim over the site: to that heel nothing spills
 * @param low least height of the wall, outside
 * @param high greatest height of the wall, outside
 * @param litres of liquid, the body in it
 * @param saw how the ring's foot is sawn before it is scribed; it stands on its brim
 * @param solids parts as closed bodies
 * @param templates flat outlines
 */
public record HullBath(Vector3D site, double length, double width, double wall, double face, Depth under, double level, double brim,
                       double low, double high, double litres, SawCut saw, List<NamedSolid> solids, List<Template> templates) {
    public HullBath {
        solids = List.copyOf(solids);
        templates = List.copyOf(templates);
    }

    /** Least and greatest [m]. */
    public record Depth(double least, double greatest) {
    }
}
