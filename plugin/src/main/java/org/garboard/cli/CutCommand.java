package org.garboard.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.JobSource;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.PocketOutcome;
import org.garboard.cutout.fairing.FairingWish;
import org.garboard.exchange.PartFile;
import org.garboard.hull.Hull;
import org.garboard.job.Job;
import org.garboard.mount.FairedThroughHull;
import org.garboard.mount.KeelPocket;
import org.garboard.mount.Mount;
import org.garboard.mount.PocketWish;
import org.garboard.mount.water.RunningWater;
import org.garboard.siting.PlanPoint;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What is cut and made at one place, as XML for a CAD program. */
@Command(
    name = "cut",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = "garboard cut JOB --mount WORD --at X,Y [--depth L] [--ramp N] [--gap L] [--height L] [--threads N]",
    description = {
        "Prints what is cut or made at one place, as XML (garboard-part.xsd): for a CAD program.",
        "%nA keel pocket by its figures; the parts of every other mount as closed meshes. "
            + "Whether the place serves is not asked here: garboard site JOB --at X,Y tells that. Ends with 4 where the part cannot be built.%n"})
final class CutCommand implements Callable<Integer> {
    private static final double MOST_LENGTH = 2;
    private static final double MOST_RATIO = 100;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "JOB", description = "The job, an XML file as garboard-job.xsd describes it.")
    private Path file;

    private Mount mount;

    @Option(names = "--at", required = true, paramLabel = "X,Y", converter = PlaceConverter.class,
        description = "The place, in metres: x aft of the table's origin, y to starboard, port negative; 0 for a keel pocket.")
    private PlanPoint at;

    private OptionalDouble depth = OptionalDouble.empty();
    private OptionalDouble ramp = OptionalDouble.empty();
    private OptionalDouble gap = OptionalDouble.empty();
    private OptionalDouble height = OptionalDouble.empty();

    @Mixin
    private Threads threads;

    @Option(names = "--mount", required = true, paramLabel = "WORD",
        description = "The way in, whether or not the job lists it: transom-mount, in-hull, flush-through-hull, "
        + "through-hull-with-fairing-block or keel-pocket.")
    void setMount(String word) {
        mount = Mount.ALL.stream().filter(each -> each.word().equals(word)).findFirst()
            .orElseThrow(() -> new ParameterException(spec.commandLine(), "--mount is \"" + word + "\"; it must be one of "
                + Mount.ALL.stream().map(Mount::word).collect(Collectors.joining(", "))));
    }

    @Option(names = "--depth", paramLabel = "L", converter = MetresConverter.class,
        description = "Of a keel pocket's floor above the keel line; else as the job says.")
    void setDepth(double metres) {
        depth = OptionalDouble.of(between("--depth", metres, 0, MOST_LENGTH, " m"));
    }

    @Option(names = "--ramp", paramLabel = "N", converter = NumberConverter.class,
        description = "Length of a keel pocket's ramps to their height, 0 for none; else as the job says.")
    void setRamp(double ratio) {
        ramp = OptionalDouble.of(between("--ramp", ratio, 0, MOST_RATIO, ""));
    }

    @Option(names = "--gap", paramLabel = "L", converter = MetresConverter.class,
        description = "Bedding between body and a keel pocket's wall, each side; else as the job says.")
    void setGap(double metres) {
        gap = OptionalDouble.of(between("--gap", metres, 0, MOST_LENGTH, " m"));
    }

    @Option(names = "--height", paramLabel = "L", converter = MetresConverter.class,
        description = "Of a fairing block's face below the skin; else as the job says.")
    void setHeight(double metres) {
        height = OptionalDouble.of(between("--height", metres, 0, MOST_LENGTH, " m"));
    }

    private double between(String option, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            throw new ParameterException(spec.commandLine(), option + " is " + value + unit + "; it must be from " + least + " to " + most + unit);
        }
        return value;
    }

    @Override
    public Integer call() throws InputFault {
        refuseWhatDoesNotGoTogether();
        JobSource source = JobSource.read(file);
        Hull hull = Garboard.of(spec).hull(source.table(), source.job().fit());
        PartFile.Origin origin = new PartFile.Origin(Version.number(), mount, at, source.file(), source.table().file());
        // what is told of the bottom is not asked of a pocket, but a job with faults is no ground to cut on
        source.features(hull);
        Garboard.of(spec).stage("cutting");
        try {
            spec.commandLine().getOut().print(new String(part(origin, source, hull), StandardCharsets.UTF_8));
            return Exit.DONE.code();
        } catch (CannotBeBuilt refusal) {
            spec.commandLine().getErr().println(mount.words() + " cannot be built: " + refusal.getMessage());
            return Exit.NO.code();
        }
    }

    private void refuseWhatDoesNotGoTogether() {
        boolean pocket = mount instanceof KeelPocket;
        if (!pocket && (depth.isPresent() || ramp.isPresent() || gap.isPresent())) {
            throw new ParameterException(spec.commandLine(), "--depth, --ramp and --gap are of a keel pocket; leave them away with --mount " + mount.word());
        }
        if (!(mount instanceof FairedThroughHull) && height.isPresent()) {
            throw new ParameterException(spec.commandLine(), "--height is of a fairing block; leave it away with --mount " + mount.word());
        }
        if (pocket && at.y() != 0) {
            throw new ParameterException(spec.commandLine(), "--at is " + at.x() + "," + at.y() + "; a keel pocket lies on the centreline: write " + at.x() + ",0");
        }
    }

    private byte[] part(PartFile.Origin origin, JobSource source, Hull hull) throws CannotBeBuilt {
        Job job = source.job();
        if (mount instanceof KeelPocket) {
            return pocket(origin, job, hull);
        }
        FairingWish told = job.particulars().fairing();
        FairingWish wish = new FairingWish(told.planform(), told.slenderness(), height.isPresent() ? height : told.height(),
            told.trailingEdgeLower(), told.toe(), told.throughHull());
        RunningWater running = mount instanceof FairedThroughHull ? source.running(hull, threads.count()) : RunningWater.UNTOLD;
        PartsAtSite parts = PartsAtSite.at(hull, job, wish, running, mount, at);
        return PartFile.solids(origin, parts.made().solids(), parts.words());
    }

    private byte[] pocket(PartFile.Origin origin, Job job, Hull hull) throws CannotBeBuilt {
        PocketWish told = job.pocket();
        PocketWish wish = new PocketWish(depth.isPresent() ? depth : told.depth(), gap.orElse(told.gap()), ramp.orElse(told.rampRatio()),
            told.make());
        PocketOutcome outcome = KeelPocketCut.cut(hull, job.transducer(), wish, job.particulars().forPocket(hull), at.x(), 0);
        if (outcome instanceof PocketOutcome.Refused refused) {
            throw new CannotBeBuilt(refused.reason(), refused.remedy());
        }
        return PartFile.pocket(origin, ((PocketOutcome.Built) outcome).pocket());
    }
}
