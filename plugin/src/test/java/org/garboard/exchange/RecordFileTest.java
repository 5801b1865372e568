package org.garboard.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.garboard.exchange.RecordFile.Outputs;
import org.garboard.job.SitingRecord;
import org.junit.jupiter.api.Test;
import org.xml.sax.SAXException;

class RecordFileTest {

    @Test
    void writesWhatItsSchemaDescribes() throws Exception {
        validate(text(SampleRecord.withPocket()));
        validate(text(SampleRecord.refused()));
    }

    @Test
    void itsSchemaRefusesARecordWithoutAHash() {
        String spoilt = text(SampleRecord.withPocket()).replaceFirst(" sha256=\"[0-9a-f]{64}\"", "");
        assertThrows(SAXException.class, () -> validate(spoilt));
    }

    @Test
    void writesInputsWithTheirHashes() {
        String text = text(SampleRecord.withPocket());
        // SHA-256 of no bytes at all [FIPS 180-4, as its example files give it]
        assertTrue(text.contains("<table name=\"tables/offsets.csv\" "
            + "sha256=\"e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855\"/>"), text);
    }

    @Test
    void writesEveryCheckWithItsFigures() {
        String text = text(SampleRecord.withPocket());
        assertTrue(text.contains("<check name=\"flatness under the footprint\" verdict=\"met\" sense=\"at most\" demand=\"1.235\" "
            + "limit=\"2.000\" unit=\"mm\" utilisation=\"0.6173\" governing=\"true\" source=\"common practice, no source\">"
            + "the skin lies within 1.2 mm of a plane; 2.0 mm may be</check>"), text);
        assertTrue(text.contains("<check name=\"room inside\" verdict=\"NOT KNOWN\" sense=\"known only\" governing=\"false\" "
            + "source=\"common practice, no source\">look before cutting</check>"), text);
        assertTrue(text.contains("utilisation=\"INF\" governing=\"true\""), text);
    }

    @Test
    void writesRegionsAndPocket() {
        String text = text(SampleRecord.withPocket());
        assertTrue(text.contains("<region area_m2=\"0.245000\" side=\"both\">"), text);
        assertTrue(text.contains("<outline>1.000000,0.000000 2.000000,0.000000 2.000000,0.500000</outline>"), text);
        assertTrue(text.contains("depth_mm=\"50.800\" face-depth_mm=\"8.800\" wall-height_mm=\"20.000\""), text);
        assertTrue(text.contains("volume_litres=\"4.321000\""), text);
        assertTrue(text.contains("<developed-opening>-0.100000,0.000000 0.000000,0.054000 0.000000,-0.054000</developed-opening>"), text);
    }

    @Test
    void writesARefusalWithItsMarks() {
        String text = text(SampleRecord.refused());
        assertTrue(text.contains("<pocket-refused>the keel pocket has no site &amp; no depth &lt; 10 mm</pocket-refused>"), text);
        assertTrue(text.contains("<answer preference=\"least-invasive\">no</answer>"), text);
        assertTrue(text.contains("<refused>sheet 4 (pocket): it does not fit; a larger sheet</refused>"), text);
    }

    /** The element alone is a surface file but for its prefix and its place on the line. */
    @Test
    void holdsTheSurfaceAsItsFileDoes() {
        String file = new String(SurfaceFile.write(SampleHull.wedge(), "1.2.3", SampleRecord.SOURCE.table()), StandardCharsets.UTF_8);
        String record = text(SampleRecord.withPocket());
        String element = record.substring(record.indexOf("<hull:surface"), record.indexOf("    <outputs>")).replace("hull:", "").replace("\n    ", "\n");
        assertEquals(file.substring(file.indexOf("<surface")).replace(" xmlns=\"urn:garboard:surface\"", ""), element);
        assertTrue(record.contains("<record xmlns=\"urn:garboard:record\" xmlns:hull=\"urn:garboard:surface\" version=\"1\""), record);
        assertFalse(record.contains(SurfaceFile.BEGINNING));
        assertTrue(file.contains(SurfaceFile.BEGINNING));
    }

    @Test
    void refusesARecordTooLargeToBeOne() {
        assertEquals("record.xml:1:1: the file has more than 16777216 bytes; no record file needs that",
            ((Outputs.Unreadable) RecordFile.outputs(new byte[RecordFile.MOST_BYTES + 1])).fault().message());
    }

    @Test
    void writesTheSameBytesOnAnyLocale() {
        byte[] first = bytes(SampleRecord.withPocket());
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertArrayEquals(first, bytes(SampleRecord.withPocket()));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void readsBackItsListOfFiles() {
        assertEquals(new Outputs.Listed(SampleRecord.OUTPUTS.files()), RecordFile.outputs(bytes(SampleRecord.withPocket())));
    }

    @Test
    void saysWhyAListCannotBeRead() {
        String other = text(SampleRecord.refused()).replace(" version=\"1\"", " version=\"7\"");
        assertEquals("record.xml:2:1: version \"7\" of the record file is not known to this program, which reads version \"1\"; "
            + "use the program that wrote it, or make the record anew with garboard run", fault(other));
        assertEquals("record.xml:1:1: this is a <job> file; expected <record xmlns=\"urn:garboard:record\" version=\"1\">", fault("<job/>"));
    }

    private static String fault(String text) {
        return ((Outputs.Unreadable) RecordFile.outputs(text.getBytes(StandardCharsets.UTF_8))).fault().message();
    }

    private static byte[] bytes(SitingRecord decided) {
        String answer = decided.advised().isPresent() ? "yes" : "no";
        return RecordFile.write(List.of(new ToldDecision(decided, answer)), SampleRecord.SOURCE, SampleRecord.OUTPUTS);
    }

    private static String text(SitingRecord decided) {
        return new String(bytes(decided), StandardCharsets.UTF_8);
    }

    private static void validate(String text) throws Exception {
        SchemaFactory.newDefaultInstance()
            .newSchema(RecordFileTest.class.getResource("garboard-record.xsd"))
            .newValidator()
            .validate(new StreamSource(new StringReader(text)));
    }
}
