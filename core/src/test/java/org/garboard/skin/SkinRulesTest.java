package org.garboard.skin;

import static org.garboard.skin.HullSkinTest.reading;
import static org.garboard.skin.HullSkinTest.skin;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.garboard.acoustics.beam.Element;
import org.garboard.acoustics.inhull.SkinPassage;
import org.garboard.acoustics.laminate.Fluid;
import org.garboard.acoustics.laminate.InHullLoss;
import org.garboard.acoustics.laminate.TypicalSolids;
import org.garboard.craft.Housing;
import org.garboard.craft.SoundBeam;
import org.garboard.finding.Figure;
import org.garboard.finding.Finding;
import org.garboard.finding.Finding.Answer;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SkinRulesTest {
    private static final Fluid SEA = new Fluid(1026, 1507);
    private static final Angle V = Angle.ofDegrees(18);
    private static final List<SoundBeam> TWO = List.of(new SoundBeam(50e3, Angle.ofDegrees(30), Angle.ofDegrees(30)),
        new SoundBeam(200e3, Angle.ofDegrees(12), Angle.ofDegrees(12)));

    @Test
    void exact_lossIsTheWorstOfAllReadingsAndFrequencies() {
        HullSkin skin = skin(SkinMaterial.SOLID_GLASS, null, reading(5, 0.4, 8), reading(5.1, 0.4, 11));
        Figure figure = (Figure) inHull(skin).at(5, 0.4, V, TWO);
        double worst = Math.max(
            SkinPassage.of(TypicalSolids.GLASS_POLYESTER, 0.008, 0.011, SEA, 50e3).of(Element.of(TWO.get(0), SEA.speed()), V).loss(),
            SkinPassage.of(TypicalSolids.GLASS_POLYESTER, 0.008, 0.011, SEA, 200e3).of(Element.of(TWO.get(1), SEA.speed()), V).loss());
        assertEquals(worst, figure.value(), 1e-12);
        assertEquals(Answer.NO, figure.answer());
        assertEquals(Answer.YES, inHull(skin).at(5, 0.4, Angle.ofDegrees(0), TWO).answer());
        Figure mirrored = (Figure) inHull(skin).at(5, 0.4, Angle.ofDegrees(-18), TWO);
        assertEquals(figure.value(), mirrored.value(), 1e-12);
    }

    @Test
    void law_aWiderRangeOfReadingsIsNeverBetter() {
        double narrow = InHullLoss.through(TypicalSolids.GLASS_POLYESTER, 0.010, SEA, V, 200e3).get(0).worst();
        assertTrue(InHullLoss.through(TypicalSolids.GLASS_POLYESTER, 0.005, 0.015, SEA, V, 200e3).get(0).worst() >= narrow - 1e-9);
    }

    @ParameterizedTest
    @EnumSource(value = SkinMaterial.class, names = {"CARBON", "PLANKED", "PLYWOOD"})
    void noInHullMountInWoodOrCarbon(SkinMaterial material) {
        Finding finding = inHull(skin(material, new Layup.Whole(0.012))).at(5, 0.4, V, TWO);
        assertEquals(Answer.NO, finding.answer());
        assertTrue(finding.sentence().contains("no in-hull mount"), finding.sentence());
    }

    @Test
    void aCoreIsRefusedWithItsFigure() {
        Layup cored = new Layup.Sandwich(0.003, Layup.Core.BALSA, 0.020, 0.003);
        Finding finding = inHull(skin(SkinMaterial.CORED_GLASS, cored)).at(5, 0.4, V, TWO);
        assertEquals(Answer.NO, finding.answer());
        assertEquals("The core stops the sound, about 56 dB each way at 200 kHz with end-grain balsa (typical values): no in-hull"
            + " mount, unless the core is taken out and solid laminate laid in its place.", finding.sentence());
    }

    @Test
    void thickSteelLetsTooLittleThrough() {
        Finding finding = inHull(skin(SkinMaterial.STEEL, new Layup.Whole(0.006))).at(5, 0.4, V, TWO);
        assertEquals(Answer.NO, finding.answer());
        assertTrue(finding.sentence().endsWith("Too little sound gets through."), finding.sentence());
    }

    @Test
    void whatIsNotToldIsNotKnown() {
        assertEquals(Answer.NOT_KNOWN, inHull(skin(SkinMaterial.SOLID_GLASS, null)).at(5, 0.4, V, TWO).answer());
        assertEquals(Answer.NOT_KNOWN, inHull(skin(SkinMaterial.SOLID_GLASS, new Layup.Whole(0.01))).at(5, 0.4, V, List.of()).answer());
        Finding core = inHull(skin(SkinMaterial.SOLID_GLASS, new Layup.Whole(0.02), reading(5, 0.4, 5))).at(5, 0.4, V, TWO);
        assertEquals(Answer.NOT_KNOWN, core.answer());
        assertEquals("A gauge reads 5.0 mm where 20.0 mm were laid up: that is a core, not a thin hull. Drill a pilot hole and look.",
            core.sentence());
    }

    @Test
    void exact_aSleeveMakesTheHoleGrow() {
        FittingRule apart = fitting(SkinMaterial.ALUMINIUM, Housing.BRONZE);
        assertTrue(apart.needsSleeve());
        assertEquals(0.029, apart.holeDiameter(), 1e-12);
        assertEquals(Answer.YES, apart.housingFits().answer());
        assertEquals("A fitting of bronze in aluminium needs an isolating sleeve, or it eats the hull: the hole grows to 29.0 mm.",
            apart.housingFits().sentence());
        assertFalse(fitting(SkinMaterial.STEEL, Housing.PLASTIC).needsSleeve());
        assertEquals(0.022, fitting(SkinMaterial.SOLID_GLASS, Housing.BRONZE).holeDiameter(), 1e-12);
        assertTrue(fitting(SkinMaterial.STEEL, Housing.STAINLESS_STEEL).needsSleeve());
    }

    @Test
    void plasticIsRefusedInPlanks() {
        assertEquals(Answer.NO, fitting(SkinMaterial.PLANKED, Housing.PLASTIC).housingFits().answer());
        assertEquals(Answer.YES, fitting(SkinMaterial.PLANKED, Housing.BRONZE).housingFits().answer());
        assertEquals(Answer.YES, fitting(SkinMaterial.PLYWOOD, Housing.PLASTIC).housingFits().answer());
        assertEquals(Answer.NOT_KNOWN, fitting(SkinMaterial.PLANKED, null).housingFits().answer());
        assertEquals(Answer.NOT_KNOWN, fitting(SkinMaterial.STEEL, null).housingFits().answer());
        assertEquals(Answer.YES, fitting(SkinMaterial.SOLID_GLASS, null).housingFits().answer());
    }

    @Test
    void exact_threadAgainstTheThickestSkinNear() {
        FittingRule rule = new FittingRule(skin(SkinMaterial.SOLID_GLASS, null, reading(5, 0.4, 8), reading(5.1, 0.4, 11)),
            Optional.of(Housing.BRONZE), 0.02);
        Figure figure = (Figure) rule.thread(5, 0.4, Optional.of(0.060), 0.018);
        assertEquals(31, figure.value(), 1e-9);
        assertEquals(Answer.YES, figure.answer());
        Figure tooShort = (Figure) rule.thread(5, 0.4, Optional.of(0.020), 0.018);
        assertEquals(Answer.NO, tooShort.answer());
        assertEquals("The stem of 20.0 mm is shorter than skin and block, 29.0 mm (by 2 readings within 300 mm)."
            + " A stem of at least 49.0 mm would serve.", tooShort.sentence());
        assertEquals(Answer.NOT_KNOWN, rule.thread(5, 0.4, Optional.empty(), 0.018).answer());
        assertEquals(Answer.NOT_KNOWN, rule.thread(8, 0.4, Optional.of(0.060), 0.018).answer());
    }

    @Test
    void exact_holeInOnePlank() {
        PlankLine seam = new PlankLine(PlankLine.Kind.SEAM, List.of(0.0, 6.0), List.of(0.30, 0.30));
        PlankLine butt = new PlankLine(PlankLine.Kind.BUTT, List.of(2.0, 2.0), List.of(0.30, 0.45));
        HullSkin skin = new HullSkin(SkinMaterial.PLANKED, Optional.empty(), List.of(), Optional.of(List.of(seam, seam.mirrored(), butt)),
            List.of());
        List<Finding> findings = PlankingRule.at(skin, 1.5, 0.375, 0.05);
        assertEquals(50, ((Figure) findings.get(0)).value(), 1e-9);
        assertEquals(475, ((Figure) findings.get(1)).value(), 1e-9);
        assertEquals(Double.POSITIVE_INFINITY, ((Figure) findings.get(2)).value());
        assertEquals(List.of(Answer.YES, Answer.YES, Answer.YES), findings.stream().map(Finding::answer).toList());
        assertEquals("The hole would cut a seam.", PlankingRule.at(skin, 1.5, -0.31, 0.05).get(0).sentence());
        assertEquals(Answer.NO, PlankingRule.at(skin, 1.9, 0.375, 0.05).get(1).answer());
        HullSkin untold = skin(SkinMaterial.PLANKED, null);
        assertEquals(List.of(Answer.NOT_KNOWN, Answer.NOT_KNOWN, Answer.NOT_KNOWN),
            PlankingRule.at(untold, 1.5, 0.375, 0.05).stream().map(Finding::answer).toList());
        assertEquals(List.of(), PlankingRule.at(skin(SkinMaterial.PLYWOOD, null), 1.5, 0.375, 0.05));
    }

    @Test
    void exact_measuredDeadriseOfBothSides() {
        assertEquals(Answer.YES, deadrise(20.9, 19.2, 20).answer());
        assertEquals(0.9, ((Figure) deadrise(20.9, 19.2, 20)).value(), 1e-9);
        Finding list = deadrise(22, 18, 20);
        assertEquals(Answer.NOT_KNOWN, list.answer());
        assertTrue(list.sentence().contains("lying over"), list.sentence());
        Finding other = deadrise(22, 22, 20);
        assertEquals(Answer.NOT_KNOWN, other.answer());
        assertTrue(other.sentence().contains("differ by more than 1 deg"), other.sentence());
        HullSkin oneSide = measured(new MeasuredDeadrise(5, 0.4, Optional.of(Angle.ofDegrees(20)), Optional.empty()));
        assertEquals(Answer.NOT_KNOWN, DeadriseRule.at(oneSide, 5, 0.4, Angle.ofDegrees(20)).answer());
        assertEquals(Answer.NOT_KNOWN, DeadriseRule.at(oneSide, 8, 0.4, Angle.ofDegrees(20)).answer());
    }

    /** On the centreline the plane under a footprint is level: no deadrise to hold a measured one against. */
    @Test
    void law_onTheCentrelineEachSidesDeadriseIsAskedFor() {
        HullSkin elsewhere = measured(new MeasuredDeadrise(5, 0.4, Optional.of(Angle.ofDegrees(20)), Optional.of(Angle.ofDegrees(20))));
        String onKeel = DeadriseRule.at(elsewhere, 8, 0, Angle.ofDegrees(0)).sentence();
        assertTrue(onKeel.contains("beside the keel") && !onKeel.contains("0.0 deg"), onKeel);
        String beside = DeadriseRule.at(elsewhere, 8, 0.4, Angle.ofDegrees(20)).sentence();
        assertTrue(beside.contains("compare with 20.0 deg."), beside);
    }

    @Test
    void law_whatIsMeasuredServesEitherSide() {
        HullSkin skin = measured(new MeasuredDeadrise(5, 0.4, Optional.of(Angle.ofDegrees(20)), Optional.of(Angle.ofDegrees(20))));
        assertEquals(Stream.of(Answer.YES, Answer.YES).toList(),
            Stream.of(0.4, -0.4).map(y -> DeadriseRule.at(skin, 5, y, Angle.ofDegrees(20)).answer()).toList());
    }

    private static Finding deadrise(double starboard, double port, double table) {
        return DeadriseRule.at(measured(new MeasuredDeadrise(5, 0.4, Optional.of(Angle.ofDegrees(starboard)), Optional.of(Angle.ofDegrees(port)))),
            5.1, 0.4, Angle.ofDegrees(table));
    }

    private static HullSkin measured(MeasuredDeadrise measured) {
        return new HullSkin(SkinMaterial.SOLID_GLASS, Optional.empty(), List.of(), Optional.empty(), List.of(measured));
    }

    private static InHullRule inHull(HullSkin skin) {
        return new InHullRule(skin, SEA, InHullRule.LOSS);
    }

    private static FittingRule fitting(SkinMaterial material, Housing housing) {
        return new FittingRule(skin(material, null), Optional.ofNullable(housing), 0.02);
    }
}
