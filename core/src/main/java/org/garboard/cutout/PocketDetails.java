package org.garboard.cutout;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.units.Angle;

/**
 * How a pocket is made, and what it costs. Lengths [m].
 *
 * @param make what was asked, defaults filled in
 * @param gapAtFace between body and wall where the face lies: bedding, draft and radii
 * @param laminate thickness of the pocket's laminate, 0 where it is not known
 * @param steepest slope of ramps and blends against the skin
 * @param hullCut where the hull is cut through for a tray; none where it is not known
 * @param taperEnd how far the hull is ground down round it; none where that is not known
 * @param shellCut area of shell cut out [m2]
 * @param volumeLost of buoyancy: the pocket less the body in it [m3]
 * @param met frames and stringers behind the pocket, as the job names them
 * @param trappedAir height of air that stays under the pocket afloat, level and upright
 * @param crest the highest place of that air, hull frame
 * @param cableHole diameter of the cable's exit in the middle of the floor, 0 for none
 * @param leastDraft of any face of the former, against the way it is pulled
 * @param drains whether every face looks down when she is hauled, so that no water stands in it to freeze
 * @param tolerance of the face against the skin: what surface, body and bedding may be off, added up
 * @param notMade solids that are left out: which, why, and what would work
 * @param outlineOnly whether the skin is metal or planked: no layup is drawn for it
 */
public record PocketDetails(PocketMake make, double gapAtFace, double laminate, Angle steepest, LaidLine hullCut,
                            LaidLine taperEnd, double shellCut, double volumeLost, List<String> met, double trappedAir,
                            Vector3D crest, double cableHole, Angle leastDraft, boolean drains, double tolerance, List<String> notMade,
                            boolean outlineOnly) {
    public PocketDetails {
        met = List.copyOf(met);
        notMade = List.copyOf(notMade);
    }
}
