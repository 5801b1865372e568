package org.garboard.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.EvaluationResult;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule of {@link ArchitectureTest}, held against a class that breaks it and one that does not. */
class ArchitectureRulesCanFailTest {

    static Stream<Arguments> breaches() {
        return Stream.of(
            breach(ArchitectureTest.everyPackageBelongsToAModule, "org.garboard.elsewhere", "Object"),
            breach(ArchitectureTest.coreKnowsNoOtherModuleAndNoFormat, "org.garboard.hull", "org.garboard.tablefile.TableReading"),
            breach(ArchitectureTest.coreKnowsNoOtherModuleAndNoFormat, "org.garboard.hull", "org.garboard.drawing.sheets.DrawnSet"),
            breach(ArchitectureTest.coreKnowsNoOtherModuleAndNoFormat, "org.garboard.job", "org.apache.commons.csv.CSVParser"),
            breach(ArchitectureTest.coreKnowsNoOtherModuleAndNoFormat, "org.garboard.job", "jakarta.xml.bind.JAXBContext"),
            breach(ArchitectureTest.coreKnowsNoOtherModuleAndNoFormat, "org.garboard.job", "javax.xml.stream.XMLStreamWriter"),
            breach(ArchitectureTest.coreKnowsNoOtherModuleAndNoFormat, "org.garboard.siting", "picocli.CommandLine"),
            breach(ArchitectureTest.coreReadsAndPrintsNothing, "org.garboard.hull", "java.io.File"),
            breach(ArchitectureTest.importKnowsCoreOnly, "org.garboard.tablefile", "org.garboard.drawing.sheets.DrawnSet"),
            breach(ArchitectureTest.exportKnowsCoreOnly, "org.garboard.drawing", "org.garboard.tablefile.TableReading"),
            breach(ArchitectureTest.exportKnowsCoreOnly, "org.garboard.drawing", "org.garboard.exchange.FileHash"),
            breach(ArchitectureTest.onlyExchangeSeesTheGeneratedClasses, "org.garboard.cli", "org.garboard.exchange.xml.job.Job"),
            breach(ArchitectureTest.onlyExchangeBindsXml, "org.garboard.cli", "jakarta.xml.bind.JAXBContext"),
            breach(ArchitectureTest.exchangeDoesNotKnowTheCommandLine, "org.garboard.exchange", "picocli.CommandLine"),
            breach(ArchitectureTest.whoAsksCoreTellsOnHowManyProcessors, "org.garboard.siting", "java.util.concurrent.ExecutorService"),
            breach(ArchitectureTest.unitsStandAlone, "org.garboard.units", "org.garboard.offsets.Station"),
            breach(ArchitectureTest.geometryKnowsNoBoats, "org.garboard.geometry", "org.garboard.hull.Hull"),
            breach(ArchitectureTest.solidsKnowNoBoats, "org.garboard.solid", "org.garboard.hull.Hull"),
            breach(ArchitectureTest.offsetsKnowUnits, "org.garboard.offsets", "org.garboard.hull.Hull"),
            breach(ArchitectureTest.slipsAreSeenInOffsets, "org.garboard.slips", "org.garboard.hull.Hull"),
            breach(ArchitectureTest.hullComesFromOffsets, "org.garboard.hull", "org.garboard.siting.Site"),
            breach(ArchitectureTest.takeOffsAreLevelledAlongTheHull, "org.garboard.takeoff", "org.garboard.hydrostatics.Hydrostatics"),
            breach(ArchitectureTest.hydrostaticsComeFromTheHull, "org.garboard.hydrostatics", "org.garboard.lines.Comb"),
            breach(ArchitectureTest.linesComeFromTheHull, "org.garboard.lines", "org.garboard.hydrostatics.Hydrostatics"),
            breach(ArchitectureTest.craftIsAroundTheHull, "org.garboard.craft", "org.garboard.mount.Mount"),
            breach(ArchitectureTest.nothingInCoreKnowsWhatIsDecided, "org.garboard.job", "org.garboard.decision.Decision"),
            breach(ArchitectureTest.flowIsOfTheCraft, "org.garboard.flow", "org.garboard.siting.Site"),
            breach(ArchitectureTest.panelsKnowNoHull, "org.garboard.flow.panels", "org.garboard.hull.Hull"),
            breach(ArchitectureTest.doubleBodiesAreHulls, "org.garboard.flow.doublebody", "org.garboard.flow.streams.Streamline"),
            breach(ArchitectureTest.streamsRunOverDoubleBodies, "org.garboard.flow.streams", "org.garboard.flow.water.Water"),
            breach(ArchitectureTest.shadowsFallDownTheStream, "org.garboard.flow.shadow", "org.garboard.flow.panels.PanelFlow"),
            breach(ArchitectureTest.waterStandsAlone, "org.garboard.flow.water", "org.garboard.hull.Hull"),
            breach(ArchitectureTest.prismsPlaneInWater, "org.garboard.flow.planing", "org.garboard.hull.Hull"),
            breach(ArchitectureTest.attitudeIsOfTheHull, "org.garboard.flow.attitude", "org.garboard.siting.Site"),
            breach(ArchitectureTest.stepsTrailAir, "org.garboard.flow.steps", "org.garboard.siting.Site"),
            breach(ArchitectureTest.underWayJoinsTheFlow, "org.garboard.flow.underway", "org.garboard.siting.Site"),
            breach(ArchitectureTest.placesLieInTheFlow, "org.garboard.flow.place", "org.garboard.siting.Site"),
            breach(ArchitectureTest.layersGrowInWater, "org.garboard.flow.layer", "org.garboard.hull.Hull"),
            breach(ArchitectureTest.cavitationIsInWater, "org.garboard.flow.cavitation", "org.garboard.hull.Hull"),
            breach(ArchitectureTest.soundLeavesTheCraft, "org.garboard.acoustics", "org.garboard.mount.Mount"),
            breach(ArchitectureTest.laminatesStandInWater, "org.garboard.acoustics.laminate", "org.garboard.hull.Hull"),
            breach(ArchitectureTest.beamsComeFromTransducers, "org.garboard.acoustics.beam", "org.garboard.hull.Hull"),
            breach(ArchitectureTest.findingsStandAlone, "org.garboard.finding", "org.garboard.mount.Check"),
            breach(ArchitectureTest.skinLetsSoundThrough, "org.garboard.skin", "org.garboard.mount.Check"),
            breach(ArchitectureTest.roomsLieInTheCraft, "org.garboard.inside", "org.garboard.mount.Check"),
            breach(ArchitectureTest.supportsBearOnTheCraft, "org.garboard.handling", "org.garboard.mount.Check"),
            breach(ArchitectureTest.mountsKnowCraftAndHull, "org.garboard.mount", "org.garboard.siting.Site"),
            breach(ArchitectureTest.sitingKnowsMounts, "org.garboard.siting", "org.garboard.cutout.Pocket"),
            breach(ArchitectureTest.cutoutKnowsMountsButNoSites, "org.garboard.cutout", "org.garboard.siting.Site"));
    }

    @ParameterizedTest
    @MethodSource("breaches")
    void everyRuleFindsItsBreach(ArchRule rule, String place, String forbidden, @TempDir Path folder) throws IOException {
        assertTrue(evaluate(rule, place, forbidden, folder).hasViolation());
    }

    @ParameterizedTest
    @MethodSource("breaches")
    void noRuleObjectsToAClassThatKeepsToItself(ArchRule rule, String place, String forbidden, @TempDir Path folder) throws IOException {
        String known = rule == ArchitectureTest.everyPackageBelongsToAModule ? "org.garboard.units" : place;
        assertFalse(evaluate(rule, known, "java.util.List<String>", folder).hasViolation());
    }

    private static Arguments breach(ArchRule rule, String place, String forbidden) {
        return Arguments.of(rule, place, forbidden);
    }

    /** Compiles a class in that package that holds a field of that type, and holds the rule against it. */
    private static EvaluationResult evaluate(ArchRule rule, String place, String type, Path folder) {
        String source = "package " + place + "; class Probe { " + type + " field; }";
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        boolean compiled = compiler.getTask(null, null, null, List.of("-d", folder.toString(), "-proc:none"), null,
            List.of(new Source(source))).call();
        assertEquals(true, compiled, source);
        return rule.allowEmptyShould(false).evaluate(new ClassFileImporter().importPath(folder));
    }

    private static final class Source extends SimpleJavaFileObject {
        private final String text;

        Source(String text) {
            super(URI.create("string:///Probe.java"), Kind.SOURCE);
            this.text = text;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return text;
        }
    }
}
