package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.Source;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.garboard.exchange.PartFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** On a V bottom that rises 1 in 10. */
class CutCommandTest {
    private static final String PART = "urn:garboard:part";

    @TempDir
    private Path folder;
    private Path job;

    @BeforeEach
    void copyTask() {
        job = SampleTask.in(folder).job();
    }

    private static Element part(Shell shell) throws Exception {
        assertEquals(0, shell.code(), shell.err());
        SchemaFactory factory = SchemaFactory.newDefaultInstance();
        Source[] sources = {schema("garboard-surface.xsd"), schema("garboard-record.xsd"), schema("garboard-part.xsd")};
        Schema schema = factory.newSchema(sources);
        schema.newValidator().validate(new StreamSource(new StringReader(shell.out())));
        return DocumentBuilderFactory.newDefaultNSInstance().newDocumentBuilder()
            .parse(new ByteArrayInputStream(shell.out().getBytes(StandardCharsets.UTF_8))).getDocumentElement();
    }

    private static StreamSource schema(String name) {
        return new StreamSource(PartFile.class.getResource(name).toExternalForm());
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** The solid holds what is told in litres, and a pocket takes the depth and ramps that are asked; PocketVolumeTest holds the figure itself. */
    @Test
    void law_aPocketIsAsDeepAndRampedAsAsked() throws Exception {
        Element shallow = (Element) part(Shell.run("cut", job, "--mount", "keel-pocket", "--at", "4,0", "--ramp", "0", "--depth", "60mm"))
            .getElementsByTagNameNS(PART, "pocket").item(0);
        Element deep = (Element) part(Shell.run("cut", job, "--mount", "keel-pocket", "--at", "4,0", "--ramp", "6", "--depth", "70mm"))
            .getElementsByTagNameNS(PART, "pocket").item(0);
        assertEquals(60, number(shallow, "depth_mm"), 1e-9);
        assertEquals(0, number(shallow, "ramp-ratio"), 1e-9);
        assertEquals(70, number(deep, "depth_mm"), 1e-9);
        assertEquals(6, number(deep, "ramp-ratio"), 1e-9);
        assertTrue(number(deep, "volume_litres") > number(shallow, "volume_litres"));
        assertTrue(number(deep, "fore-ramp_mm") > number(shallow, "fore-ramp_mm"));
    }

    /** What the mesh encloses, by its own corners, is the volume that is told; every edge is passed once each way. */
    @ParameterizedTest
    @CsvSource({"flush-through-hull,0.5", "through-hull-with-fairing-block,0.5", "in-hull,0.5", "keel-pocket,0"})
    void law_meshesAreClosed(String mount, String y) throws Exception {
        NodeList solids = part(Shell.run("cut", job, "--mount", mount, "--at", "4," + y)).getElementsByTagNameNS(PART, "solid");
        assertTrue(solids.getLength() > 0);
        for (int i = 0; i < solids.getLength(); i++) {
            Element solid = (Element) solids.item(i);
            String[] vertices = words(solid, "vertices_mm");
            double volume = 0;
            Map<String, Integer> passes = new HashMap<>();
            for (String triangle : words(solid, "triangles")) {
                String[] corners = triangle.split(",");
                double[][] p = new double[3][];
                for (int k = 0; k < 3; k++) {
                    p[k] = Arrays.stream(vertices[Integer.parseInt(corners[k])].split(",")).mapToDouble(Double::parseDouble).toArray();
                    passes.merge(corners[k] + " " + corners[(k + 1) % 3], 1, Integer::sum);
                    passes.merge(corners[(k + 1) % 3] + " " + corners[k], -1, Integer::sum);
                }
                volume += (p[0][0] * (p[1][1] * p[2][2] - p[1][2] * p[2][1]) - p[0][1] * (p[1][0] * p[2][2] - p[1][2] * p[2][0])
                    + p[0][2] * (p[1][0] * p[2][1] - p[1][1] * p[2][0])) / 6;
            }
            assertTrue(passes.values().stream().allMatch(count -> count == 0), solid.getAttribute("name"));
            assertEquals(number(solid, "volume_litres"), volume / 1e6, 1e-5, solid.getAttribute("name"));
        }
    }

    private static String[] words(Element solid, String name) {
        return solid.getElementsByTagNameNS(PART, name).item(0).getTextContent().trim().split("\\s+");
    }

    @Test
    void whatCannotBeBuiltIsToldWithWhatWorks() {
        Shell shell = Shell.run("cut", job, "--mount", "keel-pocket", "--at", "4,0", "--depth", "20mm");
        assertEquals(4, shell.code());
        assertEquals("", shell.out());
        assertEquals("keel pocket cannot be built: at a depth of 20.0 mm the face stands 14.3 mm proud of the skin at its outer edges; "
            + "what works: a depth of 35.0 mm or more\n", shell.err());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--mount keel --at 4,0.2|--mount is \"keel\"; it must be one of transom-mount, in-hull, flush-through-hull, through-hull-with-fairing-block, keel-pocket",
        "--mount flush-through-hull --at 4,0.2 --depth 1in|--depth, --ramp and --gap are of a keel pocket; leave them away with --mount flush-through-hull",
        "--mount keel-pocket --at 4,0 --height 1in|--height is of a fairing block; leave it away with --mount keel-pocket",
        "--mount keel-pocket --at 4,0 --depth -1|--depth is -1.0 m; it must be from 0.0 to 2.0 m"})
    void wrongUsage(String options, String message) {
        String[] words = ("cut " + job + " " + options).split(" ");
        Shell shell = Shell.run((Object[]) words);
        assertEquals(2, shell.code());
        assertTrue(shell.err().startsWith("garboard cut: " + message + "\n"), shell.err());
    }

    /** The same pocket as in a search's record, asked for at its place. */
    @Test
    void law_aSearchFindsThePocketThatIsCutThere() throws Exception {
        String found = pocketTag(Shell.run("site", job, "--xml").out());
        String x = found.replaceAll(".* x_m=\"([^\"]*)\".*", "$1");
        assertEquals(found, pocketTag(Shell.run("cut", job, "--mount", "keel-pocket", "--at", x + ",0").out()));
    }

    private static String pocketTag(String xml) {
        return xml.lines().filter(line -> line.contains("<pocket ")).findFirst().orElseThrow().strip();
    }
}
