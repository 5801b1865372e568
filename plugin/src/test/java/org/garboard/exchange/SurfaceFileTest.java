package org.garboard.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.garboard.geometry.KnotVector;
import org.garboard.hull.Hull;
import org.garboard.hull.Panel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.SAXException;

class SurfaceFileTest {
    private static final FileHash TABLE = FileHash.of("offsets.csv", new byte[0]);

    @Test
    void writesWhatItsSchemaDescribes() throws Exception {
        validate(text(SampleHull.wedge()));
        validate(text(SampleHull.demo("outboard-39")));
    }

    @ParameterizedTest
    @ValueSource(strings = {" side=\"starboard\"", " sha256=\"[0-9a-f]{64}\"", "<knots-across>[^<]*</knots-across>", ",[0-9.]*(?=</row>)"})
    void itsSchemaRefusesAFileWithoutAPartOfIt(String part) {
        String text = text(SampleHull.wedge());
        String spoilt = text.replaceFirst(part, "");
        assertTrue(spoilt.length() < text.length());
        assertThrows(SAXException.class, () -> validate(spoilt));
    }

    /** By hand: four sites and more leave no inner knot beside the ends' neighbours; the keel lies at 0,0. */
    @Test
    void exact_aWedge() {
        String text = text(SampleHull.wedge());
        assertTrue(text.contains("<surface xmlns=\"urn:garboard:surface\" version=\"1\" program-version=\"1.2.3\" side=\"starboard\" within_m=\"0\">\n"
            + "    <table name=\"offsets.csv\" sha256=\"e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855\"/>\n"
            + "    <panel inner-line=\"Keel\" outer-line=\"Chine\" degree-along=\"3\" degree-across=\"3\">\n"
            + "        <knots-along_m>0 0 0 0 4 8 8 8 8</knots-along_m>\n"), text);
        SurfaceXml.Panel bottom = SurfaceXml.panels(bytes(SampleHull.wedge())).get(0);
        assertArrayEquals(new double[] {3, 0.5, 0.1}, bottom.at(3, 0.5), 1e-12);
        assertArrayEquals(new double[] {8, 1, 0.2}, bottom.at(8, 1), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(strings = {"outboard-22", "outboard-39", "stepped-38"})
    void law_everyNumberReadsBackToTheSameBits(String boat) {
        Hull hull = SampleHull.demo(boat);
        List<SurfaceXml.Panel> read = SurfaceXml.panels(bytes(hull));
        assertEquals(hull.panels().size(), read.size());
        for (int p = 0; p < read.size(); p++) {
            Panel panel = hull.panels().get(p);
            assertArrayEquals(panel.knotsAlong().toArray(), array(read.get(p).knotsAlong()));
            assertArrayEquals(panel.knotsAcross().toArray(), array(read.get(p).knotsAcross()));
            assertEquals(panel.knotsAlong().size(), read.get(p).poles().size());
            for (int i = 0; i < panel.knotsAlong().size(); i++) {
                assertEquals(panel.knotsAcross().size(), read.get(p).poles().get(i).size());
                for (int k = 0; k < panel.knotsAcross().size(); k++) {
                    // a zero has no sign in the file
                    double[] pole = {panel.knotsAlong().greville(i) + 0.0, panel.poleY(i, k) + 0.0, panel.poleZ(i, k) + 0.0};
                    assertArrayEquals(pole, array(read.get(p).poles().get(i).get(k)));
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"outboard-22", "outboard-39", "stepped-38"})
    void law_theBooksRecurrenceGivesTheSamePoints(String boat) {
        Hull hull = SampleHull.demo(boat);
        List<SurfaceXml.Panel> read = SurfaceXml.panels(bytes(hull));
        Random random = new Random(3);
        double[] core = new double[Panel.POINT_SIZE];
        for (int i = 0; i < 500; i++) {
            int p = i % read.size();
            KnotVector along = hull.panels().get(p).knotsAlong();
            double x = along.start() + random.nextDouble() * (along.end() - along.start());
            double v = random.nextDouble();
            hull.panels().get(p).evaluate(x, v, core, 0);
            assertArrayEquals(Arrays.copyOf(core, 3), read.get(p).at(x, v), 1e-12, "panel " + p + ", x " + x + ", v " + v);
        }
    }

    /** Three lengths of two panels; a step each between, as its two edges, and the transom's edge; validated. */
    @Test
    void exact_stepsAndTransomOfASteppedBoat() throws Exception {
        Hull hull = SampleHull.demo("stepped-38");
        String text = text(hull);
        validate(text);
        for (int length = 1; length <= 3; length++) {
            assertEquals(3, text.split(" length=\"" + length + "\"").length, "panels of length " + length);
        }
        assertEquals(5, text.split(" cut=\"true\"").length, "the second and the third length, cut by step and transom");
        assertTrue(text.contains("<step station=\"9\">"), text);
        assertTrue(text.contains("<step station=\"13\">"), text);
        assertTrue(text.contains("<lower_m>9.3,0,"), "the swept step begins 9.3 m aft on the keel line");
        assertTrue(text.contains("<transom-edge_m>"), text);
        assertTrue(!text(SampleHull.demo("outboard-39")).contains("transom-edge_m"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"outboard-22", "outboard-39"})
    void law_aPanelBeginsWhereItsNeighbourEnds(String boat) {
        List<SurfaceXml.Panel> panels = SurfaceXml.panels(bytes(SampleHull.demo(boat)));
        assertTrue(panels.size() > 1);
        for (int p = 1; p < panels.size(); p++) {
            assertEquals(panels.get(p - 1).outer(), panels.get(p).inner());
            for (double x = 0; x <= 6; x += 0.37) {
                assertArrayEquals(panels.get(p - 1).at(x, 1), panels.get(p).at(x, 0), 1e-12);
            }
        }
    }

    @Test
    void tellsHowFarItKeepsFromTheTable() {
        assertTrue(text(SampleHull.demo("outboard-39")).contains(" within_m=\"0\">"));
        // an eighth of an inch is the least count: 25.4 / 16 mm
        assertTrue(text(SampleHull.fairedDemo("outboard-39")).contains(" within_m=\"0.0015875\">"));
    }

    @Test
    void writesTheSameBytesOnAnyLocale() {
        byte[] first = bytes(SampleHull.wedge());
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertArrayEquals(first, bytes(SampleHull.wedge()));
        } finally {
            Locale.setDefault(before);
        }
    }

    private static double[] array(List<Double> numbers) {
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static byte[] bytes(Hull hull) {
        return SurfaceFile.write(hull, "1.2.3", TABLE);
    }

    private static String text(Hull hull) {
        return new String(bytes(hull), StandardCharsets.UTF_8);
    }

    private static void validate(String text) throws Exception {
        SchemaFactory.newDefaultInstance()
            .newSchema(SurfaceFileTest.class.getResource("garboard-surface.xsd"))
            .newValidator()
            .validate(new StreamSource(new StringReader(text)));
    }
}
