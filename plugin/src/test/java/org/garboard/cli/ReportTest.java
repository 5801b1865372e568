package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.garboard.exchange.RecordFile;
import org.garboard.exchange.RecordReading;
import org.garboard.job.RecordedSiting;
import org.garboard.mount.Check;
import org.garboard.siting.MountSiting;
import org.garboard.siting.Site;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** What report.html tells, read back as the tree that a browser makes of it. */
class ReportTest {
    private static final String HOSTILE = "<script>alert(1)</script> & \"Söhne\" 'x' ]]> \uD83D\uDEA4";

    @TempDir
    private Path folder;
    private SampleTask task;
    private Path out;

    @BeforeEach
    void copyTask() throws IOException {
        task = SampleTask.in(Files.createDirectories(folder.resolve("task")));
        out = folder.resolve("drawings");
    }

    private Document run(int code) throws Exception {
        Shell shell = Shell.run("run", task.job(), "--out", out);
        assertEquals(code, shell.code(), shell.err());
        return DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder()
            .parse(new InputSource(new StringReader(Files.readString(out.resolve("report.html")))));
    }

    /** The picture of the advised mount: its scale, and each check that governs somewhere with its share of the bottom. */
    @Test
    void howWellTheBottomServesIsDrawn() throws Exception {
        Document page = run(0);
        List<String> words = texts(page, "text");
        assertTrue(words.contains("Test body: flush through-hull, advised"), words.toString());
        assertTrue(words.contains("met up to 1.0 | not met"), words.toString());
        assertTrue(words.stream().anyMatch(each -> each.matches("1 +[a-z].*, over \\d+\\.\\d %")), words.toString());
    }

    @Test
    void theAnswerStandsFirstThenTheCautions() throws Exception {
        Document page = run(0);
        List<String> headings = texts(page, "h2");
        assertEquals(List.of("Answer", "Cautions", "NOT KNOWN: look before cutting"), headings.subList(0, 3));
        List<String> terms = texts(page, "dt");
        assertEquals(List.of("Site", "Mount", "Governing check", "NOT KNOWN: look before cutting"), terms);
        List<String> said = texts(page, "dd");
        Site advised = record().place().orElseThrow();
        assertTrue(said.get(0).contains(String.format(Locale.ROOT, "%.3f m", advised.x())), said.get(0));
        assertEquals(advised.mount().words(), said.get(1));
        assertTrue(said.get(2).startsWith(advised.governing().orElseThrow().name()), said.get(2));
        for (Check check : advised.notKnown()) {
            assertTrue(said.get(3).contains(check.name()), check.name());
            assertTrue(texts(page, "li").contains(check.name() + ": " + check.sentence()), check.name());
        }
    }

    /** A table for each mount, a row for each check of its best or nearest place, with verdict and source as the record has them. */
    @Test
    void everyCheckHasItsRowAndSource() throws Exception {
        Document page = run(0);
        List<String> rows = texts(page, "tr");
        int told = 0;
        for (MountSiting siting : record().mounts()) {
            Site site = siting.sites().isEmpty() ? siting.nearest().orElseThrow() : siting.sites().get(0);
            for (Check check : site.checks()) {
                assertTrue(rows.stream().anyMatch(row -> row.startsWith(check.name() + check.verdict().words()) && row.endsWith(check.source())), check.toString());
                told++;
            }
        }
        assertTrue(told > 20, "checks: " + told);
    }

    @Test
    void refusedMountsTellTheNearestPlaceAndWhy() throws Exception {
        task.withoutAnswer();
        Document page = run(4);
        assertEquals(List.of("Site"), texts(page, "dt"));
        assertTrue(texts(page, "dd").get(0).startsWith("The answer is no"));
        List<String> items = texts(page, "li");
        for (MountSiting siting : record().mounts()) {
            siting.nearest().ifPresent(site -> site.governing().ifPresent(check ->
                assertTrue(items.stream().anyMatch(item -> item.startsWith(check.name()) && item.endsWith(check.sentence())), check.toString())));
        }
    }

    @Test
    void nothingIsFetchedAndNoIdStandsTwice() throws Exception {
        Document page = run(0);
        Set<String> ids = new HashSet<>();
        List<String> wanted = new ArrayList<>();
        for (Element element : elements(page, "*")) {
            String id = element.getAttribute("id");
            assertTrue(id.isEmpty() || ids.add(id), id);
            assertFalse(element.hasAttribute("src") || element.hasAttribute("style"), element.getTagName());
            assertTrue(element.getAttribute("href").isEmpty() || element.getAttribute("href").startsWith("#"), element.getAttribute("href"));
            wanted.addAll(List.of(element.getAttribute("aria-labelledby").split(" ")));
            wanted.add(element.getAttribute("href").replace("#", ""));
        }
        wanted.removeIf(String::isEmpty);
        assertTrue(ids.containsAll(wanted), wanted.toString());
        assertFalse(Files.readString(out.resolve("report.html")).matches("(?s).*(url\\(|@import|<script|<link|<img).*"));
    }

    /** Landmarks, one first heading, no level left out, tables with captions and scopes, pictures with title and description. */
    @Test
    void aScreenReaderFindsItsWay() throws Exception {
        Document page = run(0);
        for (String landmark : List.of("header", "main", "nav", "footer", "h1", "title")) {
            assertEquals(1, page.getElementsByTagName(landmark).getLength() - (landmark.equals("title") ? page.getElementsByTagName("svg").getLength() : 0), landmark);
        }
        int last = 1;
        for (Element element : elements(page, "*")) {
            if (element.getTagName().matches("h[1-6]")) {
                int level = element.getTagName().charAt(1) - '0';
                assertTrue(level <= last + 1, element.getTextContent());
                last = level;
            }
        }
        for (Element table : elements(page, "table")) {
            assertEquals(1, table.getElementsByTagName("caption").getLength());
            assertEquals("0", ((Element) table.getParentNode()).getAttribute("tabindex"));
            for (Element cell : children(table.getElementsByTagName("th"))) {
                assertTrue(List.of("col", "row").contains(cell.getAttribute("scope")), cell.getTextContent());
            }
        }
        assertTrue(page.getElementsByTagName("svg").getLength() >= 1);
        for (Element picture : elements(page, "svg")) {
            assertEquals("img", picture.getAttribute("role"));
            assertEquals(1, picture.getElementsByTagName("title").getLength());
            assertEquals(1, picture.getElementsByTagName("desc").getLength());
        }
    }

    @Test
    void wordsOfTheUserStayWords() throws Exception {
        task.with("boat name=\"Wedge\"", "boat name=\"" + HOSTILE.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;") + "\"");
        Document page = run(0);
        assertEquals(0, page.getElementsByTagName("script").getLength());
        assertTrue(texts(page, "h1").get(0).startsWith(HOSTILE), texts(page, "h1").get(0));
    }

    private RecordedSiting record() throws IOException {
        return ((RecordReading.Read) RecordFile.read("record.xml", Files.readAllBytes(out.resolve("record.xml")))).set().sitings().get(0);
    }

    private static List<String> texts(Document page, String element) {
        return elements(page, element).stream().map(each -> each.getTextContent().replaceAll("\n", "")).toList();
    }

    private static List<Element> elements(Document page, String element) {
        return children(page.getElementsByTagName(element));
    }

    private static List<Element> children(NodeList nodes) {
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }
}
