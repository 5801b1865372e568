package org.garboard.cutout.fairing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.part.BodySeat;
import org.garboard.cutout.part.CoreRemoval;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.cutout.part.SawCut;
import org.garboard.cutout.part.SkinEllipse;
import org.garboard.cutout.template.Template;
import org.garboard.flow.cavitation.Inception;
import org.garboard.flow.cavitation.Suction.FairingNose;

/**
 * A fairing block as it is to be made. Hull frame and metres.
 *
 * @param site where the stem's axis meets the outside of the skin
 * @param axis of the stem, unit vector into the boat: square to the face cut level, neither to the skin nor along the element
 * @param planform its outline, stated on the sheet
 * @param length of it
 * @param width of it
 * @param height of the face below the skin at the site
 * @param low least height of the block's side
 * @param high greatest height of the block's side
 * @param roof least thickness of the block over the body
 * @param saw how to cut the blank
 * @param seat the recess for the body, in the face
 * @param heights every 25 mm, to shape the hull side by hand
 * @param nose how the face's forward edge is rounded
 * @param stemHole the stem's hole in the skin; empty where there is no stem
 * @param bolt where bolt and pin go along the block's axis, aft of the body's middle
 * @param pin the same, forward
 * @param boltHole diameter of both holes
 * @param core what is taken out of a cored skin round the holes
 * @param sleeve wall of the insulating sleeve round the stem, 0 where it needs none
 * @param stemNeeded length of stem above the body's top, through blocks, skin, washer and nut
 * @param solids parts as closed bodies
 * @param templates flat outlines
 */
public record FairingBlock(Vector3D site, Vector3D axis, Planform planform, double length, double width, double height,
                           double low, double high, double roof, SawCut saw, BodySeat seat, List<HeightRow> heights,
                           NoseRound nose, Optional<SkinEllipse> stemHole, double bolt, double pin, double boltHole, Optional<CoreRemoval> core,
                           double sleeve, OptionalDouble stemNeeded, List<NamedSolid> solids, List<Template> templates) {
    private static final double NOSE_WITHIN = 1e-5;

    public FairingBlock {
        heights = List.copyOf(heights);
        solids = List.copyOf(solids);
        templates = List.copyOf(templates);
    }

    /** Speed of the water at which it begins to boil on nose and sides, the nose rounded and the bedding faired [m/s]; on a square or proud edge sooner. */
    public double boilsAt(Inception water) {
        return water.speed(FairingNose.ofBlock(nose.length(), width, high).least());
    }

    /** Over what length the nose would have to run out so that water of a speed [m/s] does not boil on it [m]; none up to the whole block's. */
    public OptionalDouble noseFor(double speed, Inception water) {
        double most = -water.number(speed);
        if (FairingNose.ofBlock(length, width, high).least() < most) {
            return OptionalDouble.empty();
        }
        double shortest = nose.length() / 100;
        double longest = length;
        while (longest - shortest > NOSE_WITHIN) {
            double middle = (shortest + longest) / 2;
            if (FairingNose.ofBlock(middle, width, high).least() < most) {
                shortest = middle;
            } else {
                longest = middle;
            }
        }
        return OptionalDouble.of(longest);
    }
}
