package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.garboard.exchange.RecordFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SiteCommandTest {
    private static final String HEADING =
        "rank,mount,side,x_m,y_m,girth_m,speed_kn,check,demand,limit,unit,utilisation,verdict,governing,source";

    @TempDir
    private Path folder;
    private SampleTask task;

    @BeforeEach
    void copyTask() {
        task = SampleTask.in(folder);
    }

    /** The wedge rises 1 in 10: its deadrise is atan(0.1) = 5.71059 deg, its element leans 3. */
    @Test
    void exact_placeOnAWedge() {
        Shell shell = Shell.run("site", task.job(), "--at", "4,0.5", "--csv");
        assertEquals(HEADING, shell.outLines().get(0));
        assertEquals(0, shell.code(), shell.err());
        List<String> lean = row(shell, "flush through-hull", "lean of the element");
        assertEquals(List.of("1", "flush through-hull", "starboard", "4.000000", "0.500000", "0.502494", "", "lean of the element", "2.711"),
            lean.subList(0, 9));
        assertEquals(List.of("", "keel pocket", "starboard"), row(shell, "keel pocket", "seat on the skin").subList(0, 3));
    }

    @Test
    void law_portMirrorsStarboard() {
        String starboard = Shell.run("site", task.job(), "--at", "4,0.5", "--csv").out();
        String port = Shell.run("site", task.job(), "--at", "4,-0.5", "--csv").out();
        assertEquals(starboard, port.replace(",port,", ",starboard,").replace(",-0.500000,", ",0.500000,"));
    }

    @Test
    void advisesTheFirstMountThatHasASite() throws Exception {
        String flush = Shell.run("site", task.job()).outLines().stream().filter(line -> line.startsWith("Advised")).findFirst().orElse("");
        assertTrue(flush.startsWith("Advised: flush through-hull, "), flush);
        task.with("<mounts>", "<mounts preference=\"strongest-signal\">");
        String pocket = Shell.run("site", task.job()).outLines().stream().filter(line -> line.startsWith("Advised")).findFirst().orElse("");
        assertTrue(pocket.startsWith("Advised: keel pocket, "), pocket);
    }

    @Test
    void saysWhatToLookAtBeforeCutting() {
        Shell shell = Shell.run("site", task.job());
        assertTrue(shell.out().contains("  LOOK BEFORE CUTTING, this is NOT KNOWN:\n    wet at every speed: "), shell.out());
        assertTrue(shell.out().contains("WHERE THE LIMITS COME FROM\n"), shell.out());
    }

    @Test
    void doesNotDependOnTheNumberOfThreads() {
        assertEquals(Shell.run("site", task.job(), "--threads", "1"), Shell.run("site", task.job(), "--threads", "7"));
    }

    @Test
    void endsWithFourAndTheNearestPlaceWhenTheAnswerIsNo() throws Exception {
        task.with("deg\">3", "deg\">0").with("    <keel-pocket/>\n", "");
        Shell shell = Shell.run("site", task.job());
        assertEquals(4, shell.code(), shell.err());
        assertTrue(shell.out().contains("  No site. Nearest: "), shell.out());
        assertTrue(shell.out().matches("(?s).*\n    lean of the element +5.7 deg  at most 4.0 deg +1.43  not met, governs\n.*"), shell.out());
        assertTrue(shell.out().contains("The answer is no: no mount of the job has a place on this bottom.\nNo flush through-hull: the nearest is "),
            shell.out());
        assertTrue(shell.out().endsWith(", where lean of the element (5.7 deg, at most 4.0 deg) is not met.\n"), shell.out());
    }

    @Test
    void endsWithFourWhereAPlaceThatIsAskedAboutServesNoMount() {
        Shell shell = Shell.run("site", task.job(), "--at", "50,0.5");
        assertEquals(4, shell.code());
        assertTrue(shell.out().contains("  Place: 50.000 m aft of station 0, 0.500 m to starboard of the centreline (not met)"), shell.out());
    }

    /** Ramps of 1:100 over a depth of 70 mm are 7 m each; the table is 8 m long. */
    @Test
    void saysWhenThereIsRoomNowhere() throws Exception {
        task.with("    <flush-through-hull/>\n", "")
            .with("</mounts>", "</mounts>\n  <pocket>\n    <depth unit=\"mm\">100</depth>\n    <ramp-ratio>100</ramp-ratio>\n  </pocket>");
        Shell shell = Shell.run("site", task.job());
        assertEquals("Wedge, hull number W-1: Test body\n\nKEEL POCKET\n"
            + "  Gains: Room for a large face on the keel line, level, in the cleanest water, with no drag of its own.\n"
            + "  Costs: The bottom is cut and rebuilt on the keel line, where it works hardest; structure to be approved.\n"
            + "  No site: nowhere on this bottom is there room for its whole footprint, with its ramps.\n\n"
            + "The answer is no: no mount of the job has a place on this bottom.\n"
            + "No keel pocket: nowhere on this bottom is there room for its whole footprint, with its ramps.\n", shell.out());
        assertEquals(4, shell.code());
    }

    @Test
    void tellsFaultsOfTheJobWithLineAndColumn() throws Exception {
        task.with("<draught unit=\"mm\">400", "<draught unit=\"mm\">0,4").with("<paper>A2", "<paper>A9");
        Shell shell = Shell.run("site", task.job());
        assertEquals(task.job() + ":5:3: <draught>: \"0,4\" is not a number; write a decimal point: 0.4\n"
            + task.job() + ":20:5: <paper>: \"A9\" stands there; expected A4, A3, A2, A1, ANSI-A, ANSI-B, ANSI-C or ANSI-D; did you mean A4?\n",
            shell.err());
        assertEquals(3, shell.code());
        assertEquals("", shell.out());
    }

    @Test
    void keepsClearOfWhatTheJobListsAndRefusesWhatIsOffTheSkin() throws Exception {
        String strake = "  <features>\n    <strake name=\"Strake\" side=\"both\">\n      <at><x unit=\"m\">2</x><y unit=\"m\">0.5</y></at>\n"
            + "      <at><ahead-of-after-end unit=\"m\">1</ahead-of-after-end><y unit=\"m\">0.5</y></at>\n"
            + "      <width unit=\"mm\">60</width>\n      <height unit=\"mm\">30</height>\n    </strake>\n  </features>\n  <drawing>";
        task.with("  <drawing>", strake);
        Shell on = Shell.run("site", task.job(), "--at", "4,0.5");
        assertEquals(4, on.code(), on.err());
        assertTrue(on.out().contains("room to strakes and fittings"), on.out());
        assertEquals(0, Shell.run("site", task.job(), "--at", "4,0.65", "--csv").code());
        task.with("<at><x unit=\"m\">2</x>", "<at><x unit=\"m\">20</x>");
        assertEquals(new Shell(3, "", "job.xml: lifting strake \"Strake\": its place 1, x = 20.000 m and y = 0.500 m, is off the skin, "
            + "which runs from x = 0.000 m to 8.000 m; correct its x, y or girth\n"), Shell.run("site", task.job()));
    }

    @Test
    void tellsAMissingTable() throws Exception {
        Files.delete(folder.resolve("wedge.csv"));
        assertEquals(new Shell(3, "", task.job()
            + ": the table file wedge.csv is not there; name a file in the folder of the job or below it\n"), Shell.run("site", task.job()));
    }

    @Test
    void followsNoLinkOutOfTheFolderOfTheJob(@TempDir Path elsewhere) throws Exception {
        Files.move(folder.resolve("wedge.csv"), elsewhere.resolve("wedge.csv"));
        Path link = Files.createSymbolicLink(folder.resolve("wedge.csv"), elsewhere.resolve("wedge.csv"));
        Shell shell = Shell.run("site", task.job());
        Files.delete(link);
        assertEquals(task.job() + ": the table file wedge.csv is a link that leads out of the folder of the job; put the table itself there, or give --allow-elsewhere\n",
            shell.err());
        assertEquals(3, shell.code());
    }

    /** An absolute path, one that goes up, a link: each answers as the table in the job's own folder does. */
    @Test
    void readsATableElsewhereWhereThatIsAllowed(@TempDir Path elsewhere) throws Exception {
        Shell own = Shell.run("site", task.job(), "--csv");
        Path table = Files.move(folder.resolve("wedge.csv"), elsewhere.resolve("wedge.csv"));
        Path link = Files.createSymbolicLink(folder.resolve("wedge.csv"), table);
        assertEquals(own, Shell.run("site", task.job(), "--csv", "--allow-elsewhere"));
        Files.delete(link);
        task.with("wedge.csv", table.toString());
        assertEquals(3, Shell.run("site", task.job(), "--csv").code());
        assertEquals(own, Shell.run("site", task.job(), "--csv", "--allow-elsewhere"));
        task.with(table.toString(), folder.toAbsolutePath().relativize(table.toAbsolutePath()).toString());
        assertEquals(3, Shell.run("site", task.job(), "--csv").code());
        assertEquals(own, Shell.run("site", task.job(), "--csv", "--allow-elsewhere"));
    }

    private static List<String> row(Shell shell, String mount, String check) {
        return shell.outLines().stream().map(line -> List.of(line.split(",", -1)))
            .filter(cells -> cells.contains(mount) && cells.contains(check)).findFirst().orElseThrow();
    }

    /** Of the same body twice the second keeps clear of the first, and each is told under its name. */
    @Test
    void placesSeveralTransducersInTheOrderOfTheJob() throws Exception {
        task.with("  <drawing>", SampleTask.SECOND + "  <drawing>");
        Shell shell = Shell.run("site", task.job());
        assertEquals(0, shell.code(), shell.err());
        assertTrue(shell.out().contains("\nTest body:\nAdvised: flush through-hull, "), shell.out());
        assertTrue(shell.out().contains("\nSecond body:\nAdvised: flush through-hull, "), shell.out());
        Shell csv = Shell.run("site", task.job(), "--csv");
        assertEquals(HEADING + ",transducer", csv.outLines().get(0));
        double[] first = place(csv, "Test body");
        double[] second = place(csv, "Second body");
        assertTrue(Math.abs(first[0] - second[0]) >= 0.12 + 0.05 || Math.abs(first[1] - second[1]) >= 0.079 + 0.05,
            first[0] + "," + first[1] + " and " + second[0] + "," + second[1]);
        Shell there = Shell.run("site", task.job(), "--at", first[0] + "," + first[1]);
        assertTrue(there.out().contains("Nearest: other transducer \"Test body\", "), there.out());
    }

    private static double[] place(Shell csv, String transducer) {
        List<String> row = csv.outLines().stream().filter(line -> line.startsWith("1,") && line.endsWith("," + transducer))
            .map(line -> List.of(line.split(","))).findFirst().orElseThrow();
        return new double[] {Double.parseDouble(row.get(3)), Double.parseDouble(row.get(4))};
    }

    @Test
    void xmlIsARecordWithoutFiles() {
        Shell shell = Shell.run("site", task.job(), "--xml");
        assertEquals(0, shell.code(), shell.err());
        assertTrue(RecordFile.outputs(shell.out().getBytes(StandardCharsets.UTF_8)) instanceof RecordFile.Outputs.Listed listed && listed.files().isEmpty());
        assertTrue(shell.err().startsWith("Advised: flush through-hull, "), shell.err());
        Shell both = Shell.run("site", task.job(), "--xml", "--csv");
        assertEquals(2, both.code());
        assertTrue(both.err().startsWith("garboard site: --xml is of the whole bottom and stands alone; leave --csv and --at away\n"), both.err());
    }

    @Test
    void drawsHowTheBottomServesEachMount() throws Exception {
        Path picture = folder.resolve("map.svg");
        Shell shell = Shell.run("site", task.job(), "--heat-map", picture);
        assertEquals(0, shell.code(), shell.err());
        String svg = Files.readString(picture);
        assertTrue(svg.contains("aria-label=\"Test body: flush through-hull, advised\"") && svg.contains("aria-label=\"Test body: keel pocket\""), svg);
        assertEquals(0, Shell.run("site", task.job(), "--heat-map", picture).code());
        Files.writeString(picture, "somebody's");
        Shell stranger = Shell.run("site", task.job(), "--heat-map", picture);
        assertEquals(2, stranger.code());
        assertEquals("somebody's", Files.readString(picture));
        assertEquals(2, Shell.run("site", task.job(), "--at", "4,0.5", "--heat-map", picture).code());
    }
}
