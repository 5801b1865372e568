package org.garboard.cutout.transom;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.template.Template;
import org.garboard.units.Angle;

/**
 * A transom mount as it is to be screwed on. Hull frame and metres; across to starboard of the body's middle, up along the
 * transom from its lower edge at the body's middle.
 *
 * @param edge the transom's lower edge at the body's middle
 * @param rake of the transom there, from plumb, positive where its top stands farther aft
 * @param belowInboard how far the level face hangs below the edge at the body's inboard side, the least
 * @param belowMiddle the same at its middle
 * @param belowOutboard the same at its outboard side
 * @param ahead level, from the transom's edge aft to the body's forward end
 * @param screws where the pilot holes go
 * @param boardWidth of the board under the bracket
 * @param boardFoot of its lower edge over the transom's, along the transom
 * @param boardTop of its upper edge over the transom's at the middle
 * @param board its thickness
 * @param round how far the transom stands off the board's plane under it, at most: to be packed
 * @param fromPropeller level, athwart, from the axis of a single propeller on the centreline to the body's middle; empty where
 *     none is told, or several
 * @param beside what else is near on the bottom ahead of it, the nearest first
 * @param solids parts as closed bodies
 * @param templates flat outlines
 */
public record TransomBracket(Vector3D edge, Angle rake, double belowInboard, double belowMiddle, double belowOutboard, double ahead,
                             List<ScrewPlace> screws, double boardWidth, double boardFoot, double boardTop, double board, double round,
                             OptionalDouble fromPropeller, List<Neighbour> beside, List<NamedSolid> solids, List<Template> templates) {
    public TransomBracket {
        screws = List.copyOf(screws);
        beside = List.copyOf(beside);
        solids = List.copyOf(solids);
        templates = List.copyOf(templates);
    }

    /** A pilot hole. */
    public record ScrewPlace(double across, double up, double diameter) {
    }

    /**
     * A strake or fitting that ends close ahead of the transom.
     *
     * @param gap level, athwart, from its nearer side to the body's; 0 where it lies ahead of the body
     */
    public record Neighbour(String name, String kind, double gap) {
    }
}
