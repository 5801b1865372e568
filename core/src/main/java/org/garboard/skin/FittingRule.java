package org.garboard.skin;

import java.util.Optional;
import org.garboard.craft.Housing;
import org.garboard.craft.StemHole;
import org.garboard.finding.Bound;
import org.garboard.finding.Figure;
import org.garboard.finding.Finding;
import org.garboard.finding.NotKnown;
import org.garboard.finding.Ruling;
import org.garboard.units.FixedDecimal;

/**
 * A stem through a skin: housing against hull, hole, thread.
 *
 * @param skin of the boat
 * @param housing of the transducer; none where it is not told
 * @param stemDiameter [m]
 */
public record FittingRule(HullSkin skin, Optional<Housing> housing, double stemDiameter) {
    private static final String HOUSING = "housing in this skin";
    private static final String THREAD = "stem beyond the skin";
    private static final String PRACTICE = "common practice, no source";
    /** Wall of an isolating sleeve [m]: our choice, because a turned plastic bush is seldom thinner. */
    public static final double SLEEVE_WALL = 0.003;

    /** What must stand out inside for washer and nut. */
    public static final Bound NUT = new Bound(20, "mm", "our choice, because a washer and a plastic nut take up that much");

    /** Whether a metal fitting sits in a metal hull, where it eats the hull unless it is kept apart from it. */
    public boolean needsSleeve() {
        return skin.material().isMetal() && housing.isPresent() && housing.get().isMetal();
    }

    /** Diameter of the hole [m], as saws are made; a sleeve's wall counts on both sides. */
    public double holeDiameter() {
        return StemHole.diameter(stemDiameter, needsSleeve() ? SLEEVE_WALL : 0);
    }

    /** Whether this housing may go into this skin. */
    public Finding housingFits() {
        SkinMaterial material = skin.material();
        if (housing.isEmpty()) {
            return material.isMetal() || material == SkinMaterial.PLANKED
                ? new NotKnown(HOUSING, PRACTICE, "What the housing is made of is not told, and in " + material.words() + " it matters.")
                : Ruling.allowed(HOUSING, PRACTICE, "Any housing may go into " + material.words() + ".");
        }
        if (housing.get() == Housing.PLASTIC && material == SkinMaterial.PLANKED) {
            return Ruling.refused(HOUSING, PRACTICE,
                "Planks swell in the water and crack a plastic housing: a bronze one is needed.");
        }
        if (needsSleeve()) {
            return Ruling.allowed(HOUSING, PRACTICE, "A fitting of " + housing.get().words() + " in " + material.words()
                + " needs an isolating sleeve, or it eats the hull: the hole grows to "
                + FixedDecimal.format(holeDiameter() * 1000, 1) + " mm.");
        }
        return Ruling.allowed(HOUSING, PRACTICE, "A housing of " + housing.get().words() + " may go into " + material.words() + ".");
    }

    /**
     * Whether the thread reaches through the thickest skin near, and a backing block, and leaves room for the nut.
     *
     * @param stemLength from the skin's outside [m]; none where it is not told
     * @param backing thickness of the block inside [m]
     */
    public Finding thread(double x, double y, Optional<Double> stemLength, double backing) {
        ThicknessHere here = skin.thicknessAt(x, y);
        if (here instanceof ThicknessHere.Untold untold) {
            return new NotKnown(THREAD, NUT.source(), untold.reason());
        }
        if (here instanceof ThicknessHere.CoreSuspected) {
            return new NotKnown(THREAD, NUT.source(), "A core is suspected here: its whole thickness is not known. Drill a pilot hole.");
        }
        if (stemLength.isEmpty()) {
            return new NotKnown(THREAD, NUT.source(), "The length of the stem is not told.");
        }
        ThicknessHere.Told told = (ThicknessHere.Told) here;
        double beyond = stemLength.get() - told.largest() - backing;
        String words = "The stem of " + millimetres(stemLength.get()) + " stands " + millimetres(Math.max(0, beyond)) + " beyond "
            + millimetres(told.largest()) + " of skin (by " + told.by() + ") and " + millimetres(backing) + " of block.";
        return Figure.atLeast(THREAD, beyond * 1000, NUT, words, beyond > 0 ? words + " The nut finds no hold."
            : "The stem of " + millimetres(stemLength.get()) + " is shorter than skin and block, "
                + millimetres(told.largest() + backing) + " (by " + told.by() + "). A stem of at least "
                + millimetres(told.largest() + backing + NUT.value() / 1000) + " would serve.");
    }

    private static String millimetres(double metres) {
        return FixedDecimal.format(metres * 1000, 1) + " mm";
    }
}
