package org.garboard.skin;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.garboard.acoustics.beam.Element;
import org.garboard.acoustics.inhull.LossByIncidence;
import org.garboard.acoustics.inhull.SkinPassage;
import org.garboard.acoustics.laminate.Fluid;
import org.garboard.craft.SoundBeam;
import org.garboard.acoustics.laminate.LayeredSkin;
import org.garboard.acoustics.laminate.Layer;
import org.garboard.acoustics.laminate.Solid;
import org.garboard.acoustics.laminate.TypicalSolids;
import org.garboard.finding.Bound;
import org.garboard.finding.Figure;
import org.garboard.finding.Finding;
import org.garboard.finding.NotKnown;
import org.garboard.finding.Ruling;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/**
 * Whether sound gets through the skin to a transducer inside.
 *
 * @param skin of the boat
 * @param water outside, and in the bath inside
 * @param most loss one way that is allowed [dB]
 */
public record InHullRule(HullSkin skin, Fluid water, Bound most) {
    private static final String NAME = "loss through the skin";
    private static final String PRACTICE = "common practice, no source";

    /** The most that is allowed one way. */
    public static final Bound LOSS = new Bound(6, "dB",
        "our choice, because 6 dB each way is what halves the depth that is reached (40 log 2 = 12 dB out and back)");

    /**
     * @param incidence of the beam on the skin: the deadrise for an element plumb in a bath, 0 for one bonded flat
     * @param beams of the transducer; none where they are not told
     */
    public Finding at(double x, double y, Angle incidence, List<SoundBeam> beams) {
        Optional<Finding> refusal = refusal(beams);
        if (refusal.isPresent()) {
            return refusal.get();
        }
        ThicknessHere here = skin.thicknessAt(x, y);
        if (here instanceof ThicknessHere.CoreSuspected core) {
            return new NotKnown(NAME, PRACTICE, "A gauge reads " + millimetres(core.reading()) + " where "
                + millimetres(core.layup()) + " were laid up: that is a core, not a thin hull. Drill a pilot hole and look.");
        }
        if (here instanceof ThicknessHere.Untold untold) {
            return new NotKnown(NAME, most.source(), untold.reason());
        }
        if (beams.isEmpty()) {
            return new NotKnown(NAME, most.source(), "The transducer's frequencies and beams are not told.");
        }
        ThicknessHere.Told told = (ThicknessHere.Told) here;
        SkinPassage.Worst worst = new SkinPassage.Worst(Double.NEGATIVE_INFINITY, 0);
        double frequency = 0;
        for (SoundBeam beam : beams) {
            SkinPassage.Worst loss = passage(told.smallest(), told.largest(), beam)
                .of(Element.of(beam, water.speed()), Angle.ofRadians(Math.abs(incidence.radians())));
            if (loss.loss() > worst.loss()) {
                worst = loss;
                frequency = beam.frequency();
            }
        }
        String words = "At " + kilohertz(frequency) + " the skin takes up to " + FixedDecimal.format(worst.loss(), 1)
            + " dB each way, at " + millimetres(worst.thickness()) + " of " + solid().name() + " (typical values, over the whole beam; by "
            + told.by() + ", 10 % either way).";
        return Figure.atMost(NAME, worst.loss(), most, words, words + " Too little sound gets through.");
    }

    /** What the skin lets through at a beam's frequency, where its thickness reads from one to another [m]. */
    private SkinPassage passage(double smallest, double largest, SoundBeam beam) {
        return SkinPassage.of(solid(), smallest, largest, water, beam.frequency());
    }

    /** Loss of a beam by the angle at which it meets a skin that thick [m]. */
    public LossByIncidence losses(double smallest, double largest, SoundBeam beam) {
        return passage(smallest, largest, beam).by(Element.of(beam, water.speed()));
    }

    /** Why no skin of this material lets enough through, whatever its thickness; none where that depends. */
    public Optional<Finding> refusal(List<SoundBeam> beams) {
        return switch (skin.material()) {
            case SOLID_GLASS, ALUMINIUM, STEEL -> Optional.empty();
            case CARBON -> refused("Carbon laminate lets no sound through that can be relied on: no in-hull mount.");
            case PLANKED -> refused("Sound does not get through wood and its seams: no in-hull mount.");
            case PLYWOOD -> refused("Sound does not get through plywood, its glue lines and its grain: no in-hull mount.");
            case CORED_GLASS -> refused("The core stops the sound" + coreFigure(beams.stream().map(SoundBeam::frequency).toList())
                + ": no in-hull mount, unless the core is taken out and solid laminate laid in its place.");
        };
    }

    private static Optional<Finding> refused(String sentence) {
        return Optional.of(Ruling.refused(NAME, PRACTICE, sentence));
    }

    /** The best that may be hoped for with this core, which bond voids make worse. */
    private String coreFigure(List<Double> frequenciesHz) {
        if (frequenciesHz.isEmpty() || !(skin.layup().orElse(null) instanceof Layup.Sandwich sandwich)) {
            return "";
        }
        LayeredSkin layers = new LayeredSkin(List.of(new Layer(TypicalSolids.GLASS_POLYESTER, sandwich.outerSkin()),
            new Layer(sandwich.core().solid(), sandwich.coreThickness()),
            new Layer(TypicalSolids.GLASS_POLYESTER, sandwich.innerSkin())));
        double worst = 0;
        double where = 0;
        for (double frequency : frequenciesHz) {
            double loss = -10 * Math.log10(layers.transmission(water, water, frequency));
            if (loss > worst) {
                worst = loss;
                where = frequency;
            }
        }
        return ", about " + FixedDecimal.format(worst, 0) + " dB each way at " + kilohertz(where) + " with "
            + sandwich.core().words() + " (typical values)";
    }

    private Solid solid() {
        return switch (skin.material()) {
            case ALUMINIUM -> TypicalSolids.ALUMINIUM;
            case STEEL -> TypicalSolids.STEEL;
            default -> TypicalSolids.GLASS_POLYESTER;
        };
    }

    private static String kilohertz(double hertz) {
        return String.format(Locale.ROOT, "%s kHz", FixedDecimal.format(hertz / 1000, 0));
    }

    private static String millimetres(double metres) {
        return FixedDecimal.format(metres * 1000, 1) + " mm";
    }
}
