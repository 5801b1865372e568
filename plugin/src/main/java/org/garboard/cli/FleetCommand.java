package org.garboard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.garboard.cli.files.InTheWay;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.JobSource;
import org.garboard.cli.files.OutputRefused;
import org.garboard.cli.files.RecordedFolder;
import org.garboard.cli.files.WriteFault;
import org.garboard.cli.fleet.FleetJob;
import org.garboard.cli.fleet.FleetRow;
import org.garboard.cli.fleet.FleetSummary;
import org.garboard.cli.fleet.Shard;
import org.garboard.exchange.TablePlace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Many jobs side by side. */
@Command(
    name = "fleet",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = "garboard fleet JOB... --out DIR [--shard I/N] [--replace] [--allow-elsewhere] [--threads N]",
    description = {
        "Does many jobs side by side, each into a folder of its own, with one summary.",
        "%nA job that is at fault does not stop the rest. What is there already, made by this version from the same files, is "
            + "kept: a fleet that was interrupted goes on where it stopped. Writes summary.csv and summary.html into DIR; a shard "
            + "writes none. Ends with the gravest code of its jobs: 1, then 3, then 4.%n"})
final class FleetCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "JOB", description = "Job files, or folders with a job.xml.")
    private List<Path> named;

    @Mixin
    private OutFolder results;

    private Shard shard = Shard.ALL;

    @Mixin
    private Elsewhere elsewhere;

    @Mixin
    private Replace replace;

    @Mixin
    private Threads threads;

    @Option(names = "--shard", paramLabel = "I/N",
        description = "Do the I-th of N parts of the list alone, to share it out over machines; the same command without it, when "
            + "all parts are done, finds everything at hand and writes the summary.")
    void setShard(String words) {
        if (!words.matches("[1-9][0-9]{0,5}/[1-9][0-9]{0,5}")) {
            throw new ParameterException(spec.commandLine(), "--shard is \"" + words + "\"; write which part of how many, such as 3/20");
        }
        int part = Integer.parseInt(words.substring(0, words.indexOf('/')));
        int parts = Integer.parseInt(words.substring(words.indexOf('/') + 1));
        if (part > parts) {
            throw new ParameterException(spec.commandLine(), "--shard is " + words + "; there is no part " + part + " of " + parts);
        }
        shard = new Shard(part, parts);
    }

    /** What came of one job. */
    private record Done(FleetJob job, int code, List<FleetRow> rows, boolean kept) {
    }

    @Override
    public Integer call() throws InputFault {
        List<FleetJob> jobs = shard.of(FleetJob.of(named));
        Path folder = results.path();
        try {
            Files.createDirectories(folder);
        } catch (IOException fault) {
            spec.commandLine().getErr().println("cannot write to " + folder + ": " + WriteFault.words(fault));
            return Exit.USAGE.code();
        }
        PrintWriter out = spec.commandLine().getOut();
        int processors = Garboard.of(spec).processors();
        int ofEach = Math.max(1, processors / Math.max(1, jobs.size()));
        ExecutorService workers = Executors.newFixedThreadPool(processors);
        List<Done> all = new ArrayList<>();
        try {
            List<Future<Done>> running = jobs.stream().map(job -> workers.submit(() -> done(job, ofEach))).toList();
            for (Future<Done> each : running) {
                Done done = each.get();
                all.add(done);
                Garboard.of(spec).progress().aside(() -> print(done, out));
                Garboard.of(spec).progress().done(all.size(), jobs.size());
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return Exit.CANCELLED.code();
        } catch (ExecutionException fault) {
            throw new IllegalStateException(fault.getCause());
        } finally {
            workers.shutdownNow();
        }
        FleetSummary summary = new FleetSummary(all.stream().flatMap(done -> done.rows().stream()).toList());
        if (shard.isAll()) {
            try {
                replace.file(folder.resolve("summary.csv"), FleetSummary.CSV_MARK).write(summary.csv().getBytes(StandardCharsets.UTF_8));
                replace.file(folder.resolve("summary.html"), FleetSummary.HTML_MARK).write(summary.html());
            } catch (OutputRefused refused) {
                spec.commandLine().getErr().println(refused.getMessage());
                return Exit.USAGE.code();
            }
        }
        return gravest(all);
    }

    private static void print(Done done, PrintWriter out) {
        done.rows().forEach(row -> out.println(row.job() + ": " + row.outcome() + (done.kept() ? ", kept" : "")
            + (row.advised().isPresent() ? ": " + row.advised().get().mount().words() : ": " + row.words())));
        out.flush();
    }

    private static int gravest(List<Done> all) {
        for (Exit exit : List.of(Exit.PROGRAM, Exit.USAGE, Exit.INPUT, Exit.NO)) {
            if (all.stream().anyMatch(done -> done.code() == exit.code())) {
                return exit.code();
            }
        }
        return Exit.DONE.code();
    }

    private Done done(FleetJob job, int processors) {
        Path own = results.path().resolve(job.name());
        Optional<RecordedFolder> kept = atHand(job, own);
        if (kept.isPresent()) {
            int code = code(kept.get());
            return new Done(job, code, FleetRow.of(job.name(), code, kept.get().record()), true);
        }
        StringWriter said = new StringWriter();
        int code;
        try (PrintWriter out = new PrintWriter(new StringWriter()); PrintWriter err = new PrintWriter(said)) {
            List<String> words = new ArrayList<>(List.of("run", job.file().toString(), "--out", own.toString(), "--threads", Integer.toString(processors)));
            if (replace.inTheWay() == InTheWay.GOES) {
                words.add(Replace.NAME);
            }
            if (elsewhere.tables() == TablePlace.ANYWHERE) {
                words.add(Elsewhere.NAME);
            }
            code = Garboard.run(out, err, words.toArray(String[]::new));
        }
        if (code != Exit.DONE.code() && code != Exit.NO.code()) {
            return failed(job, code, said.toString());
        }
        try {
            return new Done(job, code, FleetRow.of(job.name(), code, RecordedFolder.read(own).record()), false);
        } catch (InputFault fault) {
            return failed(job, Exit.PROGRAM.code(), String.join("\n", fault.messages()));
        }
    }

    private static Done failed(FleetJob job, int code, String words) {
        return new Done(job, code, List.of(FleetRow.failed(job.name(), code, words)), false);
    }

    /** The record of an earlier run by this version, of the same job and table, all of its files as it says. */
    private Optional<RecordedFolder> atHand(FleetJob job, Path results) {
        try {
            JobSource source = JobSource.read(job.file(), elsewhere.tables());
            RecordedFolder earlier = RecordedFolder.read(results);
            boolean same = earlier.record().set().programVersion().equals(Version.number())
                && earlier.record().set().tableHash().equals(source.table().file().sha256())
                && earlier.record().set().figures().stream().anyMatch(figure -> figure.name().equals("sha256")
                    && figure.value().equals(source.file().sha256()));
            if (same) {
                earlier.files();
                return Optional.of(earlier);
            }
        } catch (InputFault notThere) {
            // made anew, and what is wrong with the job or its folder told then
        }
        return Optional.empty();
    }

    /** As the run ended that left the record. */
    private static int code(RecordedFolder earlier) {
        boolean yes = earlier.record().set().sitings().stream().allMatch(siting -> siting.advised().isPresent());
        return (yes && earlier.record().refused().isEmpty() ? Exit.DONE : Exit.NO).code();
    }
}
