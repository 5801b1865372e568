package org.garboard.drawing.svg;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.SampleSheet;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Sheet;
import org.garboard.reader.OutsideReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SheetSvgTest {

    private static byte[] written(Sheet sheet) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SheetSvg.write(sheet, out);
        return out.toByteArray();
    }

    private static Document parsed(byte[] svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void exact_oneUnitIsOneMillimetre() throws IOException {
        Element root = parsed(written(SampleSheet.everything())).getDocumentElement();
        assertEquals("297mm", root.getAttribute("width"));
        assertEquals("210mm", root.getAttribute("height"));
        assertEquals("0 0 297 210", root.getAttribute("viewBox"));
    }

    @Test
    void exact_titleStandsFirstAndLayersAreGroups() throws IOException {
        Document document = parsed(written(SampleSheet.everything()));
        NodeList elements = document.getDocumentElement().getElementsByTagNameNS("*", "*");
        assertEquals("title", elements.item(0).getLocalName());
        assertEquals("desc", elements.item(1).getLocalName());
        Set<String> ids = new HashSet<>();
        List<String> groups = new ArrayList<>();
        for (int i = 0; i < elements.getLength(); i++) {
            Element element = (Element) elements.item(i);
            assertTrue(element.getAttribute("id").isEmpty() || ids.add(element.getAttribute("id")), "an id twice");
            assertFalse(element.hasAttribute("href") || element.hasAttributeNS("http://www.w3.org/1999/xlink", "href"));
            if (element.getLocalName().equals("g")) {
                groups.add(element.getAttribute("id"));
            }
        }
        assertEquals(List.of("HULL", "CUT", "POCKET", "CENTRE", "GRID", "DIM", "HATCH", "TEXT"), groups);
    }

    @Test
    void law_lettersAnyFileCanHoldComeBack() throws IOException {
        String note = "Gr\u00F6\u00DFe <&> \u2104 \uD83D\uDEA4";
        String svg = new String(written(SampleSheet.with("\u0001" + note + "\uFFFF")), StandardCharsets.UTF_8);
        NodeList texts = parsed(svg.getBytes(StandardCharsets.UTF_8)).getElementsByTagNameNS("*", "text");
        List<String> words = new ArrayList<>();
        for (int i = 0; i < texts.getLength(); i++) {
            words.add(texts.item(i).getTextContent());
        }
        assertTrue(words.contains(note), words.toString());
    }

    @Test
    void law_sameBytesOnAnyLocale() throws IOException {
        byte[] first = written(SampleSheet.everything());
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertArrayEquals(first, written(SampleSheet.everything()));
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void exact_outsideReaderFindsItWellFormed(@TempDir Path folder) throws IOException {
        OutsideReader.XMLLINT.require();
        Path file = folder.resolve("sheet.svg");
        Files.write(file, written(SampleSheet.everything()));
        OutsideReader.Answer answer = OutsideReader.XMLLINT.run(List.of("--noout", "--nonet", file.toString()));
        assertEquals("", answer.output());
        assertEquals(0, answer.exit());
    }

    /** At 254 pixels to the inch ten pixels are a millimetre. */
    @Test
    void exact_aHundredMillimetresMeasureSo(@TempDir Path folder) throws IOException {
        OutsideReader.RSVG.require();
        Sheet bar = new Sheet("Bar", "A bar of 100 mm", 297, 210, new Scale(1), 3.5, List.of(),
                List.of(new Line(Layer.BORDER, new Point(50, 100), new Point(150, 100))));
        Path file = folder.resolve("bar.svg");
        Path image = folder.resolve("bar.png");
        Files.write(file, written(bar));
        OutsideReader.Answer answer = OutsideReader.RSVG.run(
                List.of("-d", "254", "-p", "254", "-o", image.toString(), file.toString()));
        assertEquals(0, answer.exit(), answer.output());
        BufferedImage pixels = ImageIO.read(image.toFile());
        assertEquals(2970, pixels.getWidth());
        assertEquals(2100, pixels.getHeight());
        int dark = 0;
        for (int x = 0; x < pixels.getWidth(); x++) {
            dark += (pixels.getRGB(x, 1100) & 0xff) < 128 ? 1 : 0;
        }
        assertEquals(100.0, dark / 10.0, 0.1);
    }
}
