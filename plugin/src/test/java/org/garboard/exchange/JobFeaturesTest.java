package org.garboard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Feature;
import org.garboard.craft.FeaturePlace;
import org.garboard.craft.FeaturePlace.Datum;
import org.garboard.craft.FeaturePlace.Measure;
import org.garboard.craft.Fitting;
import org.garboard.craft.Sides;
import org.garboard.craft.Strake;
import org.garboard.job.SitingRecord;
import org.junit.jupiter.api.Test;

/** Strakes and fittings in the job, and in the record. */
class JobFeaturesTest {
    private static final String STRAKE = """
        <strake name="Inner strake" side="both">
          <at><x unit="ft">5</x><y unit="ft">0.8</y></at>
          <at><ahead-of-after-end unit="mm">600</ahead-of-after-end><girth unit="mm">380</girth></at>
          <width unit="mm">60</width>
          <height unit="mm">30</height>
        </strake>
        """;
    private static final String INTAKE = """
        <fitting name="Sea chest" kind="intake" side="port">
          <at><x unit="m">7</x><y unit="m">0.25</y></at>
          <length unit="mm">200</length>
          <width unit="mm">120</width>
        </fitting>
        """;

    private static String with(String features) {
        return SampleJob.with("  <pocket>", "<features>\n" + features + "</features>\n  <pocket>");
    }

    @Test
    void readsStrakesAndFittings() {
        Optional<List<Feature>> features = ((JobReading.Read) SampleJob.read(with(STRAKE + INTAKE))).job().features();
        assertEquals(Optional.of(List.of(
            new Strake("Inner strake", Sides.BOTH, List.of(
                new FeaturePlace(Datum.AFT_OF_ORIGIN, 1.524, Measure.HALF_BREADTH, 0.24384),
                new FeaturePlace(Datum.AHEAD_OF_AFTER_END, 0.6, Measure.GIRTH, 0.38)), 0.06, 0.03),
            new Fitting("Sea chest", Fitting.Type.INTAKE, Sides.PORT,
                new FeaturePlace(Datum.AFT_OF_ORIGIN, 7, Measure.HALF_BREADTH, 0.25), 0.2, 0.12, Optional.empty()))), features);
        assertEquals(Optional.of(List.of()), ((JobReading.Read) SampleJob.read(with(""))).job().features());
        assertEquals(Optional.empty(), SampleJob.job().features());
    }

    @Test
    void everyKindOfFittingIsRead() {
        for (String kind : List.of("intake", "scoop", "tunnel", "anode", "drain", "shaft", "strut", "propeller", "rudder",
                "transducer", "trim-tab")) {
            Feature read = ((JobReading.Read) SampleJob.read(with(INTAKE.replace("\"intake\"", "\"" + kind + "\"")))).job()
                .features().orElseThrow().get(0);
            assertEquals(kind.replace('-', '_').toUpperCase(java.util.Locale.ROOT), ((Fitting) read).type().name());
        }
    }

    @Test
    void tellsWhatIsWrongWithThem() {
        assertEquals(List.of("job.xml:22:3: <width> is 1.2 m; it must be more than 0 and at most 1 m"),
            SampleJob.messages(with(STRAKE.replace("mm\">60", "m\">1.2"))));
        assertEquals(List.of("job.xml:20:25: <y> is -0.8 ft; it must be from 0 to 10 m"),
            SampleJob.messages(with(STRAKE.replace("0.8", "-0.8"))));
        assertEquals(List.of("job.xml:25:1: a feature named \"Inner strake\" stands in <features> already on that side; name each apart"),
            SampleJob.messages(with(STRAKE + STRAKE)));
        assertEquals(List.of("job.xml:20:3: <at> lacks one of <y>, <girth>"),
            SampleJob.messages(with(INTAKE.replace("<y unit=\"m\">0.25</y>", ""))));
        assertEquals(List.of("job.xml:19:1: attribute kind of <fitting>: \"intakes\" stands there; expected intake, scoop, jet-intake, tunnel, anode, drain, "
            + "shaft, strut, propeller, pod, rudder, skeg, fin, stabiliser, bilge-keel, keel-cooler, transducer, in-hull-transducer or trim-tab; did you mean intake?"),
            SampleJob.messages(with(INTAKE.replace("\"intake\"", "\"intakes\""))));
    }

    @Test
    void standInTheRecord() {
        SitingRecord bare = SampleRecord.withPocket();
        List<Feature> features = ((JobReading.Read) SampleJob.read(with(INTAKE))).job().features().orElseThrow();
        SitingRecord record = new SitingRecord(bare.job(), BottomFeatures.on(SampleHull.wedge(),
            Optional.of(features)), bare.sitings(), bare.advised(), bare.pocket(), bare.refusal());
        String xml = new String(RecordFile.write(List.of(new ToldDecision(record, "answer")), SampleRecord.SOURCE, SampleRecord.OUTPUTS), java.nio.charset.StandardCharsets.UTF_8);
        assertTrue(xml.contains("<features listed=\"true\">"), xml);
        assertTrue(xml.contains("<feature name=\"Sea chest\" kind=\"intake\" side=\"port\">"), xml);
        assertTrue(xml.contains("<cover>6.900000,0.190000 7.100000,0.190000 7.100000,0.310000 6.900000,0.310000</cover>"), xml);
    }
}
