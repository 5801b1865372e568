package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.garboard.exchange.RecordFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SurveyCommandTest {
    private static final String FINDINGS = "No,Station,X m,Girth mm,Region,Side,Finding,Severity,Action,Photo,Date\n"
        + "1,2,,300,,port,Blister,B,Grind & fill,P-1,2026-04-02\n2,,,,general,,\"=SUM(A1) <b>\",,,,2026-04-03\n";

    @TempDir
    private static Path run;

    @TempDir
    private Path folder;
    private Path set;
    private Path findings;

    @BeforeAll
    static void runOnce() throws IOException {
        SampleTask task = SampleTask.in(Files.createDirectories(run.resolve("task")));
        Shell shell = Shell.run("run", task.job(), "--out", run.resolve("set"));
        assertEquals(0, shell.code(), shell.err());
    }

    @BeforeEach
    void copySet() throws IOException {
        set = Files.createDirectories(folder.resolve("set"));
        try (Stream<Path> files = Files.list(run.resolve("set"))) {
            for (Path file : files.toList()) {
                Files.copy(file, set.resolve(file.getFileName()));
            }
        }
        findings = Files.writeString(folder.resolve("findings.csv"), FINDINGS);
    }

    private Shell survey(Path out, Object... more) {
        List<Object> words = new ArrayList<>(List.of("survey", set, findings, "--out", out));
        words.addAll(List.of(more));
        return Shell.run(words.toArray());
    }

    private static List<String> bookmarks(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            List<String> bookmarks = new ArrayList<>();
            document.getDocumentCatalog().getDocumentOutline().children().forEach(item -> bookmarks.add(item.getTitle().replaceFirst(".*: ", "")));
            assertEquals(document.getNumberOfPages(), bookmarks.size());
            return bookmarks;
        }
    }

    @Test
    void drawsTheFindingsBehindTheSetAsItWas() throws Exception {
        Path out = folder.resolve("annotated");
        Shell shell = survey(out);
        assertEquals(0, shell.code(), shell.err());
        assertEquals("", shell.err());
        assertTrue(shell.out().matches("2 findings on .*, 1 sheet\\.\n.*sheet-6-survey\\.dxf, sheet-6-survey\\.svg; with the earlier sheets in set\\.pdf\\.\n"), shell.out());
        try (Stream<Path> files = Files.list(set)) {
            for (Path file : files.filter(each -> !each.endsWith("record.xml") && !each.endsWith("set.pdf")).toList()) {
                assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(out.resolve(file.getFileName())), file.toString());
            }
        }
        List<String> before = bookmarks(set.resolve("set.pdf"));
        List<String> after = bookmarks(out.resolve("set.pdf"));
        assertEquals(before, after.subList(0, before.size()));
        assertEquals("Survey findings", after.get(before.size()));
        SchemaFactory.newDefaultInstance().newSchema(RecordFile.class.getResource("garboard-record.xsd")).newValidator()
            .validate(new StreamSource(out.resolve("record.xml").toFile()));
        String record = Files.readString(out.resolve("record.xml"));
        assertTrue(record.contains("<finding number=\"1\" photo=\"P-1\" date=\"2026-04-02\">") && record.contains("<found>=SUM(A1) &lt;b&gt;</found>"), record);
    }

    /** The record but for its survey and its list of files is as it was, digit for digit. */
    @Test
    void law_whatWasDecidedStaysAsItWas() throws IOException {
        survey(folder.resolve("annotated"));
        String before = Files.readString(set.resolve("record.xml"));
        String after = Files.readString(folder.resolve("annotated/record.xml"));
        assertEquals(before.substring(0, before.indexOf("    <outputs>")), after.substring(0, after.indexOf("    <survey ")));
    }

    @Test
    void law_inItsOwnFolderAndAgainGivesTheSame() throws IOException {
        survey(folder.resolve("annotated"));
        assertEquals(0, survey(set).code());
        assertEquals(0, survey(set).code());
        Path annotated = folder.resolve("annotated");
        assertArrayEquals(Files.readAllBytes(annotated.resolve("sheet-6-survey.svg")), Files.readAllBytes(set.resolve("sheet-6-survey.svg")));
        assertEquals(bookmarks(annotated.resolve("set.pdf")), bookmarks(set.resolve("set.pdf")));
        assertEquals(1, bookmarks(set.resolve("set.pdf")).stream().filter("Survey findings"::equals).count());
    }

    @Test
    void refusesAFolderThatDisagreesWithItsRecord() throws IOException {
        Files.writeString(set.resolve("sheet-1-siting.svg"), "<svg/>");
        Files.delete(set.resolve("sheet-2-marking-out.dxf"));
        Shell shell = survey(folder.resolve("annotated"));
        assertEquals(3, shell.code());
        assertEquals(set.resolve("sheet-1-siting.svg") + ": this is not the file that " + set.resolve("record.xml")
            + " lists; it was changed after the record was written\n" + set.resolve("sheet-2-marking-out.dxf") + ": there is no such file\n"
            + "The folder disagrees with its record: put the files back as they were, or make the set anew with garboard run.\n", shell.err());
        assertFalse(Files.exists(folder.resolve("annotated")));
    }

    @Test
    void tellsPlacesThatAreNotOnTheBoat() throws IOException {
        Files.writeString(findings, "No,Station,Girth mm,Side,Finding\n1,99,300,port,Crack\n2,2,99000,port,Crack\n", StandardCharsets.UTF_8);
        Shell shell = survey(folder.resolve("annotated"));
        assertEquals(3, shell.code());
        List<String> lines = shell.err().lines().toList();
        assertEquals(2, lines.size());
        assertTrue(lines.get(0).startsWith(findings + ":2: column 2, Station: \"99\" is no station of the table; it has "), lines.get(0));
        assertTrue(lines.get(1).startsWith(findings + ":3: column 3, Girth: \"99000\" lies off the skin: "), lines.get(1));
    }

    @Test
    void anotherTableIsRefused() throws IOException {
        Path other = Files.writeString(folder.resolve("other.csv"), Files.readString(run.resolve("task/wedge.csv")) + "\n");
        Shell shell = survey(folder.resolve("annotated"), "--table", other);
        assertEquals(3, shell.code());
        assertTrue(shell.err().startsWith(other + ": this is not the table that " + set.resolve("record.xml") + " was made from; its SHA-256 is "), shell.err());
    }

    @Test
    void comparesARecordWithItself() {
        assertEquals("Nothing moved: both records decide the same from the same.\n", Shell.run("compare", set, set.resolve("record.xml")).out());
        assertEquals("kind,subject,what,before,after,unit,difference\r\n", Shell.run("compare", "--csv", set, set).out());
    }

    @Test
    void tellsWhatMovedAndDrawsIt() throws IOException {
        SampleTask task = SampleTask.in(Files.createDirectories(folder.resolve("task"))).with("<width unit=\"mm\">80", "<width unit=\"mm\">100");
        Shell.run("run", task.job(), "--out", folder.resolve("later"));
        Shell shell = Shell.run("compare", set, folder.resolve("later"), "--out", folder.resolve("moved.pdf"));
        assertEquals(0, shell.code(), shell.err());
        assertTrue(shell.out().contains("FIGURE\n  transducer: width 100.000 mm, was 80.000 mm\n"), shell.out());
        assertEquals("Revisions", bookmarks(folder.resolve("moved.pdf")).get(0).replaceFirst(", page.*", ""));
        Shell csv = Shell.run("compare", set, folder.resolve("later"), "--csv");
        assertTrue(csv.out().contains("figure,transducer,width,80.000,100.000,mm,\r\n"), csv.out());
        Shell wrong = Shell.run("compare", set, set, "--out", "moved.png");
        assertEquals(2, wrong.code());
    }

    @Test
    void saysWhatIsNoRecord() throws IOException {
        Path text = Files.writeString(folder.resolve("record.xml"), "<job/>");
        Shell shell = Shell.run("compare", text, set);
        assertEquals(3, shell.code());
        assertEquals(text + ":1:1: this is a <job> file; expected <record xmlns=\"urn:garboard:record\" version=\"1\">\n", shell.err());
    }
}
