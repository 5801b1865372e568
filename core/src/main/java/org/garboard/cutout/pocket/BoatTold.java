package org.garboard.cutout.pocket;

import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.inside.LaidInside;
import org.garboard.skin.HullSkin;
import org.garboard.skin.SkinMaterial;
import org.garboard.skin.ThicknessHere;

/**
 * What is told of the boat that a pocket goes into. What is missing is not known.
 *
 * @param fastestKnots her top speed
 * @param skin what the bottom is made of
 * @param inside what stands behind it
 */
public record BoatTold(OptionalDouble fastestKnots, Optional<HullSkin> skin, Optional<LaidInside> inside) {
    /** Only her table. */
    public static final BoatTold NOTHING = new BoatTold(OptionalDouble.empty(), Optional.empty(), Optional.empty());

    /** Thickness of the skin at a place [m], where it is told. */
    OptionalDouble thicknessAt(double x, double y) {
        return skin.map(told -> told.thicknessAt(x, y)).filter(ThicknessHere.Told.class::isInstance).stream()
            .mapToDouble(told -> ((ThicknessHere.Told) told).largest()).findFirst();
    }

    /** Whether the skin is metal or planked, for which no layup is drawn. */
    boolean outlineOnly() {
        return skin.map(told -> told.material().isMetal() || told.material() == SkinMaterial.PLANKED).orElse(false);
    }
}
