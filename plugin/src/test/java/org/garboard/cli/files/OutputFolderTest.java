package org.garboard.cli.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {
    private static final String ADVICE = "Nothing was written; give --out a new folder, or move these files away; or give --replace, and those that the set has too are replaced.";

    @TempDir
    private Path top;

    private Path folder() {
        return top.resolve("deep/out");
    }

    @Test
    void makesTheFolderAndLeavesNothingElseBehind() throws Exception {
        write(file("a.svg", "one"), file("b.svg", "two"));
        assertEquals(List.of("a.svg", "b.svg", "record.xml"), names());
        assertEquals("one", Files.readString(folder().resolve("a.svg")));
    }

    @Test
    void replacesWhatAnEarlierRunWroteAndRemovesWhatIsNoLongerOfTheSet() throws Exception {
        write(file("a.svg", "one"), file("b.svg", "two"));
        write(file("a.svg", "new"));
        assertEquals(List.of("a.svg", "record.xml"), names());
        assertEquals("new", Files.readString(folder().resolve("a.svg")));
    }

    @Test
    void refusesAFileThatNoRecordLists() throws Exception {
        Files.createDirectories(folder());
        Files.writeString(folder().resolve("a.svg"), "mine");
        assertEquals(List.of(folder().resolve("a.svg") + " is there already, and no record beside it says that a run wrote it", ADVICE),
            refusal(file("a.svg", "one"), file("b.svg", "two")));
        assertEquals(List.of("a.svg"), names());
        assertEquals("mine", Files.readString(folder().resolve("a.svg")));
    }

    @Test
    void replacesOnlyWhatTheSetHasWhenAsked() throws Exception {
        write(file("a.svg", "one"), file("b.svg", "two"));
        Files.writeString(folder().resolve("a.svg"), "edited");
        Files.writeString(folder().resolve("c.svg"), "mine");
        Files.writeString(folder().resolve("d.svg"), "mine too");
        OutputFile[] next = {file("a.svg", "new"), file("c.svg", "new too")};
        OutputFolder.write(folder(), List.of(next), record(next), InTheWay.GOES);
        assertEquals(List.of("a.svg", "c.svg", "d.svg", "record.xml"), names());
        assertEquals("new", Files.readString(folder().resolve("a.svg")));
        assertEquals("new too", Files.readString(folder().resolve("c.svg")));
        assertEquals("mine too", Files.readString(folder().resolve("d.svg")));
    }

    /** It would be removed, and the new set has nothing in its stead. */
    @Test
    void keepsAChangedFileOfTheOldSetThatTheNewOneLacks() throws Exception {
        write(file("a.svg", "one"), file("b.svg", "two"));
        Files.writeString(folder().resolve("b.svg"), "edited");
        OutputFile next = file("a.svg", "new");
        assertEquals(List.of(folder().resolve("b.svg") + " was changed after the record beside it was written", ADVICE),
            assertThrows(FolderRefused.class, () -> OutputFolder.write(folder(), List.of(next), record(next), InTheWay.GOES)).messages());
        assertEquals("edited", Files.readString(folder().resolve("b.svg")));
        assertEquals("one", Files.readString(folder().resolve("a.svg")));
    }

    @Test
    void aFolderIsNeverReplaced() throws Exception {
        Files.createDirectories(folder().resolve("a.svg"));
        OutputFile next = file("a.svg", "new");
        assertEquals(List.of(folder().resolve("a.svg") + " is there already, and no record beside it says that a run wrote it", ADVICE),
            assertThrows(FolderRefused.class, () -> OutputFolder.write(folder(), List.of(next), record(next), InTheWay.GOES)).messages());
    }

    @Test
    void refusesAFileThatWasChangedSince() throws Exception {
        write(file("a.svg", "one"), file("b.svg", "two"));
        Files.writeString(folder().resolve("b.svg"), "edited");
        assertEquals(List.of(folder().resolve("b.svg") + " was changed after the record beside it was written", ADVICE),
            refusal(file("a.svg", "new")));
        assertEquals(List.of("a.svg", "b.svg", "record.xml"), names());
        assertEquals("one", Files.readString(folder().resolve("a.svg")));
    }

    @Test
    void refusesARecordThatIsNone() throws Exception {
        Files.createDirectories(folder());
        Files.writeString(folder().resolve("record.xml"), "<music/>");
        assertEquals(List.of(folder().resolve("record.xml") + " is there already and is no record of this program: "
            + "this is a <music> file; expected <record xmlns=\"urn:garboard:record\" version=\"1\">",
            "Nothing was written; give --out a new folder, or remove that file."), refusal(file("a.svg", "one")));
        assertEquals("<music/>", Files.readString(folder().resolve("record.xml")));
    }

    @Test
    void refusesARecordThatListsFilesElsewhere() throws Exception {
        Files.createDirectories(folder());
        Path treasure = top.resolve("deep/treasure");
        Files.writeString(treasure, "gold");
        Files.write(folder().resolve("record.xml"), record(file("../treasure", "gold")).content());
        assertEquals(List.of(folder().resolve("record.xml") + " lists ../treasure, which is not in its folder", ADVICE),
            refusal(file("a.svg", "one")));
        assertEquals("gold", Files.readString(treasure));
    }

    @Test
    void goesOnWhereAnInterruptedRunStopped() throws Exception {
        write(file("a.svg", "one"), file("b.svg", "two"));
        Files.delete(folder().resolve("record.xml"));
        Files.delete(folder().resolve("b.svg"));
        write(file("a.svg", "one"), file("b.svg", "two"));
        assertEquals(List.of("a.svg", "b.svg", "record.xml"), names());
    }

    /** After any number of moves: the next command finishes them before it does anything else. */
    @Test
    void law_aRunKilledWhileItMovesItsFilesInIsFinishedByTheNext() throws Exception {
        for (int moved = 0; moved <= 2; moved++) {
            write(file("a.svg", "one"), file("b.svg", "two"));
            killedAfter(moved, file("a.svg", "new"), file("c.svg", "third"));
            OutputFolder.finish(folder());
            assertEquals(List.of("a.svg", "c.svg", "record.xml"), names());
            assertEquals("new", Files.readString(folder().resolve("a.svg")));
            assertEquals(new String(record(file("a.svg", "new"), file("c.svg", "third")).content(), StandardCharsets.UTF_8),
                Files.readString(folder().resolve("record.xml")));
        }
    }

    private void killedAfter(int moved, OutputFile... files) throws IOException {
        List<OutputFile> all = new ArrayList<>(List.of(files));
        all.add(record(files));
        WaitingSet.stage(folder(), all);
        for (OutputFile file : all.subList(0, moved)) {
            Files.move(folder().resolve(WaitingSet.NAME).resolve(file.name()), folder().resolve(file.name()), StandardCopyOption.REPLACE_EXISTING);
        }
    }

    @Test
    void aRunKilledBeforeItsSetWasWholeLeavesTheOldOne() throws Exception {
        write(file("a.svg", "one"));
        Path begun = Files.createDirectory(folder().resolve(WaitingSet.NAME + "." + deadProcess()));
        Files.writeString(begun.resolve("a.svg"), "ne");
        OutputFolder.finish(folder());
        assertEquals("one", Files.readString(folder().resolve("a.svg")));
        write(file("a.svg", "newer"));
        assertEquals(List.of("a.svg", "record.xml"), names());
    }

    private static long deadProcess() throws Exception {
        Process process = new ProcessBuilder("true").start();
        process.waitFor();
        return process.pid();
    }

    @Test
    void aFileChangedAfterTheKillIsNotWrittenOver() throws Exception {
        write(file("a.svg", "one"));
        killedAfter(0, file("a.svg", "new"));
        Files.writeString(folder().resolve("a.svg"), "edited");
        assertEquals(List.of(folder().resolve("a.svg") + " was changed after the record beside it was written", ADVICE),
            refusal(file("a.svg", "newer")));
        assertEquals("edited", Files.readString(folder().resolve("a.svg")));
    }

    @Test
    void leavesOtherFilesAlone() throws Exception {
        Files.createDirectories(folder());
        Files.writeString(folder().resolve("notes.txt"), "mine");
        write(file("a.svg", "one"));
        assertEquals("mine", Files.readString(folder().resolve("notes.txt")));
    }

    @Test
    void tellsAFolderThatCannotBeMade() throws Exception {
        Files.createDirectories(folder().getParent());
        Files.writeString(folder(), "a file");
        assertEquals(List.of("cannot write to " + folder() + ": " + folder() + " is a file; a folder is wanted"),
            refusal(file("a.svg", "one")));
        assertEquals("a file", Files.readString(folder()));
    }

    @Test
    void goesThroughALinkToAFolder() throws Exception {
        Path real = Files.createDirectories(top.resolve("real"));
        Files.createDirectories(folder().getParent());
        Files.createSymbolicLink(folder(), real);
        write(file("a.svg", "one"));
        assertEquals("one", Files.readString(real.resolve("a.svg")));
    }

    private void write(OutputFile... files) throws FolderRefused {
        OutputFolder.write(folder(), List.of(files), record(files), InTheWay.STAYS);
    }

    private List<String> refusal(OutputFile... files) {
        return assertThrows(FolderRefused.class, () -> write(files)).messages();
    }

    private static OutputFile file(String name, String content) {
        return new OutputFile(name, content.getBytes(StandardCharsets.UTF_8));
    }

    /** The least that the record's schema asks for. */
    private static OutputFile record(OutputFile... files) {
        String hash = "0".repeat(64);
        String listed = Stream.of(files)
            .map(file -> "<file name=\"" + file.name() + "\" sha256=\"" + file.hash().sha256() + "\"/>")
            .collect(Collectors.joining());
        return file("record.xml", "<record xmlns=\"urn:garboard:record\" version=\"1\" program-version=\"0\"><inputs>"
            + "<job name=\"j\" sha256=\"" + hash + "\"/><table name=\"t\" sha256=\"" + hash + "\"/><fit>within-rounding</fit></inputs>"
            + "<boat name=\"b\" draught_m=\"1\"/>"
            + "<transducer name=\"t\" length_mm=\"1\" width_mm=\"1\" height_mm=\"1\" corner-radius_mm=\"0\" stem-diameter_mm=\"0\""
            + " element-inclination_deg=\"0\"/><pocket-wish gap_mm=\"1\" ramp-ratio=\"8\"/>"
            + "<drawing units=\"u\" paper=\"p\" projection=\"p\" number=\"n\" owner=\"o\" creator=\"c\" date=\"2026-03-14\" revision=\"A\"/>"
            + "<answer>no</answer><siting mount=\"keel-pocket\"/>"
            + "<surface xmlns=\"urn:garboard:surface\" version=\"1\" program-version=\"0\" side=\"starboard\" within_m=\"0\">"
            + "<table name=\"t\" sha256=\"" + hash + "\"/>"
            + "<panel inner-line=\"k\" outer-line=\"s\" degree-along=\"1\" degree-across=\"1\"><knots-along_m>0 0 1 1</knots-along_m>"
            + "<knots-across>0 0 1 1</knots-across><poles_m><row>0,0,0 0,1,1</row><row>1,0,0 1,1,1</row></poles_m></panel></surface>"
            + "<outputs>" + listed + "</outputs></record>");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder())) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
