package org.garboard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.garboard.appendage.Keel;
import org.garboard.cli.files.FolderRefused;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.JobSource;
import org.garboard.cli.files.OutputFile;
import org.garboard.cli.files.OutputFolder;
import org.garboard.cli.print.Answer;
import org.garboard.drawing.sheets.DrawnSet;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetRefusal;
import org.garboard.drawing.sheets.SheetSet;
import org.garboard.exchange.RecordFile;
import org.garboard.exchange.RecordOutputs;
import org.garboard.exchange.RecordSource;
import org.garboard.hull.Hull;
import org.garboard.job.SitingRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The whole chain: from a job to its drawings and its record. */
@Command(
    name = "run",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = "garboard run JOB --out DIR [--threads N]",
    description = {
        "Does a whole job: sites, pocket, drawings, record.",
        "%nWrites the sheets into DIR and record.xml last. A file in DIR that no earlier run wrote, or "
            + "that was changed since, is never touched. Ends with 4 when the answer is no; record and sheet 1 "
            + "are written all the same.%n"})
final class RunCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "JOB", description = "The job, an XML file as garboard-job.xsd describes it.")
    private Path file;

    private Path folder;

    @Mixin
    private Threads threads;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "The folder for drawings and record; made if need be.")
    void setFolder(Path folder) {
        if (folder.toString().isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--out is empty; name a folder, or . for this one");
        }
        this.folder = folder;
    }

    @Override
    public Integer call() throws InputFault {
        JobSource source = JobSource.read(file);
        Hull hull = Garboard.of(spec).hull(source.table(), source.job().fit());
        Garboard.of(spec).stage("searching the bottom");
        SitingRecord decided = SitingChain.decide(hull, source.job(), source.features(hull), threads.count());
        Answer answer = new Answer(decided, source.table().table().origin());
        PartsAtSite parts = PartsAtSite.of(hull, decided);
        Garboard.of(spec).stage("drawing the sheets");
        DrawnSet set = SheetSet.draw(decided, source.table().table(), hull,
            new Provenance(Version.number(), source.table().file().sha256()), parts.made());
        List<OutputFile> files = new ArrayList<>(set.drawings().stream()
            .map(drawing -> new OutputFile(drawing.fileName(), drawing.content()))
            .toList());
        List<SheetRefusal> refusals = new ArrayList<>(set.refusals());
        refusals.addAll(parts.refusals());
        // what is to be looked at before cutting stands on the sheets: without them there are no parts
        if (set.refusals().isEmpty()) {
            files.addAll(parts.files());
        }
        Garboard.of(spec).stage("writing the files");
        RecordSource from = new RecordSource(Version.number(), source.file(), source.table().file(), hull,
            Keel.of(source.table().table(), hull));
        try {
            OutputFolder.write(folder, files, record(from, decided, said(answer, parts), files, refusals));
        } catch (FolderRefused refused) {
            refused.messages().forEach(spec.commandLine().getErr()::println);
            return Exit.USAGE.code();
        }
        print(said(answer, parts), files, refusals);
        return (answer.isYes() && refusals.isEmpty() ? Exit.DONE : Exit.NO).code();
    }

    private static List<String> said(Answer answer, PartsAtSite parts) {
        return Stream.concat(answer.lines().stream(), parts.words().stream()).toList();
    }

    private static OutputFile record(RecordSource from, SitingRecord decided, List<String> said, List<OutputFile> files,
                                     List<SheetRefusal> refusals) {
        RecordOutputs outputs = new RecordOutputs(
            files.stream().map(OutputFile::hash).toList(),
            refusals.stream().map(SheetRefusal::message).toList());
        return new OutputFile(RecordFile.NAME, RecordFile.write(decided, String.join(" ", said), from, outputs));
    }

    private void print(List<String> said, List<OutputFile> files, List<SheetRefusal> refusals) {
        PrintWriter out = spec.commandLine().getOut();
        said.forEach(out::println);
        String drawn = files.isEmpty() ? "No drawings in " + folder
            : "Drawings in " + folder + ": " + files.stream().map(OutputFile::name).collect(Collectors.joining(", "));
        out.println(drawn + "; the reasons in " + RecordFile.NAME + ".");
        refusals.forEach(refusal -> spec.commandLine().getErr().println("not drawn: " + refusal.message()));
    }
}
