package org.garboard.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.garboard.cutout.fairing.FairingWish;
import org.garboard.decision.GivenPlace;
import org.garboard.exchange.Spelling;
import org.garboard.job.Job;
import org.garboard.mount.FairedThroughHull;
import org.garboard.mount.KeelPocket;
import org.garboard.mount.Mount;
import org.garboard.mount.PocketWish;
import org.garboard.siting.PlanPoint;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A mount at a place that the yard gives, with its own wishes for what is made there. */
final class PartOptions {
    private static final double MOST_LENGTH = 2;
    private static final double MOST_RATIO = 100;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    private Optional<Mount> mount = Optional.empty();

    @Option(names = "--at", paramLabel = "X,Y", converter = PlaceConverter.class,
        description = "The place, in metres: x aft of the table's origin, y to starboard, port negative; 0 for a pocket athwart the keel.")
    private PlanPoint at;

    @Option(names = "--transducer", paramLabel = "NAME",
        description = "Which transducer of a job that tells several, by its name there.")
    private String transducer;

    private OptionalDouble depth = OptionalDouble.empty();
    private OptionalDouble ramp = OptionalDouble.empty();
    private OptionalDouble gap = OptionalDouble.empty();
    private OptionalDouble height = OptionalDouble.empty();

    @Option(names = "--mount", paramLabel = "WORD",
        description = "The way in, whether or not the job lists it: transom-mount, in-hull, flush-through-hull, "
        + "through-hull-with-fairing-block or keel-pocket.")
    void setMount(String word) {
        mount = Optional.of(Mount.all().stream().filter(each -> each.word().equals(word)).findFirst()
            .orElseThrow(() -> fault("--mount is \"" + word + "\"; it must be one of " + Mount.all().stream().map(Mount::word).collect(Collectors.joining(", ")))));
    }

    @Option(names = "--depth", paramLabel = "L", converter = MetresConverter.class,
        description = "Of a keel pocket's floor above the keel line; else as the job says.")
    void setDepth(double metres) {
        depth = OptionalDouble.of(between("--depth", metres, MOST_LENGTH, " m"));
    }

    @Option(names = "--ramp", paramLabel = "N", converter = NumberConverter.class,
        description = "Length of a keel pocket's ramps to their height, 0 for none; else as the job says.")
    void setRamp(double ratio) {
        ramp = OptionalDouble.of(between("--ramp", ratio, MOST_RATIO, ""));
    }

    @Option(names = "--gap", paramLabel = "L", converter = MetresConverter.class,
        description = "Bedding between body and a keel pocket's wall, each side; else as the job says.")
    void setGap(double metres) {
        gap = OptionalDouble.of(between("--gap", metres, MOST_LENGTH, " m"));
    }

    @Option(names = "--height", paramLabel = "L", converter = MetresConverter.class,
        description = "Of a fairing block's face below the skin; else as the job says.")
    void setHeight(double metres) {
        height = OptionalDouble.of(between("--height", metres, MOST_LENGTH, " m"));
    }

    private double between(String option, double value, double most, String unit) {
        if (!(value >= 0 && value <= most)) {
            throw fault(option + " is " + value + unit + "; it must be from 0.0 to " + most + unit);
        }
        return value;
    }

    /** The place; empty where none of these options is used. */
    Optional<GivenPlace> place() {
        boolean wished = depth.isPresent() || ramp.isPresent() || gap.isPresent() || height.isPresent() || transducer != null;
        if (mount.isEmpty() && at == null && !wished) {
            return Optional.empty();
        }
        if (mount.isEmpty() || at == null) {
            throw fault((mount.isEmpty() ? "--mount" : "--at") + " is missing; a given place is told by --mount and --at together");
        }
        refuseWhatDoesNotGoTogether(mount.get());
        return Optional.of(new GivenPlace(mount.get(), at));
    }

    GivenPlace required() {
        return place().orElseThrow(() -> fault("--mount and --at are missing; tell which mount and where, such as --mount keel-pocket --at 5.2,0"));
    }

    private void refuseWhatDoesNotGoTogether(Mount way) {
        boolean pocket = way instanceof KeelPocket;
        if (!pocket && (depth.isPresent() || ramp.isPresent() || gap.isPresent())) {
            throw fault("--depth, --ramp and --gap are of a keel pocket; leave them away with --mount " + way.word());
        }
        if (!(way instanceof FairedThroughHull) && height.isPresent()) {
            throw fault("--height is of a fairing block; leave it away with --mount " + way.word());
        }
    }

    private ParameterException fault(String words) {
        return new ParameterException(spec.commandLine(), words);
    }

    /** Which of the jobs of one boat, one for each transducer, is meant; the only one need not be named. */
    int among(List<Job> jobs) {
        List<String> names = jobs.stream().map(job -> job.transducer().name()).toList();
        if (transducer == null && jobs.size() > 1) {
            throw fault("--transducer is missing; the job tells " + names.size() + ", name one of them: \"" + String.join("\", \"", names) + "\"");
        }
        if (transducer != null && !names.contains(transducer)) {
            throw fault("--transducer is \"" + transducer + "\"; the job tells \"" + String.join("\", \"", names) + "\""
                + Spelling.meant(transducer, names).map(meant -> "; did you mean \"" + meant + "\"?").orElse(""));
        }
        return transducer == null ? 0 : names.indexOf(transducer);
    }

    /** The job with the wishes that were told here in the place of its own. */
    Job wishing(Job told) {
        PocketWish pocket = told.pocket();
        FairingWish block = told.particulars().fairing();
        return told.wishing(
            new PocketWish(depth.isPresent() ? depth : pocket.depth(), gap.orElse(pocket.gap()), ramp.orElse(pocket.rampRatio()),
                mount.filter(KeelPocket.class::isInstance).isPresent() ? at.y() : pocket.aside(), pocket.make()),
            new FairingWish(block.planform(), block.slenderness(), height.isPresent() ? height : block.height(),
                block.trailingEdgeLower(), block.toe(), block.throughHull()));
    }
}
