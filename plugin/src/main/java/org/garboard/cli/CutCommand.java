package org.garboard.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.JobSource;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Pocket;
import org.garboard.decision.GivenPlace;
import org.garboard.exchange.PartFile;
import org.garboard.hull.Hull;
import org.garboard.job.Job;
import org.garboard.mount.FairedThroughHull;
import org.garboard.mount.KeelPocket;
import org.garboard.mount.water.RunningWater;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What is cut and made at one place, as XML for a CAD program. */
@Command(
    name = "cut",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = "garboard cut JOB --mount WORD --at X,Y [--transducer NAME] [--depth L] [--ramp N] [--gap L] [--height L] [--allow-elsewhere] [--threads N]",
    description = {
        "Prints what is cut or made at one place, as XML (garboard-part.xsd): for a CAD program.",
        "%nA keel pocket by its figures; it, its body, the skin with the cut in it, and the parts of every other mount as closed meshes. "
            + "Whether the place serves is not asked here: garboard site JOB --at X,Y tells that. Ends with 4 where the part cannot be built.%n"})
final class CutCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "JOB", description = "The job, an XML file as garboard-job.xsd describes it.")
    private Path file;

    @Mixin
    private PartOptions part;

    @Mixin
    private Elsewhere elsewhere;

    @Mixin
    private Threads threads;

    @Override
    public Integer call() throws InputFault {
        GivenPlace place = part.required();
        JobSource source = JobSource.read(file, elsewhere.tables());
        Hull hull = Garboard.of(spec).hull(source.table(), source.job().fit());
        PartFile.Origin origin = new PartFile.Origin(Version.number(), place.mount(), place.at(), source.file(), source.table().file());
        // what is told of the bottom is not asked of a pocket, but a job with faults is no ground to cut on
        source.features(hull);
        Garboard.of(spec).stage("cutting");
        try {
            spec.commandLine().getOut().print(new String(made(origin, source, hull, place), StandardCharsets.UTF_8));
            return Exit.DONE.code();
        } catch (CannotBeBuilt refusal) {
            spec.commandLine().getErr().println(place.mount().words() + " cannot be built: " + refusal.getMessage());
            return Exit.NO.code();
        }
    }

    private byte[] made(PartFile.Origin origin, JobSource source, Hull hull, GivenPlace place) throws CannotBeBuilt {
        Job job = part.wishing(source.jobs().get(part.among(source.jobs())));
        if (place.mount() instanceof KeelPocket) {
            Pocket pocket = place.pocket(hull, job);
            return PartFile.pocket(origin, pocket, PocketWords.lines(pocket));
        }
        RunningWater running = place.mount() instanceof FairedThroughHull ? source.running(hull) : RunningWater.UNTOLD;
        PartsAtSite parts = PartsAtSite.at(hull, job, running, place.mount(), place.at());
        return PartFile.solids(origin, parts.made().solids(), parts.words());
    }
}
