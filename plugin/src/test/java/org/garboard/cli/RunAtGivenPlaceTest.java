package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.garboard.exchange.RecordFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sheets of a place that the yard gives, on a V bottom that rises 1 in 10. */
class RunAtGivenPlaceTest {
    @TempDir
    private Path folder;
    private Path job;
    private Path out;

    @BeforeEach
    void copyTask() throws IOException {
        job = SampleTask.in(Files.createDirectories(folder.resolve("task"))).job();
        out = folder.resolve("drawings");
    }

    private Shell run(String options) {
        return Shell.run((Object[]) ("run " + job + " --out " + out + " " + options).split(" "));
    }

    private String read(String name) throws IOException {
        return Files.readString(out.resolve(name));
    }

    /** The pocket of the record is the one that {@code cut} makes there, and every sheet says whose place it is. */
    @Test
    void law_drawsThePocketThatIsCutThere() throws Exception {
        Shell shell = run("--mount keel-pocket --at 4.2,0 --depth 70mm --ramp 4");
        assertEquals(4, shell.code(), shell.err());
        assertTrue(shell.out().startsWith("Given by the yard, not advised: keel pocket, 4.200 m aft of station 0, on the centreline.\n"), shell.out());
        assertTrue(shell.out().contains("NOT MET there: air trapped in the recess ("), shell.out());
        String cut = Shell.run("cut", job, "--mount", "keel-pocket", "--at", "4.2,0", "--depth", "70mm", "--ramp", "4").out();
        assertEquals(pocket(cut), pocket(read("record.xml")));
        assertTrue(read("record.xml").contains("chosen-by=\"yard\""));
        SchemaFactory schemas = SchemaFactory.newDefaultInstance();
        schemas.newSchema(new StreamSource[] {schema("garboard-surface.xsd"), schema("garboard-record.xsd")})
            .newValidator().validate(new StreamSource(out.resolve("record.xml").toFile()));
        for (String sheet : new String[] {"sheet-1-siting.svg", "sheet-2-marking-out.svg", "sheet-4-pocket.svg", "sheet-7-check.svg"}) {
            assertTrue(read(sheet).contains("PLACE GIVEN BY THE YARD - NOT TO BE CUT, 1 check is NOT MET, see sheet 1"), sheet);
        }
        assertTrue(read("sheet-1-siting.dxf").contains("GIVEN by the"), "in the table of sites, wherever its lines break");
        assertTrue(read("report.html").contains("Given by the yard, not advised"));
    }

    private static StreamSource schema(String name) {
        return new StreamSource(RecordFile.class.getResource(name).toExternalForm());
    }

    private static String pocket(String xml) {
        return xml.lines().filter(line -> line.contains("<pocket ")).findFirst().orElseThrow().strip();
    }

    /** Beside the keel line, closer to it than is allowed, and farther off. */
    @Test
    void aCheckThatIsNotMetStandsOnEverySheet() throws IOException {
        Shell close = run("--mount flush-through-hull --at 4,-0.06");
        assertEquals(4, close.code(), close.err());
        assertTrue(close.out().contains("NOT MET there: room to the keel line ("), close.out());
        assertTrue(read("sheet-7-check.svg").contains("NOT MET: room to the keel line"));
        Shell clear = run("--mount flush-through-hull --at 7.5,-0.115");
        assertEquals(0, clear.code(), clear.err());
        assertTrue(clear.out().contains("Every check that can be made is met there."), clear.out());
        for (String sheet : new String[] {"sheet-1-siting.svg", "sheet-2-marking-out.svg", "sheet-7-check.svg"}) {
            assertTrue(read(sheet).contains("PLACE GIVEN BY THE YARD - not to be cut until the checks are signed"), sheet);
        }
    }

    @Test
    void whatCannotBeBuiltThereIsToldAndNothingWritten() {
        Shell shell = run("--mount keel-pocket --at 4,0 --depth 20mm");
        assertEquals(4, shell.code());
        assertEquals("keel pocket cannot be built: at a depth of 20.0 mm the face stands 14.3 mm proud of the skin at its outer edges; "
            + "what works: a depth of 35.0 mm or more\n", shell.err());
        Shell off = run("--mount flush-through-hull --at 40,0.2");
        assertEquals(4, off.code());
        assertTrue(off.err().startsWith("flush through-hull cannot be built: at x = 40.000 m, y = 0.200 m seat on the skin: "), off.err());
        assertFalse(Files.exists(out));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--at 4,0|--mount is missing; a given place is told by --mount and --at together",
        "--mount keel-pocket|--at is missing; a given place is told by --mount and --at together",
        "--depth 60mm|--mount is missing; a given place is told by --mount and --at together"})
    void halfAPlaceIsWrongUsage(String options, String message) {
        Shell shell = run(options);
        assertEquals(2, shell.code());
        assertTrue(shell.err().startsWith("garboard run: " + message + "\n"), shell.err());
    }

    /** Of a job with two, the one that is named is drawn; the other is where the job's own run advises it. */
    @Test
    void oneOfSeveralTransducersIsTold() throws IOException {
        new SampleTask(job).with("  <drawing>", SampleTask.SECOND + "  <drawing>");
        String place = "--mount flush-through-hull --at 7.5,-0.115";
        Shell unnamed = run(place);
        assertEquals(2, unnamed.code());
        assertTrue(unnamed.err().startsWith("garboard run: --transducer is missing; the job tells 2, name one of them: \"Test body\", \"Second body\"\n"), unnamed.err());
        assertFalse(Files.exists(out));
        Object[] second = {"run", job, "--out", out, "--mount", "flush-through-hull", "--at", "7.5,-0.115", "--transducer", "Second body"};
        Shell shell = Shell.run(second);
        assertTrue(shell.out().contains("Drawn is Second body alone; the other transducers of the job are taken to be where they are advised"), shell.out() + shell.err());
        String record = read("record.xml");
        assertTrue(record.contains("Second body") && read("sheet-1-siting.svg").contains("Second body"), record);
        assertTrue(read("report.html").contains("Test body"), "as something on the bottom");
        second[9] = "Second bdy";
        assertTrue(Shell.run(second).err().startsWith("garboard run: --transducer is \"Second bdy\"; the job tells \"Test body\", \"Second body\"; "
            + "did you mean \"Second body\"?\n"));
        assertEquals(0, Shell.run("cut", job, "--mount", "flush-through-hull", "--at", "7.5,-0.115", "--transducer", "Test body").code());
        assertEquals(2, Shell.run("cut", job, "--mount", "flush-through-hull", "--at", "7.5,-0.115").code());
    }
}
