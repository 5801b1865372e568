package org.garboard.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.garboard.appendage.Keel;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.JobSource;
import org.garboard.cli.print.Answer;
import org.garboard.cli.print.SiteCsv;
import org.garboard.cli.print.SiteReport;
import org.garboard.exchange.RecordFile;
import org.garboard.exchange.RecordOutputs;
import org.garboard.exchange.RecordSource;
import org.garboard.hull.Hull;
import org.garboard.job.Job;
import org.garboard.job.SitingRecord;
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

/** Where the transducer of a job may go, with every check. */
@Command(
    name = "site",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = "garboard site JOB [--at X,Y] [--csv | --xml] [--threads N]",
    description = {
        "Finds the best sites for a transducer, with every check.",
        "%nSearches the whole bottom for every mount of the job; or checks the one place that --at names. "
            + "What cannot be told from the table is NOT KNOWN: look before cutting. Ends with 4 when no mount "
            + "has a site.%n"})
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

    @Mixin
    private Threads threads;

    @Override
    public Integer call() throws InputFault {
        if (xml && (csv || at != null)) {
            throw new ParameterException(spec.commandLine(), "--xml is of the whole bottom and stands alone; leave --csv and --at away");
        }
        JobSource source = JobSource.read(file);
        Hull hull = Garboard.of(spec).hull(source.table(), source.job().fit());
        String origin = source.table().table().origin();
        Exit exit = at == null ? search(source, hull, origin) : check(source, hull, origin);
        return exit.code();
    }

    private Exit search(JobSource source, Hull hull, String origin) throws InputFault {
        Job job = source.job();
        Garboard.of(spec).stage("searching the bottom");
        SitingRecord decided = SitingChain.decide(hull, job, source.features(hull), threads.count());
        PrintWriter out = spec.commandLine().getOut();
        Answer answer = new Answer(decided, origin);
        if (xml) {
            RecordSource from = new RecordSource(Version.number(), source.file(), source.table().file(), hull,
                Keel.of(source.table().table(), hull));
            out.print(new String(RecordFile.write(decided, String.join(" ", answer.lines()), from, RecordOutputs.NONE), StandardCharsets.UTF_8));
        } else if (csv) {
            SiteCsv table = new SiteCsv(out);
            decided.sitings().forEach(table::print);
        } else {
            SiteReport report = new SiteReport(out, job, origin);
            decided.sitings().forEach(report::print);
            report.printSources();
            out.println();
        }
        out.flush();
        answer.lines().forEach(csv || xml ? spec.commandLine().getErr()::println : out::println);
        return answer.isYes() ? Exit.DONE : Exit.NO;
    }

    private Exit check(JobSource source, Hull hull, String origin) throws InputFault {
        Job job = source.job();
        SitingTask task = job.sitingTask(hull, source.features(hull));
        List<Site> places = job.mounts().stream()
            .map(mount -> Siting.at(hull, task, mount, at.x(), at.y()))
            .toList();
        PrintWriter out = spec.commandLine().getOut();
        if (csv) {
            SiteCsv table = new SiteCsv(out);
            places.forEach(table::print);
        } else {
            SiteReport report = new SiteReport(out, job, origin);
            places.forEach(report::print);
            report.printSources();
        }
        return places.stream().anyMatch(Site::feasible) ? Exit.DONE : Exit.NO;
    }
}
