package org.garboard.mount;

import java.util.List;
import java.util.Optional;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Drive;
import org.garboard.handling.Supports;
import org.garboard.inside.LaidInside;
import org.garboard.mount.water.BottomWater;
import org.garboard.skin.HullSkin;

/**
 * What a job tells of the boat beside her table, laid on her hull. What is missing is not known.
 *
 * @param foot x of the transom's foot, where the keel line ends [m]
 * @param skin what the bottom is made of
 * @param inside what stands behind it
 * @param supports what she rests on or hangs from
 * @param drive what drives her
 * @param water along the bottom at each of her speeds
 * @param bottom what is on it; empty where only places are asked about
 */
public record Surroundings(double foot, Optional<HullSkin> skin, Optional<LaidInside> inside, Optional<Supports> supports,
                           Optional<Drive> drive, BottomWater water, Optional<LaidBottom> bottom) {
    /** Where only the table is told. */
    public static final Surroundings UNTOLD = new Surroundings(Double.NaN, Optional.empty(), Optional.empty(), Optional.empty(),
        Optional.empty(), BottomWater.UNTOLD, Optional.empty());

    /** Whether the job lists what is on the bottom, if only to say that nothing is. */
    public boolean listed() {
        return bottom.filter(laid -> laid.features().list() == BottomFeatures.FeatureList.GIVEN).isPresent();
    }

    /** Whether port and starboard are alike. */
    public boolean isSymmetrical() {
        return skin.map(HullSkin::isSymmetrical).orElse(true) && inside.map(LaidInside::isSymmetrical).orElse(true)
            && supports.map(Supports::isSymmetrical).orElse(true);
    }

    /** The same with what drives her. */
    public Surroundings driven(Drive by) {
        return new Surroundings(foot, skin, inside, supports, Optional.of(by), water, bottom);
    }
}
