package org.garboard.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.OutputRefused;
import org.garboard.cli.files.RecordedFolder;
import org.garboard.cli.files.TableSource;
import org.garboard.cli.print.ChangesReport;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.layout.DoesNotFit;
import org.garboard.drawing.pdf.SheetPdf;
import org.garboard.drawing.revision.DrawnRecord;
import org.garboard.drawing.revision.RevisionDrawing;
import org.garboard.drawing.sheets.NamedDrawing;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetFormat;
import org.garboard.revision.Change;
import org.garboard.revision.Comparison;
import org.garboard.revision.SheetsMoved;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What moved between two records. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = "garboard compare EARLIER LATER [--csv] [--out FILE [--replace]]",
    description = {
        "Tells what moved between two records: inputs, figures, features, mounts, places, checks.",
        "%nReads the records, and for a drawing the tables beside them; nothing is sited anew. Ends with 4 when the paper of "
            + "the later set is too small for the drawing.%n"})
final class CompareCommand implements Callable<Integer> {

    private static final String PDF = ".pdf";
    private static final List<String> ENDINGS = List.of(PDF, SheetFormat.DXF.ending(), SheetFormat.SVG.ending());

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "EARLIER", description = "record.xml of a run, or its folder.")
    private Path earlierFile;

    @Parameters(index = "1", paramLabel = "LATER", description = "record.xml of another run, or its folder.")
    private Path laterFile;

    @Option(names = "--csv", description = "Print a row for each change, as CSV: kind, subject, what, before, after, unit, difference.")
    private boolean csv;

    private Path out;

    @Option(names = "--out", paramLabel = "FILE",
        description = "Draw the later set over the earlier: sheet 8, with what moved dimensioned and a table of all that differs. The name "
            + "ends in .pdf, .dxf or .svg; of these two each further page is a file of its own, FILE-2 and so on.")
    void setOut(Path out) {
        if (ENDINGS.stream().noneMatch(out.toString()::endsWith)) {
            throw new ParameterException(spec.commandLine(), "--out " + out + ": the name ends in none of " + String.join(", ", ENDINGS) + "; let it end in one of them");
        }
        this.out = out;
    }

    @Mixin
    private Replace replace;

    @Option(names = "--earlier-table", paramLabel = "FILE", description = "The table of the earlier set, where no copy of it lies beside its record.")
    private Path earlierTable;

    @Option(names = "--later-table", paramLabel = "FILE", description = "The same of the later set.")
    private Path laterTable;

    @Override
    public Integer call() throws InputFault {
        RecordedFolder earlier = RecordedFolder.read(earlierFile);
        RecordedFolder later = RecordedFolder.read(laterFile);
        List<Change> changes = Comparison.of(earlier.record().set(), later.record().set());
        ChangesReport report = new ChangesReport(spec.commandLine().getOut());
        if (csv) {
            report.csv(changes);
        } else {
            report.print(changes, SheetsMoved.of(earlier.record().set(), later.record().set(), changes));
        }
        return (out == null ? Exit.DONE : draw(earlier, later)).code();
    }

    private Exit draw(RecordedFolder earlier, RecordedFolder later) throws InputFault {
        DrawnRecord before = drawn(earlier, Optional.ofNullable(earlierTable), "--earlier-table");
        DrawnRecord after = drawn(later, Optional.ofNullable(laterTable), "--later-table");
        try {
            List<Sheet> sheets = RevisionDrawing.of(before, after, new Provenance(Version.number(), later.record().set().tableHash()));
            if (out.toString().endsWith(PDF)) {
                replace.file(out, SheetPdf.MARK).write(SheetPdf.write(sheets, later.record().set().drawing().date()));
            } else {
                writeEach(sheets);
            }
            return Exit.DONE;
        } catch (DoesNotFit no) {
            spec.commandLine().getErr().println("not drawn: sheet 8 (revisions): " + no.reason() + "; " + no.remedy());
            return Exit.NO;
        } catch (OutputRefused refused) {
            spec.commandLine().getErr().println(refused.getMessage());
            return Exit.USAGE;
        }
    }

    private static DrawnRecord drawn(RecordedFolder folder, Optional<Path> table, String option) throws InputFault {
        TableSource source = folder.table(table, option);
        return new DrawnRecord(folder.record().set(), source.table(), folder.hull(source));
    }

    private void writeEach(List<Sheet> sheets) throws OutputRefused {
        SheetFormat format = Arrays.stream(SheetFormat.values()).filter(each -> out.toString().endsWith(each.ending())).findFirst().orElseThrow();
        String name = out.getFileName().toString();
        String stem = name.substring(0, name.length() - format.ending().length());
        for (int page = 1; page <= sheets.size(); page++) {
            NamedDrawing drawing = format.drawing(page == 1 ? stem : stem + "-" + page, sheets.get(page - 1));
            replace.file(out.resolveSibling(drawing.fileName()), RevisionDrawing.MARK).write(drawing.content());
        }
    }
}
