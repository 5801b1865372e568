package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.garboard.reader.OutsideReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Pages as a browser lays them out: on a telephone (390 px wide) and on a desk (1280 px). {@code measure.html} shows the page at both
 * widths and writes down what it finds. Pictures stay in {@code target/screens}, to be looked at.
 */
class ReportInBrowserTest {
    private static final Path SCREENS = Path.of("target/screens").toAbsolutePath();

    @TempDir
    private Path folder;

    @BeforeEach
    void browser() {
        OutsideReader.BROWSER.require();
    }

    @Test
    void aDemoBoatsReportFitsAndIsGreyButForTheHeatMap() throws IOException {
        Path demo = Path.of("src/main/demo/outboard-22/job.xml");
        assertEquals(0, Shell.run("run", demo, "--out", folder.resolve("out")).code());
        List<String> found = measured(folder.resolve("out/report.html"));
        assertFits(found);
        for (String width : List.of("390", "1280")) {
            assertTrue(number(found, width, "pictures") >= 4, found.toString());
            assertEquals(1, number(found, width, "coloured pictures"), found.toString());
            assertEquals(1, number(found, width, "coloured pictures reached"), found.toString());
            assertTrue(number(found, width, "least letters") >= 6.5, found.toString());
            assertEquals(number(found, width, "tables"), number(found, width, "reached by keyboard"), found.toString());
        }
        picture("report-390.png", 500, folder.resolve("out/measure.html"));
        picture("report-1280.png", 1280, folder.resolve("out/report.html"));
    }

    /** Names as long as a job may hold, without a blank where a line could break. */
    @Test
    void longNamesBreakNoPage() throws IOException {
        SampleTask task = SampleTask.in(folder).with("boat name=\"Wedge\"", "boat name=\"" + "W".repeat(60) + "\"");
        Shell run = Shell.run("run", task.job(), "--out", folder.resolve("out"));
        assertEquals(0, run.code(), run.err());
        assertFits(measured(folder.resolve("out/report.html")));
        Shell.run("fleet", task.job(), "--out", folder.resolve("many"));
        assertFits(measured(folder.resolve("many/summary.html")));
    }

    @Test
    void pagesAreValid() throws IOException {
        OutsideReader.VNU.require();
        SampleTask task = SampleTask.in(folder).with("boat name=\"Wedge\"", "boat name=\"&lt;b&gt; &amp;amp; &#x85; &quot;Söhne&quot;\"");
        Shell.run("fleet", task.job(), "--out", folder.resolve("many"));
        Path report = folder.resolve("many").resolve(folder.getFileName()).resolve("report.html");
        assertTrue(Files.exists(report), report.toString());
        OutsideReader.Answer answer = OutsideReader.VNU.run(List.of("--errors-only", report.toString(), folder.resolve("many/summary.html").toString()));
        assertEquals(new OutsideReader.Answer(0, ""), answer);
    }

    private static void assertFits(List<String> found) {
        for (String width : List.of("390", "1280")) {
            assertEquals(0, number(found, width, "beyond the right edge"), found.toString());
            assertEquals(0, number(found, width, "colours that are no grey"), found.toString());
        }
        assertFalse(found.isEmpty());
    }

    /** "390: pictures 3" and so on. */
    private List<String> measured(Path page) throws IOException {
        Path frame = page.resolveSibling("measure.html");
        try (InputStream in = ReportInBrowserTest.class.getResourceAsStream("/cli/measure.html")) {
            Files.writeString(frame, new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("PAGE", page.getFileName().toString()));
        }
        OutsideReader.Answer answer = OutsideReader.BROWSER.run(List.of("--headless", "--no-sandbox", "--disable-gpu", "--user-data-dir=" + folder.resolve("profile"),
            "--allow-file-access-from-files", "--virtual-time-budget=10000", "--dump-dom", frame.toUri().toString()));
        assertTrue(answer.output().contains("MEASURED"), answer.output());
        return Arrays.stream(answer.output().split("MEASURED")[1].split("<")[0].split(";")).map(String::strip).filter(each -> !each.isEmpty()).toList();
    }

    private static double number(List<String> found, String width, String what) {
        String begin = width + ": " + what + " ";
        return Double.parseDouble(found.stream().filter(each -> each.startsWith(begin)).findFirst()
            .orElseThrow(() -> new AssertionError(begin + "is not in " + found)).substring(begin.length()));
    }

    private void picture(String name, int width, Path page) throws IOException {
        Files.createDirectories(SCREENS);
        Files.deleteIfExists(SCREENS.resolve(name));
        OutsideReader.BROWSER.run(List.of("--headless", "--no-sandbox", "--disable-gpu", "--user-data-dir=" + folder.resolve("profile"),
            "--allow-file-access-from-files", "--window-size=" + width + ",4000", "--screenshot=" + SCREENS.resolve(name), page.toUri().toString()));
        assertTrue(Files.size(SCREENS.resolve(name)) > 20_000, name);
    }
}
