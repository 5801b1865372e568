package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables of one section throughout, 8 m long, each with other knuckles, from the file to the sheets. */
class KnuckledBoatsTest {
    private static final int STATIONS = 9;

    @TempDir
    private Path folder;
    private SampleTask task;

    @BeforeEach
    void copyTask() {
        task = SampleTask.in(folder);
    }

    /** @param rows "name=value in mm" of every station, heights then half-breadths */
    private void table(String heights, String halfBreadths) throws Exception {
        StringBuilder csv = new StringBuilder("TABLE OF OFFSETS,Knuckles\nUnits,mm,to outside of skin\nStation");
        for (int i = 0; i < STATIONS; i++) {
            csv.append(',').append(i);
        }
        csv.append("\nSpacing,1000\nHEIGHTS ABOVE BASE\n");
        rows(heights, csv);
        csv.append("HALF-BREADTHS FROM CENTRELINE\n");
        rows(halfBreadths, csv);
        Files.writeString(folder.resolve("wedge.csv"), csv.toString(), StandardCharsets.UTF_8);
    }

    private static void rows(String rows, StringBuilder csv) {
        for (String row : rows.split(";")) {
            String[] parts = row.split("=");
            csv.append(parts[0]).append((',' + parts[1]).repeat(STATIONS)).append('\n');
        }
    }

    /** Height at y = 0.5 m on a bottom of 1 in 5 in each of them, and the girth to there. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {
        "chine flat    |Sheer=1200;Chine outer=200;Chine inner=200;Keel=0 |Sheer=1300;Chine outer=1150;Chine inner=1000 |0.100 |0.509902",
        "reverse chine |Sheer=1200;Chine outer=160;Chine inner=200;Keel=0 |Sheer=1300;Chine outer=1150;Chine inner=1000 |0.100 |0.509902",
        "three chines  |Sheer=1200;Chine c=700;Chine b=400;Chine a=200;Keel=0 |Sheer=1500;Chine c=1450;Chine b=1350;Chine a=1000 |0.100 |0.509902",
        "flat keel     |Sheer=1200;Chine=180;Keel=0 |Sheer=1300;Chine=1000;Half-siding=100 |0.080 |0.507922",
        "box keel      |Sheer=1200;Chine=380;Top of keel=200;Keel=0 |Sheer=1300;Chine=1000;Top of keel=100;Half-siding=100 |0.280 |0.707922",
        "deep keel     |Sheer=1200;Chine=380;Rabbet=200;Keel bottom=0 |Sheer=1300;Chine=1000;Half-siding at rabbet=100 |0.280 |0.407922"})
    void exact_fromTableToSheets(String what, String heights, String halfBreadths, String z, String girth) throws Exception {
        table(heights, halfBreadths);
        String[] row = Shell.run("probe", folder.resolve("wedge.csv"), "--at", "4,-0.5").outLines().get(1).split(",");
        assertEquals(Double.parseDouble(z), Double.parseDouble(row[2]), 1e-6);
        assertEquals(Double.parseDouble(girth), Double.parseDouble(row[5]), 1e-6);
        assertEquals(11.30993, Double.parseDouble(row[3]), 1e-5);
        task.with("<draught unit=\"mm\">400", "<draught unit=\"mm\">600").with("deg\">3", "deg\">12");
        Shell run = Shell.run("run", task.job(), "--out", folder.resolve("out"));
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().startsWith("Advised: flush through-hull"), run.out());
        assertTrue(Files.exists(folder.resolve("out/sheet-1-siting.svg")));
        Shell lines = Shell.run("lines", folder.resolve("wedge.csv"), "--out", folder.resolve("lines.svg"));
        assertEquals(0, lines.code(), lines.err());
    }

    /** A strake of the table is kept clear of, told by name and drawn, and is no line of the skin. */
    @Test
    void exact_strakeOfTheTable() throws Exception {
        table("Sheer=1200;Strake inner=100;Strake outer=100;Chine=200;Keel=0",
            "Sheer=1300;Chine=1000;Strake inner=500;Strake outer=560");
        Shell on = Shell.run("site", task.job(), "--at", "4,0.52");
        assertTrue(on.out().contains("Nearest: lifting strake \"Strake\", both sides."), on.out());
        assertEquals(4, on.code());
        Shell probe = Shell.run("probe", folder.resolve("wedge.csv"), "--at", "4,-0.52", "4,0.6");
        assertEquals("x 4.000 m, y -0.520 m lies under the lifting strake \"Strake\": the row tells of the skin above it\n", probe.err());
        assertEquals(0, probe.code());
        assertEquals("2", Shell.run("table", folder.resolve("wedge.csv")).outLines().stream()
            .filter(line -> line.matches(" +[0-9]  .* to .*")).reduce((first, last) -> last).orElseThrow().strip().substring(0, 1), "panels");
        assertEquals(0, Shell.run("run", task.job(), "--out", folder.resolve("out")).code());
        assertTrue(Files.readString(folder.resolve("out/sheet-1-siting.svg")).contains("Strake (both sides)"));
        assertTrue(Files.readString(folder.resolve("out/record.xml")).contains("name=\"Strake\" kind=\"lifting strake\" side=\"both\""));
    }
}
