package org.garboard.craft;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;

/** Something on the bottom, or cut into it, that a transducer must keep clear of. */
public sealed interface Feature permits Strake, Fitting {

    /** As it is to stand on the sheets. */
    String name();

    Sides sides();

    /** "lifting strake", "intake". */
    String kind();

    /** Where it is told to be. */
    List<FeaturePlace> places();

    /** What it covers in plan, as if to starboard; its places must lie on the skin. */
    List<Quad> cover(Hull hull);

    /** How far it stands out of the skin [m]; none where that is not told. */
    Optional<Double> height();

    /** The first of its places that is off the skin, counted from 0. */
    default OptionalInt placeOffSkin(Hull hull) {
        for (int i = 0; i < places().size(); i++) {
            if (Double.isNaN(places().get(i).y(hull))) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /** Laid on a hull. */
    default LaidFeature on(Hull hull) {
        return new LaidFeature(name(), kind(), sides(), cover(hull), height());
    }
}
