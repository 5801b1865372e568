package org.garboard.job;

import java.util.List;
import java.util.Optional;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Feature;
import org.garboard.craft.Transducer;
import org.garboard.cutout.fairing.FairingCut;
import org.garboard.cutout.fairing.FairingWish;
import org.garboard.cutout.transom.BracketWish;
import org.garboard.hull.Fit;
import org.garboard.hull.Hull;
import org.garboard.mount.Installation;
import org.garboard.mount.Mount;
import org.garboard.mount.PocketWish;
import org.garboard.mount.water.RunningWater;
import org.garboard.siting.Mark;
import org.garboard.siting.SitingTask;
import org.garboard.skin.SurveyedSkin;

/**
 * One boat and one task.
 *
 * @param boat name of the boat or model
 * @param hullNumber builder's hull number, empty when none is told
 * @param tableFile the table of offsets as the job names it
 * @param fit how the hull is drawn from it
 * @param draught height of the floating waterline above base at rest [m]
 * @param transducer what is to be sited
 * @param mounts the ways it may go in, the preferred first
 * @param features strakes and fittings on the bottom; none where the job does not list them
 * @param pocket wishes for a keel pocket
 * @param drawing how the sheets are to look
 * @param particulars what else is told of transducer and boat
 */
public record Job(String boat, String hullNumber, String tableFile, Fit fit, double draught,
                  Transducer transducer, List<Mount> mounts, Optional<List<Feature>> features,
                  PocketWish pocket, DrawingWish drawing, Particulars particulars) {
    public Job {
        mounts = List.copyOf(mounts);
        features = features.map(List::copyOf);
    }

    /**
     * What the search of the bottom needs to know of the job.
     *
     * @param laid what is on her bottom
     * @param running how she runs
     */
    public SitingTask sitingTask(Hull hull, BottomFeatures laid, RunningWater running) {
        return new SitingTask(draught, installation(), mounts, switch (drawing.units()) {
            case MILLIMETRES -> Mark.FIVE_MILLIMETRES;
            case FEET_INCHES_EIGHTHS -> Mark.QUARTER_INCH;
        }, laid, particulars.around(hull, laid, running));
    }

    /** The same with other wishes for a pocket and a fairing block. */
    public Job wishing(PocketWish otherPocket, FairingWish block) {
        return new Job(boat, hullNumber, tableFile, fit, draught, transducer, mounts, features, otherPocket, drawing, particulars.wishing(block));
    }

    /** What goes into the bottom. */
    public Installation installation() {
        FairingWish wish = particulars.fairing();
        double drop = BracketWish.of(particulars.skin().map(SurveyedSkin::material), particulars.bracket(), wish.throughHull().chord()).drop();
        return new Installation(transducer, particulars.transducer(), pocket, FairingCut.size(transducer, wish), wish.throughHull().block(),
            drop, particulars.limits());
    }
}
