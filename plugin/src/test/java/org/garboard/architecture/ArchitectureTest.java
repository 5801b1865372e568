package org.garboard.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Arrays;

/** Who may know whom. {@link ArchitectureRulesCanFailTest} shows that each rule can fail. */
@AnalyzeClasses(packages = "org.garboard", importOptions = {ImportOption.DoNotIncludeTests.class, ArchitectureTest.OfTheProgram.class})
class ArchitectureTest {
    static final String[] CORE = {
        "org.garboard.units..", "org.garboard.processors..", "org.garboard.geometry..", "org.garboard.solid..", "org.garboard.offsets..", "org.garboard.slips..", "org.garboard.hull..",
        "org.garboard.takeoff..", "org.garboard.appendage..", "org.garboard.hydrostatics..",
        "org.garboard.lines..", "org.garboard.craft..", "org.garboard.flow..",
        "org.garboard.acoustics..", "org.garboard.finding..", "org.garboard.skin..", "org.garboard.inside..", "org.garboard.handling..",
        "org.garboard.mount..", "org.garboard.siting..", "org.garboard.cutout..", "org.garboard.marking..", "org.garboard.job..", "org.garboard.decision..",
        "org.garboard.survey..", "org.garboard.revision.."};
    static final String[] IMPORT = {"org.garboard.tablefile..", "org.garboard.findingsfile..", "org.garboard.filetext.."};
    static final String[] EXPORT = {"org.garboard.drawing..", "org.garboard.meshfile..", "org.garboard.answer..", "org.garboard.report.."};
    static final String[] PLUGIN = {"org.garboard.cli..", "org.garboard.exchange..", "org.garboard.session.."};
    static final String[] JAVA = {"java..", "org.apache.commons.geometry..", "org.apache.commons.numbers..",
        "org.hipparchus..", "org.locationtech.jts.."};

    /** Tests of all modules ask other programs through a jar of core's tests. */
    static final class OfTheProgram implements ImportOption {
        @Override
        public boolean includes(Location location) {
            return !location.contains("/org/garboard/reader/") && !location.contains("/org/garboard/nonsense/");
        }
    }

    @ArchTest
    static final ArchRule everyPackageBelongsToAModule = classes().that(resideInAnyPackage("org.garboard.."))
        .should().resideInAnyPackage(join(CORE, IMPORT, EXPORT, PLUGIN))
        .because("a package that no list here names escapes the other rules");

    @ArchTest
    static final ArchRule coreKnowsNoOtherModuleAndNoFormat = classes().that().resideInAnyPackage(CORE)
        .should().onlyDependOnClassesThat().resideInAnyPackage(join(CORE, JAVA))
        .because("core knows neither CSV nor DXF, SVG, XML or the command line");

    @ArchTest
    static final ArchRule coreReadsAndPrintsNothing = noClasses().that().resideInAnyPackage(CORE)
        .should().dependOnClassesThat().resideInAnyPackage("java.io..", "java.nio.file..", "java.util.logging..")
        .orShould().accessField(System.class, "out").orShould().accessField(System.class, "err")
        .because("core is headless");

    @ArchTest
    static final ArchRule whoAsksCoreTellsOnHowManyProcessors = noClasses().that().resideInAnyPackage(CORE)
        .should().dependOnClassesThat().haveFullyQualifiedName("java.lang.Thread").orShould().dependOnClassesThat()
        .haveSimpleNameStartingWith("Executor").because("work side by side stays in the pool of the thread that asks");

    @ArchTest
    static final ArchRule importKnowsCoreOnly = noClasses().that().resideInAnyPackage(IMPORT)
        .should().dependOnClassesThat().resideInAnyPackage(join(EXPORT, PLUGIN));

    @ArchTest
    static final ArchRule exportKnowsCoreOnly = noClasses().that().resideInAnyPackage(EXPORT)
        .should().dependOnClassesThat().resideInAnyPackage(join(IMPORT, PLUGIN));

    @ArchTest
    static final ArchRule onlyExchangeSeesTheGeneratedClasses = noClasses().that(not(resideInAnyPackage("org.garboard.exchange..")))
        .should().dependOnClassesThat().resideInAnyPackage("org.garboard.exchange.xml..");

    @ArchTest
    static final ArchRule onlyExchangeBindsXml = noClasses().that(not(resideInAnyPackage("org.garboard.exchange..")))
        .should().dependOnClassesThat().resideInAnyPackage("jakarta.xml..", "org.glassfish..");

    @ArchTest
    static final ArchRule exchangeDoesNotKnowTheCommandLine = noClasses().that().resideInAnyPackage("org.garboard.exchange..")
        .should().dependOnClassesThat().resideInAnyPackage("org.garboard.cli..", "picocli..");

    @ArchTest
    static final ArchRule unitsStandAlone = only("units");

    @ArchTest
    static final ArchRule geometryKnowsNoBoats = only("geometry", "units");

    @ArchTest
    static final ArchRule solidsKnowNoBoats = only("solid", "geometry", "units");

    @ArchTest
    static final ArchRule offsetsKnowUnits = only("offsets", "geometry", "units");

    @ArchTest
    static final ArchRule slipsAreSeenInOffsets = only("slips", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule hullComesFromOffsets = only("hull", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule takeOffsAreLevelledAlongTheHull = only("takeoff", "hull", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule appendagesHangOnTheHull = only("appendage", "hull", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule hydrostaticsComeFromTheHull = only("hydrostatics", "appendage", "hull", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule linesComeFromTheHull = only("lines", "hull", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule craftIsAroundTheHull = only("craft", "appendage", "hull", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule flowIsOfTheCraft = only("flow", "processors", "craft", "hydrostatics", "appendage", "hull", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule panelsKnowNoHull = only("flow.panels", "processors");

    @ArchTest
    static final ArchRule doubleBodiesAreHulls = only("flow.doublebody", "flow.panels", "hydrostatics", "hull", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule streamsRunOverDoubleBodies = only("flow.streams", "flow.doublebody", "flow.panels", "hull", "geometry", "units");

    @ArchTest
    static final ArchRule shadowsFallDownTheStream = only("flow.shadow", "flow.streams", "craft", "hull", "geometry", "units");

    @ArchTest
    static final ArchRule waterStandsAlone = only("flow.water", "craft", "units");

    @ArchTest
    static final ArchRule prismsPlaneInWater = only("flow.planing", "flow.layer", "flow.water", "units");

    @ArchTest
    static final ArchRule attitudeIsOfTheHull = only("flow.attitude", "flow.planing", "flow.steps", "flow.shadow", "flow.water", "craft",
        "hydrostatics", "appendage", "hull", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule stepsTrailAir = only("flow.steps", "flow.planing", "flow.shadow", "hull", "geometry", "units");

    @ArchTest
    static final ArchRule underWayJoinsTheFlow = only("flow.underway", "flow.attitude", "flow.planing", "flow.layer", "flow.doublebody", "flow.streams",
        "flow.shadow", "flow.steps", "flow.water", "hydrostatics", "craft", "hull", "geometry", "units");

    @ArchTest
    static final ArchRule placesLieInTheFlow = only("flow.place", "flow.attitude", "flow.planing", "flow.steps", "flow.layer", "flow.cavitation", "flow.streams",
        "flow.water", "hydrostatics", "hull", "geometry", "units");

    @ArchTest
    static final ArchRule layersGrowInWater = only("flow.layer", "flow.water", "craft", "geometry", "units");

    @ArchTest
    static final ArchRule cavitationIsInWater = only("flow.cavitation", "flow.water", "craft", "geometry", "units");

    @ArchTest
    static final ArchRule soundLeavesTheCraft = only("acoustics", "flow.water", "craft", "hull", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule laminatesStandInWater = only("acoustics.laminate", "flow.water", "units");

    @ArchTest
    static final ArchRule beamsComeFromTransducers = only("acoustics.beam", "craft", "units");

    @ArchTest
    static final ArchRule findingsStandAlone = only("finding", "units");

    @ArchTest
    static final ArchRule skinLetsSoundThrough = only("skin", "finding", "acoustics", "flow.water", "craft", "hull", "units");

    @ArchTest
    static final ArchRule roomsLieInTheCraft = only("inside", "finding", "craft", "hull", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule supportsBearOnTheCraft = only("handling", "finding", "craft", "hull", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule mountsKnowCraftAndHull = only("mount", "appendage", "skin", "inside", "handling", "acoustics", "flow", "hydrostatics", "finding", "craft", "hull", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule sitingKnowsMounts = only("siting", "processors", "mount", "skin", "inside", "handling", "acoustics", "flow", "finding", "craft", "hull", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule cutoutKnowsMountsButNoSites = only("cutout", "solid", "skin", "inside", "flow.cavitation", "flow.water", "mount", "finding", "craft", "hull", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule markingTapesCutsOnTheHull = only("marking", "cutout", "mount", "lines", "appendage", "hull", "offsets", "geometry", "units");

    @ArchTest
    static final ArchRule nothingInCoreKnowsWhatIsDecided = noClasses().that(not(resideInAnyPackage("org.garboard.decision..")))
        .and().resideInAnyPackage(CORE).should().dependOnClassesThat().resideInAnyPackage("org.garboard.decision..");

    @ArchTest
    static final ArchRule surveysAreLaidOnTheHull = only("survey", "craft", "hull", "offsets", "geometry", "units");

    /** A package of core that knows only these others of ours. */
    static ArchRule only(String subject, String... known) {
        String[] allowed = new String[known.length + 1];
        for (int i = 0; i < known.length; i++) {
            allowed[i] = "org.garboard." + known[i] + "..";
        }
        allowed[known.length] = "org.garboard." + subject + "..";
        return noClasses().that().resideInAnyPackage("org.garboard." + subject + "..")
            .should().dependOnClassesThat(resideInAnyPackage("org.garboard..").and(resideOutsideOfPackages(allowed)));
    }

    private static String[] join(String[]... lists) {
        return Arrays.stream(lists).flatMap(Arrays::stream).toArray(String[]::new);
    }
}
