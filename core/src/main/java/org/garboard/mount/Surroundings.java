package org.garboard.mount;

import java.util.List;
import java.util.Optional;
import org.garboard.craft.Drive;
import org.garboard.handling.Supports;
import org.garboard.inside.LaidInside;
import org.garboard.mount.told.WaterAtSpeed;
import org.garboard.skin.HullSkin;

/**
 * What a job tells of the boat beside her table, laid on her hull. What is missing is not known.
 *
 * @param foot x of the transom's foot, where the keel line ends [m]
 * @param skin what the bottom is made of
 * @param inside what stands behind it
 * @param supports what she rests on or hangs from
 * @param drive what drives her
 * @param water along the bottom at each of her speeds, slowest first; empty where nothing is told of her running
 */
public record Surroundings(double foot, Optional<HullSkin> skin, Optional<LaidInside> inside, Optional<Supports> supports,
                           Optional<Drive> drive, List<WaterAtSpeed> water) {
    /** Where only the table is told. */
    public static final Surroundings UNTOLD = new Surroundings(Double.NaN, Optional.empty(), Optional.empty(), Optional.empty(),
        Optional.empty(), List.of());

    public Surroundings {
        water = List.copyOf(water);
    }

    /** Whether port and starboard are alike. */
    public boolean isSymmetrical() {
        return skin.map(HullSkin::isSymmetrical).orElse(true) && inside.map(LaidInside::isSymmetrical).orElse(true)
            && supports.map(Supports::isSymmetrical).orElse(true);
    }

    /** The same with what drives her. */
    public Surroundings driven(Drive by) {
        return new Surroundings(foot, skin, inside, supports, Optional.of(by), water);
    }
}
