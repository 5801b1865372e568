package org.garboard.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.JobSource;
import org.garboard.cli.files.OutputRefused;
import org.garboard.answer.Answer;
import org.garboard.cli.print.SiteCsv;
import org.garboard.cli.print.SiteReport;
import org.garboard.craft.BottomFeatures;
import org.garboard.decision.Decision;
import org.garboard.drawing.heat.HeatMap;
import org.garboard.exchange.RecordFile;
import org.garboard.exchange.RecordOutputs;
import org.garboard.exchange.ToldDecision;
import org.garboard.hull.Hull;
import org.garboard.job.Job;
import org.garboard.job.SitingRecord;
import org.garboard.mount.water.RunningWater;
import org.garboard.siting.PlanPoint;
import org.garboard.siting.Site;
import org.garboard.siting.Siting;
import org.garboard.siting.SitingTask;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Where the transducers of a job may go, with every check. */
@Command(
    name = "site",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = "garboard site JOB [--at X,Y] [--csv | --xml] [--heat-map FILE.svg [--replace]] [--allow-elsewhere] [--threads N]",
    description = {
        "Finds the best sites for a transducer, with every check.",
        "%nSearches the whole bottom for every mount of the job; or checks the one place that --at names. "
            + "What cannot be told from the table is NOT KNOWN: look before cutting. Several transducers are placed "
            + "in the order of the job, each clear of the others. Ends with 4 when no mount has a site.%n"})
final class SiteCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "JOB", description = "The job, an XML file as garboard-job.xsd describes it.")
    private Path file;

    @Option(names = "--at", paramLabel = "X,Y", converter = PlaceConverter.class,
        description = "Check this place alone, in metres: x aft of the table's origin, y to starboard, port negative.")
    private PlanPoint at;

    @Option(names = "--csv", description = "Print a row for each check, as CSV.")
    private boolean csv;

    @Option(names = "--xml", description = "Print everything that was found as a record (garboard-record.xsd) without files beside it, "
        + "hull surface and pocket among it.")
    private boolean xml;

    @Option(names = "--heat-map", paramLabel = "FILE.svg", converter = FileNameConverter.class,
        description = "Draw besides how well the whole bottom serves each mount, and which check governs where.")
    private Path heatMap;

    @Mixin
    private Elsewhere elsewhere;

    @Mixin
    private Replace replace;

    @Mixin
    private Threads threads;

    @Override
    public Integer call() throws InputFault {
        if (xml && (csv || at != null)) {
            throw new ParameterException(spec.commandLine(), "--xml is of the whole bottom and stands alone; leave --csv and --at away");
        }
        if (heatMap != null && at != null) {
            throw new ParameterException(spec.commandLine(), "--heat-map is of the whole bottom; leave --at away");
        }
        JobSource source = JobSource.read(file, elsewhere.tables());
        Hull hull = Garboard.of(spec).hull(source.table(), source.job().fit());
        Exit exit = at == null ? search(source, hull) : check(source, hull);
        return exit.code();
    }

    private Exit search(JobSource source, Hull hull) throws InputFault {
        Garboard.of(spec).stage("searching the bottom");
        RunningWater running = source.running(hull);
        List<SitingRecord> all = Decision.of(hull, running, source.jobs(), source.features(hull));
        if (heatMap != null) {
            try {
                replace.file(heatMap, HeatMap.MARK).write(HeatMap.draw(source.job().boat(), hull, HeatPanels.of(hull, running, all)));
            } catch (OutputRefused refused) {
                spec.commandLine().getErr().println(refused.getMessage());
                return Exit.USAGE;
            }
        }
        String origin = source.table().table().origin();
        PrintWriter out = spec.commandLine().getOut();
        List<String> answer = Answer.lines(all, origin);
        if (xml) {
            out.print(new String(RecordFile.write(told(all, origin), source.recordSource(Version.number(), hull), RecordOutputs.NONE), StandardCharsets.UTF_8));
        } else if (csv) {
            SiteCsv table = new SiteCsv(out, all.size());
            all.forEach(table::print);
        } else {
            all.forEach(decided -> {
                SiteReport report = new SiteReport(out, decided.job(), origin);
                report.print(decided);
                report.printSources();
                out.println();
            });
        }
        out.flush();
        answer.forEach(csv || xml ? spec.commandLine().getErr()::println : out::println);
        return all.stream().allMatch(decided -> decided.advised().isPresent()) ? Exit.DONE : Exit.NO;
    }

    private static List<ToldDecision> told(List<SitingRecord> all, String origin) {
        return all.stream().map(decided -> new ToldDecision(decided, String.join(" ", new Answer(decided, origin).lines()))).toList();
    }

    /** Of several transducers each is asked about with the others where they are advised. */
    private Exit check(JobSource source, Hull hull) throws InputFault {
        List<Job> jobs = source.jobs();
        RunningWater running = source.running(hull);
        List<BottomFeatures> bottoms = Decision.bottoms(hull, running, jobs, source.features(hull));
        List<List<Site>> places = IntStream.range(0, jobs.size()).mapToObj(k -> {
            SitingTask task = jobs.get(k).sitingTask(hull, bottoms.get(k), running);
            return task.mounts().stream().map(mount -> Siting.at(hull, task, mount, at.x(), at.y())).toList();
        }).toList();
        PrintWriter out = spec.commandLine().getOut();
        if (csv) {
            SiteCsv table = new SiteCsv(out, jobs.size());
            IntStream.range(0, jobs.size()).forEach(k -> places.get(k).forEach(place -> table.print(jobs.get(k), place)));
        } else {
            String origin = source.table().table().origin();
            for (int k = 0; k < jobs.size(); k++) {
                SiteReport report = new SiteReport(out, jobs.get(k), origin);
                places.get(k).forEach(report::print);
                report.printSources();
            }
        }
        return places.stream().flatMap(List::stream).anyMatch(Site::feasible) ? Exit.DONE : Exit.NO;
    }
}
