package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A V bottom of slope 1 in 10, 8 m long, and a demo boat that planes. */
class TrimCommandTest {
    private static final Path DEMO = Path.of("src/main/demo");
    private static final String HEADING = "speed_kn,regime,trim_deg,wetted_keel_m,wetted_chine_m,mean_wetted_beams,stagnation_angle_deg,drag_n,"
        + "layer_at_transom_m,clear_height_at_transom_m,draught_m,froude_number,speed_coefficient,speed,load,mass_kg,basis";
    private static final String CRAFT = """
        <craft><drive kind="outboard" number="1"/>
        <weights><light unit="kg">998.6</light><full unit="kg">998.6</full>
        <centre-of-gravity><x unit="m">4</x><above-base unit="m">0.3</above-base></centre-of-gravity></weights>
        <speeds><speed name="drift" unit="kn">1</speed></speeds>
        <water><temperature unit="C">18</temperature><salinity unit="g/kg">0</salinity></water>
        </craft>
        """;

    @TempDir
    private Path folder;

    private Path job(String craft) throws IOException {
        return SampleTask.in(folder).with("<draught", craft + "<draught").job();
    }

    /**
     * Fresh water at 18 degrees is of 998.595 kg/m3: 1 m3, 0.125 m2 of section. The V holds 0.1 of it up to its chine, 1 m out and
     * 0.1 high; the rest stands 2 m wide: 0.1125 deep. Froude number 0.51444 / sqrt(9.80665 * 8).
     */
    @Test
    void exact_floatingWedge() throws IOException {
        Shell shell = Shell.run("trim", job(CRAFT));
        assertEquals(0, shell.code(), shell.err());
        List<String> rows = shell.outLines();
        assertEquals(HEADING + ",remarks", rows.get(0));
        String[] middle = rows.get(1).split(",", -1);
        assertEquals(List.of("1.00", "displacement"), List.of(middle[0], middle[1]));
        assertEquals(0, Double.parseDouble(middle[2]), 1e-3);
        assertEquals("", middle[3] + middle[4] + middle[5] + middle[6] + middle[7]);
        assertEquals(0.1125, Double.parseDouble(middle[10]), 1e-4, rows.get(1));
        assertEquals(0.058, Double.parseDouble(middle[11]), 5e-4);
        assertEquals(List.of("drift", "middle", "998.6", "worked out"), List.of(middle).subList(13, 17));
        assertEquals(List.of("middle", "light, bow down", "light, bow up"), rows.subList(1, rows.size()).stream()
            .map(row -> row.contains("\"") ? row.substring(row.indexOf('"') + 1, row.indexOf('"', row.indexOf('"') + 1)) : row.split(",")[14]).toList());
    }

    /** A row is a row: speeds of the command line go before the job's, sorted, each once, the job's names kept. */
    @Test
    void speedsOfTheCommandLineGoFirst() throws IOException {
        List<String> rows = Shell.run("trim", job(CRAFT), "--speeds", "2", "1", "2").outLines();
        assertEquals(List.of("1.00 drift", "2.00 "), rows.stream().filter(row -> row.contains(",middle,"))
            .map(row -> row.split(",")[0] + " " + row.split(",")[13]).toList());
    }

    @Test
    void outOfRangeIsSaidAndHasNoFigures() throws IOException {
        Shell shell = Shell.run("trim", job(CRAFT), "--speeds", "7");
        assertEquals(4, shell.code());
        String middle = shell.outLines().get(1);
        assertTrue(middle.startsWith("7.00,between displacement and planing,,,,,,,,,,,,,middle,998.6,,\"NOT KNOWN: Froude number 0.41 is above 0.40"), middle);
        assertTrue(shell.err().contains("7.0 kn, all loads: NOT KNOWN: Froude number 0.41 is above 0.40"), shell.err());
    }

    /** Fresh layers at a place; of a floating boat the share of the upper water too. */
    @Test
    void tellsOfAPlace() {
        Path job = DEMO.resolve("outboard-39").resolve("job.xml");
        List<String> rows = Shell.run("trim", job, "--speeds", "5", "28", "--at", "10,-0.3").outLines();
        assertEquals(HEADING + ",x_m,y_m,layer_m,clear_height_m,sweep_down_share,displacement_thickness_m,depth_m,bead_cavitates_kn,block_cavitates_kn,judged,remarks", rows.get(0));
        String[] slow = rows.stream().filter(row -> row.startsWith("5.00") && row.contains(",middle,")).findFirst().orElseThrow().split(",", -1);
        assertEquals(List.of("10.0000", "-0.3000"), List.of(slow).subList(17, 19));
        assertTrue(Double.parseDouble(slow[19]) > Double.parseDouble(slow[20]) && Double.parseDouble(slow[20]) > 0, slow[19]);
        double share = Double.parseDouble(slow[21]);
        assertTrue(share >= 0 && share <= 1, slow[21]);
        String[] fast = rows.stream().filter(row -> row.startsWith("28.00") && row.contains(",middle,")).findFirst().orElseThrow().split(",", -1);
        assertTrue(Double.parseDouble(fast[19]) < Double.parseDouble(fast[8]), "nearer to where the water meets the bottom the layer is thinner");
        assertEquals("", fast[21]);
        assertEquals(List.of("no", "yes"), List.of(slow[26], fast[26]), "from 8 knots up");
        assertTrue(Double.parseDouble(fast[22]) < Double.parseDouble(fast[20]), "the displacement thickness is less than a face needs");
        assertTrue(Double.parseDouble(fast[24]) > 28, "no cavitation at the bead: " + fast[24]);
        assertEquals(Double.parseDouble(fast[25]) <= 28, String.join(",", fast).contains("at the place a block as high as a face needs cavitates at this speed"), fast[25]);
    }

    /** Where she is dry no number stands, and the message says why. */
    @Test
    void aDryPlaceHasNoNumbers() {
        Shell shell = Shell.run("trim", DEMO.resolve("outboard-39").resolve("job.xml"), "--speeds", "28", "--at", "2,0.1");
        for (String row : shell.outLines().subList(1, 6)) {
            assertTrue(row.contains("2.0000,0.1000,,,,,,,,,"), row);
        }
        assertTrue(shell.err().contains("layer and cavitation at the place NOT KNOWN: x = 2.000 m lies ahead of the stagnation line, which is at x = "), shell.err());
    }

    /** Of a bottom with steps, what is known: the air behind each, also where the water ahead of them is not known. */
    @Test
    void drawsTheAirBehindSteps() throws IOException {
        Path pictures = folder.resolve("stepped");
        Shell.run("trim", DEMO.resolve("stepped-38").resolve("job.xml"), "--speeds", "50", "--pictures", pictures);
        String drawing = Files.readString(pictures.resolve("flow-50.0kn.svg"));
        for (String words : List.of("air behind step 9: its end NOT KNOWN", "air behind step 13: its end NOT KNOWN", "air behind a step and its margin: no site")) {
            assertTrue(drawing.contains(words), words);
        }
        assertFalse(drawing.contains("throws no shadow here: the bottom"), drawing);
    }

    /** One drawing for each speed; an earlier one is replaced, a stranger's file is not. */
    @Test
    void drawsAPictureForEachSpeed() throws IOException {
        Path job = DEMO.resolve("outboard-39").resolve("job.xml");
        Path pictures = folder.resolve("flow");
        for (int time = 0; time < 2; time++) {
            assertEquals(0, Shell.run("trim", job, "--speeds", "28", "--pictures", pictures).code());
        }
        String drawing = Files.readString(pictures.resolve("flow-28.0kn.svg"));
        for (String words : List.of("Inner strake", "Outer strake", "stagnation line", "stagnation line at an end of the band", "layer 40 mm", "At 28.0 kn, trim",
                "wetted by spray alone", "clean: solid water, no listed wake")) {
            assertTrue(drawing.contains(words), words);
        }
        String diagram = Files.readString(pictures.resolve("running.svg"));
        for (String words : List.of("TRIM [degrees, bow up]", "WETTED LENGTHS [m]", "keel", "chine")) {
            assertTrue(diagram.contains(words), words);
        }
        Files.writeString(pictures.resolve("flow-28.0kn.svg"), "mine");
        Shell refused = Shell.run("trim", job, "--speeds", "28", "--pictures", pictures);
        assertEquals(2, refused.code());
        assertEquals("mine", Files.readString(pictures.resolve("flow-28.0kn.svg")));
    }

    @Test
    void aPlaceOffTheSkinIsNamed() throws IOException {
        Shell shell = Shell.run("trim", job(CRAFT), "--at", "9,0");
        assertEquals(3, shell.code());
        assertEquals("--at 9.000,0.000 is off the skin, which runs from x = 0.000 m to 8.000 m\n", shell.err());
        assertEquals("", shell.out());
    }

    @Test
    void withoutACraftTheAnswerIsNo() {
        Path job = SampleTask.in(folder).job();
        Shell shell = Shell.run("trim", job);
        assertEquals(4, shell.code());
        assertEquals(job + ": how she runs is NOT KNOWN: the job has no <craft>; write her drive, weights and speeds\n", shell.err());
        assertEquals("", shell.out());
    }

    /** Without weights she lies even at the draught that the job tells, slow; faster nothing is known. */
    @Test
    void exact_withoutWeightsTheDraughtIsAsTold() throws IOException {
        Path job = job(CRAFT.replaceAll("(?s)<weights>.*</weights>", ""));
        Shell shell = Shell.run("trim", job);
        assertEquals(0, shell.code(), shell.err());
        String[] middle = shell.outLines().get(1).split(",", -1);
        assertEquals(0.4, Double.parseDouble(middle[10]), 1e-4);
        assertEquals(List.of("middle", "", "even keel at the draught that is told"), List.of(middle).subList(14, 17));
        assertEquals(List.of("bow down", "bow up"), shell.outLines().stream().skip(2).map(row -> row.split(",")[14]).toList());
        Shell fast = Shell.run("trim", job, "--speeds", "20");
        assertEquals(4, fast.code());
        assertTrue(fast.err().contains("20.0 kn, all loads: NOT KNOWN: where the bottom is wet is not known: the boat's mass is not told; "
            + "with it, or with trim and wetted keel both measured, it would be"), fast.err());
    }

    @Test
    void wrongUsageIsNamed() throws IOException {
        Path job = job(CRAFT);
        assertTrue(Shell.run("trim", job, "--speeds", "0").err().startsWith("garboard trim: --speeds is 0.00 kn; it must be more than 0 and at most 100\n"));
        Shell fast = Shell.run("trim", job, "--speeds", "-3");
        assertEquals(2, fast.code());
        assertTrue(Shell.run("trim", job, "--upper", "0").err().startsWith("garboard trim: --upper is 0.000 m; it must be more than 0 and at most 5\n"));
    }

    @Test
    void aCentreOfGravityOutsideTheBoatIsAFaultOfTheFile() throws IOException {
        Path job = job(CRAFT.replace("<x unit=\"m\">4<", "<x unit=\"m\">14<"));
        Shell shell = Shell.run("trim", job);
        assertEquals(3, shell.code());
        assertTrue(shell.err().matches("(?s)" + java.util.regex.Pattern.quote(job.toString())
            + ":[0-9]+:20: <x> is 14 m, which is outside the boat; it must be from 0\\.000 to 8\\.000 m\n"), shell.err());
        assertEquals(3, Shell.run("site", job).code());
    }

    /** Level water 0.1125 m above the V's keel; streamlines lie on the V, which rises 1 in 10 to a chine at 1 m. */
    @Test
    void exact_curvesOnAFloatingWedge() throws IOException {
        Path job = job(CRAFT);
        Shell shell = Shell.run("trim", job, "--curves");
        assertEquals(0, shell.code(), shell.err());
        List<String> rows = shell.outLines();
        assertEquals("speed_kn,load,curve,branch,layer_mm,x_m,y_m,z_m", rows.get(0));
        List<String[]> water = rows.stream().map(row -> row.split(",", -1)).filter(row -> row[2].equals("water")).toList();
        assertEquals(List.of("0.00000", "8.00000"), water.stream().map(row -> row[5]).toList());
        water.forEach(row -> assertEquals(0.1125, Double.parseDouble(row[7]), 1e-4));
        List<String[]> lines = rows.stream().map(row -> row.split(",", -1)).filter(row -> row[2].equals("streamline")).toList();
        assertTrue(lines.size() > 20, "points: " + lines.size());
        for (String[] row : lines) {
            double y = Double.parseDouble(row[6]);
            if (Math.abs(y) < 1) {
                assertEquals(0.1 * Math.abs(y), Double.parseDouble(row[7]), 2e-5, String.join(",", row));
            }
        }
        assertEquals("garboard trim: --curves are of the whole bottom; leave --at away",
            Shell.run("trim", job, "--curves", "--at", "4,0.2").err().lines().findFirst().orElse(""));
    }
}
