package org.garboard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.garboard.cli.files.FolderRefused;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.JobSource;
import org.garboard.cli.files.OutputFile;
import org.garboard.cli.files.OutputFolder;
import org.garboard.answer.Answer;
import org.garboard.craft.BottomFeatures;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.decision.Decision;
import org.garboard.decision.GivenPlace;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetRefusal;
import org.garboard.exchange.FileHash;
import org.garboard.exchange.RecordFile;
import org.garboard.exchange.RecordOutputs;
import org.garboard.exchange.RecordSource;
import org.garboard.exchange.ToldDecision;
import org.garboard.hull.Hull;
import org.garboard.job.Job;
import org.garboard.job.SitingRecord;
import org.garboard.mount.water.RunningWater;
import org.garboard.report.NamedHash;
import org.garboard.report.Report;
import org.garboard.report.ReportTask;
import org.garboard.report.Reported;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The whole chain: from a job to its drawings and its record. */
@Command(
    name = "run",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = {
        "garboard run JOB --out DIR [--replace] [--allow-elsewhere] [--threads N]",
        "garboard run JOB --out DIR --mount WORD --at X,Y [--transducer NAME] [--depth L] [--ramp N] [--gap L] [--height L] [--replace] [--allow-elsewhere] [--threads N]"},
    description = {
        "Does a whole job: sites, pocket, drawings, record.",
        "%nWrites the sheets into DIR and record.xml last. A file in DIR that no earlier run wrote, or "
            + "that was changed since, is never touched unless --replace is given. Ends with 4 when the answer is no; record and sheet 1 "
            + "are written all the same.%n"})
final class RunCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "JOB", description = "The job, an XML file as garboard-job.xsd describes it.")
    private Path file;

    @Mixin
    private OutFolder out;

    @Mixin
    private Replace replace;

    @Mixin
    private PartOptions part;

    @Mixin
    private Elsewhere elsewhere;

    @Mixin
    private Threads threads;

    @Override
    public Integer call() throws InputFault {
        Optional<GivenPlace> given = part.place();
        JobSource source = JobSource.read(file, elsewhere.tables());
        Hull hull = Garboard.of(spec).hull(source.table(), source.job().fit());
        Garboard.of(spec).stage("searching the bottom");
        RunningWater running = source.running(hull);
        List<SitingRecord> all;
        try {
            all = given.isPresent() ? List.of(decided(given.get(), source, hull, running))
                : Decision.of(hull, running, source.jobs(), source.features(hull));
        } catch (CannotBeBuilt refusal) {
            spec.commandLine().getErr().println(given.orElseThrow().mount().words() + " cannot be built: " + refusal.getMessage());
            return Exit.NO.code();
        }
        String origin = source.table().table().origin();
        Provenance provenance = new Provenance(Version.number(), source.table().file().sha256());
        Garboard.of(spec).stage("drawing the sheets");
        List<TransducerSet> sets = new ArrayList<>();
        for (SitingRecord decided : all) {
            sets.add(TransducerSet.of(sets.size() + 1, decided, source.table().table(), hull, running, provenance));
        }
        List<OutputFile> drawn = sets.stream().flatMap(set -> set.files().stream()).toList();
        List<OutputFile> files = new ArrayList<>(drawn);
        files.add(source.table().copy());
        List<SheetRefusal> refusals = sets.stream().flatMap(set -> set.refusals().stream()).toList();
        List<ToldDecision> told = new ArrayList<>();
        List<String> said = new ArrayList<>();
        List<Reported> reported = new ArrayList<>();
        for (int k = 0; k < all.size(); k++) {
            List<String> answer = new ArrayList<>(new Answer(all.get(k), origin).lines());
            answer.addAll(sets.get(k).words());
            told.add(new ToldDecision(all.get(k), String.join(" ", answer)));
            if (all.size() > 1) {
                said.add(all.get(k).job().transducer().name() + ":");
            }
            said.addAll(answer);
            reported.add(new Reported(all.get(k), sets.get(k).words(), HeatPanels.forReport(hull, running, all.get(k))));
        }
        files.add(report(source, hull, running, reported, files, refusals, provenance));
        Garboard.of(spec).stage("writing the files");
        try {
            OutputFolder.write(out.path(), files, record(source.recordSource(Version.number(), hull), told, files, refusals), replace.inTheWay());
        } catch (FolderRefused refused) {
            refused.messages().forEach(spec.commandLine().getErr()::println);
            return Exit.USAGE.code();
        }
        if (all.size() < source.jobs().size()) {
            said.add("Drawn is " + all.get(0).job().transducer().name() + " alone; the other transducers of the job are taken to be where they "
                + "are advised: run the job without --at for them, and hold the two sets together.");
        }
        print(said, drawn, refusals);
        boolean yes = all.stream().allMatch(decided -> decided.advised().isPresent() && decided.notMet().isEmpty());
        return (yes && refusals.isEmpty() ? Exit.DONE : Exit.NO).code();
    }

    /** Of several transducers the others are taken to be where they are advised. */
    private SitingRecord decided(GivenPlace place, JobSource source, Hull hull, RunningWater running) throws CannotBeBuilt, InputFault {
        List<Job> jobs = source.jobs();
        int which = part.among(jobs);
        BottomFeatures bottom = Decision.bottoms(hull, running, jobs, source.features(hull)).get(which);
        return place.decided(hull, running, part.wishing(jobs.get(which)), bottom);
    }

    private static OutputFile report(JobSource source, Hull hull, RunningWater running, List<Reported> reported, List<OutputFile> files,
                                     List<SheetRefusal> refusals, Provenance provenance) {
        return new OutputFile(Report.NAME, Report.write(new ReportTask(reported, source.table().table(), hull, running.speeds(),
            refusals.stream().map(SheetRefusal::message).toList(), List.of(named("job", source.file()), named(source.table().table().document(), source.table().file())),
            files.stream().map(file -> named("drawn or written by this run", file.hash())).toList(), provenance)));
    }

    private static NamedHash named(String what, FileHash file) {
        return new NamedHash(what, file.name(), file.sha256());
    }

    private static OutputFile record(RecordSource from, List<ToldDecision> told, List<OutputFile> files, List<SheetRefusal> refusals) {
        RecordOutputs outputs = new RecordOutputs(
            files.stream().map(OutputFile::hash).toList(),
            refusals.stream().map(SheetRefusal::message).toList());
        return new OutputFile(RecordFile.NAME, RecordFile.write(told, from, outputs));
    }

    private void print(List<String> said, List<OutputFile> files, List<SheetRefusal> refusals) {
        PrintWriter printed = spec.commandLine().getOut();
        said.forEach(printed::println);
        String drawn = files.isEmpty() ? "No drawings in " + out.path()
            : "Drawings in " + out.path() + ": " + files.stream().map(OutputFile::name).collect(Collectors.joining(", "));
        printed.println(drawn + "; the reasons in " + Report.NAME + " and " + RecordFile.NAME + ".");
        refusals.forEach(refusal -> spec.commandLine().getErr().println("not drawn: " + refusal.message()));
    }
}
