package org.garboard.cutout.flush;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.cutout.part.BodySeat;
import org.garboard.cutout.part.CoreRemoval;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.part.SawCut;
import org.garboard.cutout.template.Template;

/**
 * A flush through-hull as it is to be cut. Hull frame and metres.
 *
 * @param site where the hole's axis meets the outside of the skin
 * @param axis of the hole, unit vector into the boat, square to the skin
 * @param lean of the element, if it is inclined
 * @param opening the cutout square to the axis
 * @param edge the curve in which the cutout meets the outside of the skin, closed, last point not repeated
 * @param proud how far the face stands out of the skin at most, the body midway between proud and hollow [m]
 * @param stemHole diameter of the stem's hole in the block [m]; 0 where there is no stem
 * @param core what is taken out of a cored skin
 * @param blockThickness least and greatest thickness of the backing block beside the cutout [m], where there is one
 * @param wedge how the backing block is sawn before it is scribed, where there is one; it lies on its top
 * @param seat where that block bears on the body, unless the body goes right through it
 * @param sleeve wall of the insulating sleeve round the body, 0 where it needs none
 * @param stemNeeded length of stem above the body's top, through block, washer and nut [m]
 * @param solids parts as closed bodies
 * @param templates flat outlines
 */
public record FlushCutout(Vector3D site, Vector3D axis, ElementLean lean, BodyOutline opening, List<Vector3D> edge, double proud, double stemHole,
                          Optional<CoreRemoval> core, Optional<Range> blockThickness, Optional<SawCut> wedge, Optional<BodySeat> seat, double sleeve,
                          OptionalDouble stemNeeded, List<NamedSolid> solids, List<Template> templates) {
    public FlushCutout {
        edge = List.copyOf(edge);
        solids = List.copyOf(solids);
        templates = List.copyOf(templates);
    }

    /** From least to greatest [m]. */
    public record Range(double least, double greatest) {
    }
}
