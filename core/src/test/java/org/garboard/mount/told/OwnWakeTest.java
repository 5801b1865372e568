package org.garboard.mount.told;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.BottomFeatures.FeatureList;
import org.garboard.craft.Drive;
import org.garboard.craft.Feature;
import org.garboard.craft.FeaturePlace;
import org.garboard.craft.Fitting;
import org.garboard.craft.Sides;
import org.garboard.craft.Transducer;
import org.garboard.hull.Hull;
import org.garboard.mount.Check;
import org.garboard.mount.FairedThroughHull;
import org.garboard.mount.Installation;
import org.garboard.mount.LaidBottom;
import org.garboard.mount.Mount;
import org.garboard.mount.PocketWish;
import org.garboard.mount.Surroundings;
import org.garboard.mount.TransomMount;
import org.garboard.mount.Verdict;
import org.garboard.mount.water.BottomWater;
import org.garboard.siting.Boats;
import org.garboard.siting.Mark;
import org.garboard.siting.Site;
import org.garboard.siting.Siting;
import org.garboard.siting.SitingTask;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** The wake of a fitting against propellers and intakes: a wedge of 20 deg, 6 m long, its transom at 6 m. */
class OwnWakeTest {
    private static final Hull HULL = Boats.prismaticV(20);
    private static final Mount BLOCK = new FairedThroughHull();
    private static final String WAKE = "its own wake";
    private static final String AHEAD = "ahead of the propellers";
    private static final Installation INSTALLATION = new Installation(new Transducer("body", 0.12, 0.08, 0.06, 0, 0.02, Angle.ofDegrees(0)),
        new PocketWish(OptionalDouble.empty(), 0.005, 8));
    private static final double HALF = INSTALLATION.block().width() / 2;

    private static Drive drive(Drive.Kind kind, int number, Optional<Double> diameter, Optional<Double> apart) {
        return new Drive(kind, number, Optional.of(Drive.Hand.COUNTER_ROTATING), diameter, Optional.empty(), apart);
    }

    private static Feature fitting(Fitting.Type type, Sides sides, double x, double y, double width) {
        return new Fitting("it", type, sides, new FeaturePlace(FeaturePlace.Datum.AFT_OF_ORIGIN, x, FeaturePlace.Measure.HALF_BREADTH, y), 0.2, width,
            Optional.of(0.0));
    }

    private static Site at(Mount mount, Optional<Drive> drive, FeatureList list, List<Feature> fittings, double x, double y) {
        BottomFeatures features = new BottomFeatures(fittings.stream().map(each -> each.on(HULL)).toList(), list);
        Surroundings around = new Surroundings(HULL.foot(), Optional.empty(), Optional.empty(), Optional.empty(), drive, BottomWater.UNTOLD,
            Optional.of(new LaidBottom(HULL, features)));
        return Siting.at(HULL, new SitingTask(0.5, INSTALLATION, List.of(mount), Mark.FIVE_MILLIMETRES, features, around), mount, x, y);
    }

    private static Check check(Site site, String name) {
        return site.checks().stream().filter(check -> check.name().startsWith(name)).findFirst()
            .orElseThrow(() -> new AssertionError(name + " among " + site.checks().stream().map(Check::name).toList()));
    }

    private static Check block(Optional<Drive> drive, Feature... fittings) {
        return check(at(BLOCK, drive, FeatureList.GIVEN, List.of(fittings), 4, 0.5), WAKE);
    }

    private static void assertNotKnown(String sentence, Check check) {
        assertEquals(Verdict.NOT_KNOWN, check.verdict());
        assertEquals(sentence, check.sentence());
    }

    /** Twin discs of 400 mm, 800 mm apart, 400 mm abaft of the transom: from 0.2 to 0.6 m out. At 2.4 m the wake has grown by its most, 150 mm. */
    @Test
    void exact_twinOutboards() {
        Optional<Drive> twin = Optional.of(drive(Drive.Kind.OUTBOARD, 2, Optional.of(0.4), Optional.of(0.8)));
        Check inTheDisc = block(twin);
        assertEquals(Verdict.NOT_MET, inTheDisc.verdict());
        Check outside = check(at(BLOCK, twin, FeatureList.GIVEN, List.of(), 4, 0.9), WAKE);
        assertEquals(1000 * (0.9 - HALF - 0.15 - 0.6), outside.demand(), 1e-6);
        assertTrue(outside.sentence().endsWith("Nearest to its wake: the outboard's propeller."), outside.sentence());
    }

    /** Of a triple and a quad the middle ones count too: axes at 0 and 0.7, and at 0.35 and 1.05 m. */
    @Test
    void exact_tripleAndQuadEachWithItsDisc() {
        for (int number = 1; number <= 4; number++) {
            Optional<Drive> many = Optional.of(drive(Drive.Kind.STERNDRIVE, number, Optional.of(0.1), number == 1 ? Optional.empty() : Optional.of(0.7)));
            double nearest = number % 2 == 1 ? number == 1 ? 0.5 : 0.2 : 0.15;
            assertEquals(1000 * (nearest - 0.05 - HALF - 0.15), block(many).demand(), 1e-6, number + " legs");
        }
    }

    @Test
    void law_whatIsNotToldOfTheDriveIsNotKnown() {
        String clear = " As far as it is known: Its wake passes clear of propellers and intakes.";
        assertNotKnown("How far apart the 2 engines stand is not told: their propellers were left out." + clear,
            block(Optional.of(drive(Drive.Kind.OUTBOARD, 2, Optional.of(0.4), Optional.empty()))));
        assertNotKnown("The size of the propeller is not told: it was left out." + clear,
            block(Optional.of(drive(Drive.Kind.OUTBOARD, 1, Optional.empty(), Optional.empty()))));
        assertNotKnown("What drives her is not told: propellers and jets were left out." + clear, block(Optional.empty()));
        assertNotKnown("The job does not list what is on the bottom: intakes were left out." + clear + " Nearest to its wake: the outboard's propeller.",
            check(at(BLOCK, Optional.of(drive(Drive.Kind.OUTBOARD, 1, Optional.of(0.1), Optional.empty())), FeatureList.MISSING, List.of(), 4, 0.9), WAKE));
    }

    /** A block 1 m ahead of an intake of 200 mm at 0.7 m: half its breadth, and 6 degrees from the stem on. */
    @Test
    void exact_anIntakeAbaft() {
        Optional<Drive> small = Optional.of(drive(Drive.Kind.OUTBOARD, 1, Optional.of(0.1), Optional.empty()));
        List<Feature> intake = List.of(fitting(Fitting.Type.INTAKE, Sides.STARBOARD, 5, 0.7, 0.2));
        Check check = check(at(BLOCK, small, FeatureList.GIVEN, intake, 3.9, 0.3), WAKE);
        assertEquals(1000 * Math.min(0.6 - 0.3 - HALF - Math.tan(Math.toRadians(6)), 0.3 - 0.05 - HALF - 0.15), check.demand(), 1e-6);
        assertEquals(Verdict.NOT_MET, check(at(BLOCK, small, FeatureList.GIVEN, intake, 3.9, 0.7), WAKE).verdict());
        assertEquals(Verdict.MET, check(at(BLOCK, small, FeatureList.GIVEN, intake, 5.2, 0.7), WAKE).verdict());
    }

    /** What is not told never hides what is: an intake right behind refuses. */
    @Test
    void law_aKnownIntakeRefusesThoughTheDriveIsNotTold() {
        assertEquals(Verdict.NOT_MET, block(Optional.empty(), fitting(Fitting.Type.INTAKE, Sides.STARBOARD, 5, 0.5, 0.1)).verdict());
        assertEquals(Verdict.NOT_MET, block(Optional.empty(), fitting(Fitting.Type.SCOOP, Sides.BOTH, 5, 0.5, 0.1)).verdict());
    }

    /** Propellers under the bottom stand in the list: a pod has one, a shaft ends in one. */
    @Test
    void law_podsAndShaftsByTheList() {
        for (Drive.Kind kind : List.of(Drive.Kind.POD, Drive.Kind.SHAFT)) {
            Fitting.Type type = kind == Drive.Kind.POD ? Fitting.Type.POD : Fitting.Type.PROPELLER;
            Optional<Drive> twin = Optional.of(drive(kind, 2, Optional.of(0.5), Optional.empty()));
            String left = " of the propellers of her 2 engines (" + kind.words() + "): what it does not list was left out.";
            assertNotKnown("The job lists 0" + left + " As far as it is known: Its wake passes clear of propellers and intakes.", block(twin));
            Site none = at(BLOCK, twin, FeatureList.GIVEN, List.of(), 2, 0.5);
            assertNotKnown("The job lists 0" + left, check(none, AHEAD));
            List<Feature> one = List.of(fitting(type, Sides.PORT, 5, 0.5, 0.5));
            assertNotKnown("The job lists 1" + left + " As far as it is known: The place lies well ahead of the propellers.",
                check(at(BLOCK, twin, FeatureList.GIVEN, one, 2, 0.5), AHEAD));
            List<Feature> both = List.of(fitting(type, Sides.BOTH, 5, 0.5, 0.5));
            assertEquals(Verdict.NOT_MET, check(at(BLOCK, twin, FeatureList.GIVEN, both, 2, 0.5), WAKE).verdict());
            assertEquals(Verdict.MET, check(at(BLOCK, twin, FeatureList.GIVEN, both, 2, 0.5), AHEAD).verdict());
        }
    }

    /** A jet draws through the bottom; it has no disc to keep ahead of. */
    @Test
    void law_jetsByTheirIntakes() {
        Optional<Drive> jets = Optional.of(new Drive(Drive.Kind.JET, 2, Optional.empty(), Optional.empty(), Optional.empty()));
        assertNotKnown("The job lists 0 of the intakes of her 2 engines (jet): what it does not list was left out."
            + " As far as it is known: Its wake passes clear of propellers and intakes.", block(jets));
        List<Feature> both = List.of(fitting(Fitting.Type.JET_INTAKE, Sides.BOTH, 5, 0.5, 0.3));
        Site behind = at(BLOCK, jets, FeatureList.GIVEN, both, 2, 0.5);
        assertEquals(Verdict.NOT_MET, check(behind, WAKE).verdict());
        assertTrue(check(behind, WAKE).sentence().endsWith("Nearest to its wake: jet's intake \"it\"."), check(behind, WAKE).sentence());
        assertTrue(behind.checks().stream().noneMatch(check -> check.name().equals(AHEAD)));
        assertEquals(Verdict.MET, check(at(BLOCK, jets, FeatureList.GIVEN, both, 2, 0.95), WAKE).verdict());
    }

    /** What hangs behind the transom has a wake too: 400 mm on it is 42 mm wider to either side than the body of 80 mm. */
    @Test
    void exact_aTransomMountBesideALargeDisc() {
        Optional<Drive> single = Optional.of(drive(Drive.Kind.OUTBOARD, 1, Optional.of(0.6), Optional.empty()));
        Check wake = check(at(new TransomMount(), single, FeatureList.GIVEN, List.of(), 6, 0.45), WAKE);
        assertEquals(1000 * (0.45 - 0.04 - 0.4 * Math.tan(Math.toRadians(6)) - 0.3), wake.demand(), 1e-6);
        assertEquals(Verdict.MET, wake.verdict());
    }
}
