package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.garboard.hull.Fit;
import org.garboard.hull.Hull;
import org.garboard.hull.Panel;
import org.garboard.offsets.OffsetTable;
import org.garboard.tablefile.TableFile;
import org.garboard.tablefile.TableReading;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Commands on a table that is drawn to the inside of the skin: they answer with the outside. */
class InsideTableTest {
    private static final double T = 0.03;
    /** Where bottom and side of the wedge, slopes 0.2 and 10, meet once both are moved out. */
    private static final double CHINE = 1 + T * (Math.sqrt(101) - Math.sqrt(1.04)) / 9.8;
    private static final double KEEL = -T * Math.sqrt(1.04);

    @TempDir
    private Path folder;
    private Path wedge;

    @BeforeEach
    void wedgeToTheInside() throws IOException {
        wedge = Shell.copy("/cli/wedge.csv", folder);
        put("to outside of skin", "to inside of planking,30");
    }

    private void put(String found, String instead) throws IOException {
        Files.writeString(wedge, Files.readString(wedge).replace(found, instead), StandardCharsets.UTF_8);
    }

    @Test
    void exact_tableSaysSurfaceThicknessAndOutsideFigures() {
        List<String> lines = Shell.run("table", wedge).outLines();
        assertEquals("to the inside of the planking, 30 mm thick; least count 1.000 mm", lines.get(1));
        assertEquals("girth and deadrise are those of the outside of the skin, drawn from x = 0.000 m to 8.000 m", lines.get(3));
        double sheer = 1.1 + T * 10 / Math.sqrt(101);
        double girth = CHINE * Math.sqrt(1.04) + (sheer - CHINE) * Math.sqrt(101);
        assertEquals(String.format(Locale.ROOT, "2,4.000000,5,%.6f,11.30993", girth),
            Shell.run("table", wedge, "--csv").outLines().get(3));
    }

    @Test
    void exact_probeAnswersWithTheOutside() {
        String[] cells = Shell.run("probe", wedge, "--at", "3,-0.5").outLines().get(1).split(",");
        assertEquals(KEEL + 0.1, Double.parseDouble(cells[2]), 1e-6);
        assertEquals(11.30993, Double.parseDouble(cells[3]), 1e-5);
        assertEquals(0.5 * Math.sqrt(1.04), Double.parseDouble(cells[5]), 1e-6);
    }

    @Test
    void exact_sectionIsThatOfTheOutside() {
        List<String> lines = Shell.run("lines", wedge, "--section", "4").outLines();
        assertEquals(String.format(Locale.ROOT, "section,1,4.000000,,4.000000,0.000000,%.6f", KEEL), lines.get(1));
        assertTrue(lines.contains(String.format(Locale.ROOT, "section,1,4.000000,,4.000000,%.6f,%.6f", CHINE, KEEL + 0.2 * CHINE)),
            lines.toString());
    }

    @Test
    void tellsWhatSkinCannotBeDrawn() throws IOException {
        put("Chine,1000,1000,1000,1000,1000", "Chine,30,30,30,30,30");
        put("Buttock 500,100,100,100,100,100\n", "");
        Shell shell = Shell.run("probe", wedge, "--at", "3,0.5");
        assertEquals("wedge.csv: the outside of the skin cannot be drawn at x = 8.000 m: at Keel the bottom is so steep that its"
            + " outsides meet only far below; give the half-siding of the keel\n", shell.err());
        assertEquals(3, shell.code());
    }

    /** The boat turned end for end in the file alone: nothing changes but where x is said to be from. */
    @Test
    void exact_stationsFromAft() throws IOException {
        put("Distance from 0", "Distance from AP");
        List<String> lines = Shell.run("table", wedge).outLines();
        assertEquals("5 stations, from x = 0.000 m to 8.000 m aft of station 4", lines.get(2));
        assertEquals("4,0.000000", Shell.run("table", wedge, "--csv").outLines().get(1).substring(0, 10));
    }

    /** From every place of the demo boats' bottoms 32 mm square to the inside end within 0.05 mm of the outside. */
    @ParameterizedTest
    @CsvSource({"outboard-22,EXACT", "outboard-22,WITHIN_ROUNDING", "outboard-39,EXACT", "outboard-39,WITHIN_ROUNDING"})
    void law_demoBoatsToTheInside(String boat, Fit fit) throws IOException {
        String file = Files.readString(Path.of("src/main/demo").resolve(boat).resolve("offsets.csv"));
        Hull inside = fit.draw(table(file));
        Hull outside = fit.draw(table(file.replace("to outside of skin", "to inside of planking,32 mm")));
        double[] in = new double[Panel.POINT_SIZE];
        double[] out = new double[Panel.POINT_SIZE];
        int seen = 0;
        for (double x = inside.forwardEnd(); x <= inside.afterEnd(); x += 0.0511) {
            for (double v = 0; v <= 1; v += 0.0213) {
                inside.panels().get(0).evaluate(x, v, in, 0);
                if (outside.evaluate(x + 0.032 * in[Panel.NX], in[Panel.Y] + 0.032 * in[Panel.NY], out, 0)) {
                    double z = in[Panel.Z] + 0.032 * in[Panel.NZ];
                    assertEquals(0, (out[Panel.Z] - z) * in[Panel.NZ], 5e-5, "from " + x + ", " + v);
                    seen++;
                }
            }
        }
        assertTrue(seen > 5000, "places seen: " + seen);
    }

    private static OffsetTable table(String text) {
        TableReading reading = TableFile.read("offsets.csv", text.getBytes(StandardCharsets.UTF_8));
        return ((TableReading.Read) reading).table();
    }
}
