package org.garboard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.garboard.cli.files.FindingsSource;
import org.garboard.cli.files.FolderRefused;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.OutputFile;
import org.garboard.cli.files.OutputFolder;
import org.garboard.cli.files.RecordedFolder;
import org.garboard.cli.files.TableSource;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.layout.DoesNotFit;
import org.garboard.drawing.pdf.SheetPdf;
import org.garboard.drawing.sheets.NamedDrawing;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetFormat;
import org.garboard.drawing.survey.Annotated;
import org.garboard.drawing.survey.SurveyDrawing;
import org.garboard.exchange.FileHash;
import org.garboard.exchange.RecordFile;
import org.garboard.hull.Hull;
import org.garboard.job.RecordedSet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A surveyor's findings on an earlier set. */
@Command(
    name = "survey",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = "garboard survey RECORD FINDINGS --out DIR [--replace] [--table FILE]",
    description = {
        "Draws a surveyor's findings on an earlier set: numbered balloons, and their schedule.",
        "%nWrites the whole set into DIR again, with sheet 6 behind the others, and its record last. Nothing is sited "
            + "anew. A set that is not as its record says is refused. DIR may be the folder of RECORD. "
            + "Ends with 4 when the paper of the set is too small for the sheet.%n"})
final class SurveyCommand implements Callable<Integer> {
    private static final String SET = "set.pdf";
    /** As many digits of a hash tell two files apart on a sheet. */
    private static final int SHORT_HASH = 12;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "RECORD", description = "record.xml of a run, or its folder.")
    private Path recordFile;

    @Parameters(index = "1", paramLabel = "FINDINGS", description = {
        "A CSV file with a row of headings and a row for each finding: No; the place as Station, X (aft of the origin) or "
            + "Ahead of after end, with Girth, Off centreline or Region and with Side, or as Region alone; Finding, Severity, Action, "
            + "Photo, Date. Behind a length's heading may stand its unit."})
    private Path findingsFile;

    @Option(names = "--table", paramLabel = "FILE", description = "The table of the set, where no copy of it lies beside the record.")
    private Path table;

    @Mixin
    private OutFolder out;

    @Mixin
    private Replace replace;

    @Override
    public Integer call() throws InputFault {
        RecordedFolder recorded = RecordedFolder.read(recordFile);
        Map<FileHash, byte[]> earlier = recorded.files();
        TableSource source = recorded.table(Optional.ofNullable(table), "--table");
        Hull hull = recorded.hull(source);
        RecordedSet set = recorded.record().set();
        FindingsSource findings = FindingsSource.read(findingsFile, hull, source.table(), set.features().laid());
        List<Sheet> sheets;
        try {
            sheets = SurveyDrawing.of(new Annotated(set, source.table(), hull, findings.findings(),
                findings.file().name() + " (SHA-256 " + findings.file().sha256().substring(0, SHORT_HASH) + "…)",
                new Provenance(Version.number(), set.tableHash())));
        } catch (DoesNotFit no) {
            spec.commandLine().getErr().println("not drawn: sheet 6 (survey): " + no.reason() + "; " + no.remedy());
            return Exit.NO.code();
        }
        List<OutputFile> files = files(recorded, earlier, sheets, SurveyDrawing.issued(set, findings.findings()));
        OutputFile record = new OutputFile(RecordFile.NAME, RecordFile.surveyed(recorded.bytes(), findings.file(), findings.findings(),
            sheets.size(), Version.number(), files.stream().map(OutputFile::hash).toList()));
        try {
            OutputFolder.write(out.path(), files, record, replace.inTheWay());
        } catch (FolderRefused refused) {
            refused.messages().forEach(spec.commandLine().getErr()::println);
            return Exit.USAGE.code();
        }
        PrintWriter printed = spec.commandLine().getOut();
        printed.println(findings.findings().size() + (findings.findings().size() == 1 ? " finding" : " findings") + " on " + set.named() + ", "
            + sheets.size() + (sheets.size() == 1 ? " sheet." : " sheets."));
        printed.println("Drawings in " + out.path() + ": " + files.stream().map(OutputFile::name).filter(name -> name.startsWith(SurveyDrawing.NAME))
            .collect(Collectors.joining(", ")) + "; with the earlier sheets in " + SET + ".");
        return Exit.DONE.code();
    }

    /** The set as it was, less earlier findings, and the new sheets. */
    private static List<OutputFile> files(RecordedFolder recorded, Map<FileHash, byte[]> earlier, List<Sheet> sheets, String issued) {
        List<OutputFile> files = new ArrayList<>();
        byte[] pdf = null;
        for (Map.Entry<FileHash, byte[]> file : earlier.entrySet()) {
            String name = file.getKey().name();
            if (name.equals(SET)) {
                pdf = file.getValue();
            } else if (!name.startsWith(SurveyDrawing.NAME)) {
                files.add(new OutputFile(name, file.getValue()));
            }
        }
        for (int page = 1; page <= sheets.size(); page++) {
            for (SheetFormat format : SheetFormat.values()) {
                NamedDrawing drawing = format.drawing(SurveyDrawing.fileName(page), sheets.get(page - 1));
                files.add(new OutputFile(drawing.fileName(), drawing.content()));
            }
        }
        int kept = pdf == null ? 0 : SheetPdf.pages(pdf) - recorded.record().surveySheets();
        files.add(new OutputFile(SET, kept == 0 ? SheetPdf.write(sheets, issued) : SheetPdf.append(pdf, kept, sheets, issued)));
        return files;
    }
}
