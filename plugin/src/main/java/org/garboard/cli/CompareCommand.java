package org.garboard.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.RecordedFolder;
import org.garboard.cli.print.ChangesReport;
import org.garboard.revision.Change;
import org.garboard.revision.Comparison;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What moved between two records. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = "garboard compare EARLIER LATER [--csv]",
    description = {
        "Tells what moved between two records: inputs, figures, features, mounts, places, checks.",
        "%nReads the records alone; nothing is sited anew.%n"})
final class CompareCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "EARLIER", description = "record.xml of a run, or its folder.")
    private Path earlierFile;

    @Parameters(index = "1", paramLabel = "LATER", description = "record.xml of another run, or its folder.")
    private Path laterFile;

    @Option(names = "--csv", description = "Print a row for each change, as CSV: kind, subject, what, before, after, unit, difference.")
    private boolean csv;

    @Override
    public Integer call() throws InputFault {
        RecordedFolder earlier = RecordedFolder.read(earlierFile);
        RecordedFolder later = RecordedFolder.read(laterFile);
        List<Change> changes = Comparison.of(earlier.record().set(), later.record().set());
        ChangesReport report = new ChangesReport(spec.commandLine().getOut());
        if (csv) {
            report.csv(changes);
        } else {
            report.print(changes);
        }
        return Exit.DONE.code();
    }
}
