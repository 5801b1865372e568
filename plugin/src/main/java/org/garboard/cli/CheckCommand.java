package org.garboard.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.garboard.appendage.Keel;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.JobSource;
import org.garboard.cli.files.TableSource;
import org.garboard.cli.print.Untold;
import org.garboard.cli.start.JobText;
import org.garboard.cli.start.StillTheDemos;
import org.garboard.craft.Weights;
import org.garboard.decision.Decision;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.Hydrostatics;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.job.Job;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Everything that is wrong, odd or missing in a job, before it is run. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = "garboard check JOB [--allow-elsewhere] [--threads N]",
    description = {
        "Tells everything that is wrong, odd or missing in a job and its table, in one go.",
        "%nWrong: what keeps it from being run, with its place in the file; ends with 3. Odd: likely slips of the table, weights "
            + "that do not agree with the draught. Missing: what the job does not tell, and what is NOT KNOWN for that where the "
            + "transducer would go.%n"})
final class CheckCommand implements Callable<Integer> {
    /** By how much weight and displacement may differ before it is odd: our choice, tables and scales being what they are. */
    private static final double ODD_SHARE = 0.1;
    private static final double SALT_WATER = 1025;
    private static final Pattern TABLE = Pattern.compile("<table\\b[^>]*\\bfile=\"([^\"<>]+)\"");

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "JOB", description = "The job, an XML file as garboard-job.xsd describes it.")
    private Path file;

    @Mixin
    private Elsewhere elsewhere;

    @Mixin
    private Threads threads;

    @Override
    public Integer call() throws InputFault {
        PrintWriter out = spec.commandLine().getOut();
        List<String> wrong = new ArrayList<>();
        Optional<JobSource> source = Optional.empty();
        try {
            source = Optional.of(JobSource.read(file, elsewhere.tables()));
        } catch (InputFault fault) {
            wrong.addAll(fault.messages());
            tableFaults().stream().filter(message -> !wrong.contains(message)).forEach(wrong::add);
        }
        text().map(StillTheDemos::in).orElse(List.of()).forEach(out::println);
        out.flush();
        if (source.isEmpty()) {
            throw new InputFault(wrong);
        }
        check(source.get(), out);
        return Exit.DONE.code();
    }

    private void check(JobSource source, PrintWriter out) throws InputFault {
        Hull hull = Garboard.of(spec).hull(source.table(), source.job().fit());
        List<String> odd = new ArrayList<>();
        source.table().slips().slips().forEach(slip -> odd.add(slip.message()));
        weight(source, hull).ifPresent(odd::add);
        print(out, "Odd:", odd, "Nothing odd was found.");
        print(out, "Not told:", Untold.parts(source.job(), new JobText(text().orElse(""))), "Every part of the job is told.");
        print(out, "Not known where the transducer would go:",
            Untold.checks(Decision.of(hull, source.running(hull), source.jobs(), source.features(hull))),
            "Every check could be made where the transducer would go.");
    }

    private static void print(PrintWriter out, String title, List<String> lines, String none) {
        out.println(lines.isEmpty() ? none : title);
        lines.forEach(line -> out.println("  " + line));
    }

    /** Only where all of her that is in the water was measured, and is skin. */
    private static Optional<String> weight(JobSource source, Hull hull) {
        Job job = source.job();
        Optional<Weights> weights = job.particulars().craft().flatMap(craft -> craft.weights());
        if (weights.isEmpty() || !source.table().table().openEnds().isEmpty() || Keel.of(source.table().table(), hull).isPresent()) {
            return Optional.empty();
        }
        WaterSurface water = new WaterSurface(job.draught(), 0.5 * (hull.forwardEnd() + hull.afterEnd()), Angle.ofDegrees(0));
        if (!(Hydrostatics.of(hull, water) instanceof Hydrostatics afloat)) {
            return Optional.empty();
        }
        double displaced = SALT_WATER * afloat.volume();
        boolean agrees = displaced > (1 - ODD_SHARE) * weights.get().light() && displaced < (1 + ODD_SHARE) * weights.get().full();
        return agrees ? Optional.empty() : Optional.of("floating level at " + FixedDecimal.format(job.draught(), 3) + " m she displaces "
            + FixedDecimal.format(displaced, 0) + " kg of salt water, but is told to weigh " + FixedDecimal.format(weights.get().light(), 0)
            + " to " + FixedDecimal.format(weights.get().full(), 0) + " kg: draught, weights or table is another's");
    }

    /** A job that cannot be read still names its table, mostly. */
    private List<String> tableFaults() {
        Optional<Matcher> named = text().map(TABLE::matcher).filter(Matcher::find);
        boolean below = named.isPresent() && !named.get().group(1).startsWith("/") && !List.of(named.get().group(1).split("/")).contains("..");
        if (below) {
            Path table = file.resolveSibling(named.get().group(1));
            if (Files.isRegularFile(table)) {
                try {
                    TableSource.read(table, named.get().group(1));
                } catch (InputFault fault) {
                    return fault.messages();
                }
            }
        }
        return List.of();
    }

    private Optional<String> text() {
        try {
            return Optional.of(new String(JobSource.bytes(file), StandardCharsets.UTF_8));
        } catch (InputFault unreadable) {
            return Optional.empty();
        }
    }
}
