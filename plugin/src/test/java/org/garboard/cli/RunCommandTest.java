package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.garboard.exchange.FileHash;
import org.garboard.exchange.RecordFile.Outputs;
import org.garboard.exchange.RecordFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunCommandTest {
    private static final List<String> WHOLE_SET = List.of("body-in-pocket_mm.obj", "body-in-pocket_mm.stl",
        "hull-cutout-outside-up_mm_1to1.dxf", "input-wedge.csv", "pocket-former_mm.obj", "pocket-former_mm.stl",
        "pocket-outside-up_mm_1to1.dxf", "pocket_mm.obj", "pocket_mm.stl", "record.xml", "report.html", "set.pdf", "sheet-1-siting.dxf", "sheet-1-siting.svg",
        "sheet-2-marking-out.dxf", "sheet-2-marking-out.svg", "sheet-4-cutout.dxf", "sheet-4-cutout.svg", "sheet-4-pocket.dxf", "sheet-4-pocket.svg",
        "sheet-7-check.dxf", "sheet-7-check.svg", "template-A4.pdf", "template-Letter.pdf", "transducer-body_mm.obj", "transducer-body_mm.stl");

    @TempDir
    private Path folder;
    private SampleTask task;
    private Path out;

    @BeforeEach
    void copyTask() throws IOException {
        task = SampleTask.in(Files.createDirectories(folder.resolve("task")));
        out = folder.resolve("drawings");
    }

    private Shell run() {
        return Shell.run("run", task.job(), "--out", out);
    }

    @Test
    void writesTheWholeSetAndSaysWhereItIs() throws IOException {
        Shell shell = run();
        assertEquals(0, shell.code(), shell.err());
        assertEquals(WHOLE_SET, names());
        assertEquals("", shell.err());
        List<String> lines = shell.outLines();
        assertTrue(lines.get(0).startsWith("Advised: flush through-hull, "), shell.out());
        assertTrue(lines.get(1).matches("Governing: .*\\. Look before cutting: .*\\."), shell.out());
        assertTrue(lines.get(2).matches("Another way: keel pocket, .*; governing: .*\\."), shell.out());
        assertEquals("Drawings in " + out + ": sheet-1-siting.dxf, sheet-1-siting.svg, "
            + "sheet-2-marking-out.dxf, sheet-2-marking-out.svg, sheet-4-pocket.dxf, sheet-4-pocket.svg, "
            + "sheet-4-cutout.dxf, sheet-4-cutout.svg, sheet-7-check.dxf, sheet-7-check.svg, pocket-outside-up_mm_1to1.dxf, template-A4.pdf, template-Letter.pdf, set.pdf, pocket_mm.stl, pocket_mm.obj, "
            + "body-in-pocket_mm.stl, body-in-pocket_mm.obj, pocket-former_mm.stl, pocket-former_mm.obj, transducer-body_mm.stl, transducer-body_mm.obj, "
            + "hull-cutout-outside-up_mm_1to1.dxf; the reasons in report.html and record.xml.", lines.get(lines.size() - 1));
    }

    @Test
    void saysWhatTheCutterMustKnow() {
        List<String> lines = run().outLines();
        assertEquals("Cutout: hole square to the skin, whatever the element's inclination; the face stands proud of the skin or lies "
            + "hollow by up to 0.0 mm.", lines.get(3));
        assertTrue(lines.get(4).startsWith("The element leans to port, towards the keel: beam "), lines.get(4));
        assertEquals("Skin not told: no block inside, no piece of skin. Measure it and write <skin> into the job.", lines.get(5));
        assertTrue(lines.get(6).matches("Template hull-cutout: check length [0-9.]+ mm, largest stretch 0\\.00 mm\\."), lines.get(6));
    }

    /** With the skin told its parts are made, and the stem is held to them. */
    @Test
    void makesThePartsOfAToldSkin() throws IOException {
        String job = Files.readString(task.job());
        String skin = "<skin material=\"solid-glass\"><layup><whole unit=\"mm\">12</whole></layup></skin>";
        Files.writeString(task.job(), job.replace("<drawing>", skin + "<drawing>"));
        Shell shell = run();
        assertEquals(0, shell.code(), shell.err());
        assertTrue(names().containsAll(List.of("backing-block_mm.stl", "backing-block_mm.obj", "hull-skin_mm.stl", "hull-skin_mm.obj",
            "backing-block-outside-up_mm_1to1.dxf")), names().toString());
        assertTrue(shell.out().contains("Stem: "), shell.out());
        Files.writeString(task.job(), job.replace("<drawing>", skin + "<drawing>")
            .replaceAll("(<stem-diameter)", "<stem-length unit=\"mm\">40</stem-length>$1"));
        Shell shorter = Shell.run("run", task.job(), "--out", out);
        assertEquals(0, shorter.code(), shorter.err());
        assertTrue(shorter.out().startsWith("Advised: keel pocket, "), shorter.out());
        assertTrue(names().stream().noneMatch(name -> name.startsWith("backing-block") || name.startsWith("hull-cutout")), names().toString());
    }

    /** Between a bronze housing and a hull of aluminium goes a sleeve, and the hull's cut has its room. */
    @Test
    void drawsTheSleeveBetweenTwoMetals() throws IOException {
        String job = Files.readString(task.job()).replace("<drawing>",
            "<skin material=\"aluminium\"><layup><whole unit=\"mm\">6</whole></layup></skin><drawing>");
        Files.writeString(task.job(), job.replaceAll("(<stem-diameter)", "<housing>bronze</housing>$1"));
        Shell shell = run();
        assertEquals(0, shell.code(), shell.err());
        assertTrue(shell.out().contains("Sleeve of plastic between hull and body, wall 3.0 mm"), shell.out());
        assertTrue(names().containsAll(List.of("sleeve_mm.stl", "sleeve_mm.obj")), names().toString());
    }

    /** The parts of each of the other mounts, alone in the job. */
    @Test
    void makesThePartsOfEveryMount() throws IOException {
        String job = Files.readString(task.job()).replaceAll("(<element-inclination[^>]*>)[^<]*<", "$10<");
        Map<String, List<String>> parts = Map.of(
            "through-hull-with-fairing-block", List.of("fairing-block_mm.stl", "fairing-footprint-outside-up_mm_1to1.dxf", "fairing-block-outside-up_mm_1to1.dxf"),
            "in-hull", List.of("bath_mm.stl", "bath-footprint-inside-up_mm_1to1.dxf", "bath-wall-outside-up_mm_1to1.dxf"),
            "transom-mount", List.of("transom-board_mm.stl", "transom-drilling-aft-side-up_mm_1to1.dxf"));
        for (Map.Entry<String, List<String>> mount : parts.entrySet()) {
            Files.writeString(task.job(), job.replaceFirst("(?s)<mounts.*</mounts>", "<mounts><" + mount.getKey() + "/></mounts>"));
            Shell shell = run();
            assertEquals(0, shell.code(), mount.getKey() + ": " + shell.err() + shell.out());
            assertTrue(names().containsAll(mount.getValue()), names().toString());
            assertTrue(names().containsAll(List.of("template-A4.pdf", "template-Letter.pdf", "transducer-body_mm.stl")), names().toString());
        }
    }

    @Test
    void recordListsEveryFileWithItsHashAndIsValid() throws Exception {
        run();
        Outputs outputs = RecordFile.outputs(Files.readAllBytes(out.resolve("record.xml")));
        List<FileHash> listed = ((Outputs.Listed) outputs).files();
        assertEquals(WHOLE_SET.stream().filter(name -> !name.equals("record.xml")).toList(),
            listed.stream().map(FileHash::name).sorted().toList());
        for (FileHash file : listed) {
            assertEquals(FileHash.of(file.name(), Files.readAllBytes(out.resolve(file.name()))), file);
        }
        SchemaFactory.newDefaultInstance().newSchema(RecordFile.class.getResource("garboard-record.xsd"))
            .newValidator().validate(new StreamSource(out.resolve("record.xml").toFile()));
    }

    @Test
    void recordHoldsTheHashesOfItsInputs() throws Exception {
        run();
        String record = Files.readString(out.resolve("record.xml"));
        for (String name : List.of("job.xml", "wedge.csv")) {
            String hash = FileHash.of(name, Files.readAllBytes(task.job().resolveSibling(name))).sha256();
            assertTrue(record.contains("name=\"" + name + "\" sha256=\"" + hash + "\""), record);
        }
    }

    @Test
    void aSecondRunReplacesTheFirstByTheSameBytes() throws IOException {
        run();
        List<String> first = hashes();
        assertEquals(0, run().code());
        assertEquals(first, hashes());
    }

    @Test
    void theAnswerNoLeavesRecordAndSheetOneAndEndsWithFour() throws IOException {
        run();
        task.withoutAnswer();
        Shell shell = run();
        assertEquals(4, shell.code(), shell.err());
        assertTrue(shell.out().startsWith("The answer is no: no mount of the job has a place on this bottom.\n"), shell.out());
        assertEquals(List.of("input-wedge.csv", "record.xml", "report.html", "set.pdf", "sheet-1-siting.dxf", "sheet-1-siting.svg"), names());
        String record = Files.readString(out.resolve("record.xml"));
        assertTrue(record.contains("<pocket-refused>"), record);
        assertFalse(record.contains("<answer mount="), record);
    }

    /** Cautions and check measurements stand on the sheets, so nothing is cut without them. */
    @Test
    void neverTouchesAFileOfSomebodyElse() throws IOException {
        Files.createDirectories(out);
        Files.writeString(out.resolve("sheet-1-siting.svg"), "mine", StandardCharsets.UTF_8);
        Shell shell = run();
        assertEquals(2, shell.code());
        assertEquals(out.resolve("sheet-1-siting.svg") + " is there already, and no record beside it says that a run wrote it\n"
            + "Nothing was written; give --out a new folder, or move these files away; or give --replace, and those that the set has too are replaced.\n", shell.err());
        assertEquals("", shell.out());
        assertEquals(List.of("sheet-1-siting.svg"), names());
    }

    @Test
    void aFaultyInputLeavesTheFolderAsItWas() throws IOException {
        run();
        List<String> before = hashes();
        task.with("unit=\"mm\">400", "unit=\"km\">400");
        Shell shell = run();
        assertEquals(3, shell.code());
        assertEquals(before, hashes());
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(out)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private List<String> hashes() throws IOException {
        return names().stream().map(this::hash).toList();
    }

    private String hash(String name) {
        try {
            return FileHash.of(name, Files.readAllBytes(out.resolve(name))).toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
