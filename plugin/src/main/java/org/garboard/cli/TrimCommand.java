package org.garboard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.garboard.appendage.Keel;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.JobSource;
import org.garboard.cli.files.OutputRefused;
import org.garboard.cli.print.FlowCurvesCsv;
import org.garboard.cli.print.TrimCsv;
import org.garboard.cli.print.SkinReach;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Craft;
import org.garboard.craft.RunningSpeed;
import org.garboard.flow.attitude.AtSpeed;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.attitude.CraftRunning;
import org.garboard.flow.layer.LayerLaw;
import org.garboard.flow.place.PlaceInFlow;
import org.garboard.flow.underway.WaterUnderWay;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.mount.LimitName;
import org.garboard.siting.PlanPoint;
import org.garboard.units.FixedDecimal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** How the boat of a job runs. */
@Command(
    name = "trim",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = "garboard trim JOB [--speeds KN ...] [--at X,Y [--within M]] [--upper M] [--pictures DIR [--replace]] [--curves] [--allow-elsewhere] [--threads N]",
    description = {
        "Tells how the boat runs: trim, wetted lengths, boundary layer; as CSV.",
        "%nFor each speed of the job's craft, slowest first, a row under the mean of her weights light and full, and one for "
            + "each end of the band of weight and trim. Where no method holds, the figures are empty, and the last column and a "
            + "message say which limit was met. Nothing is extrapolated.",
        "%nColumns:",
        "  speed_kn                   through the water",
        "  regime                     displacement, between displacement and planing, planing, stepped, or planing outside the method",
        "  trim_deg                   of the base line, bow up",
        "  wetted_keel_m              from the after end of the bottom (of a stepped one, from its first step) forward along the "
            + "base line to where the water meets the keel line; planing only, as the next four",
        "  wetted_chine_m             the same at the chine",
        "  mean_wetted_beams          mean of the two over the mean beam",
        "  stagnation_angle_deg       of the stagnation line to the keel, of the prism that stands for her",
        "  drag_n                     of the bare bottom, in newtons; not told of stepped ones",
        "  layer_at_transom_m         thickness of the boundary layer at the after end of the bottom, on the centreline",
        "  clear_height_at_transom_m  how far a face must stand off the skin there to have nine tenths of the water's speed",
        "  draught_m                  afloat: from the water down to the lowest of the keel line, square to the water",
        "  froude_number              afloat: speed over the root of gravity times wet length",
        "  speed_coefficient          planing: speed over the root of gravity times mean beam",
        "  speed, load, mass_kg       name of the speed; middle or which end of the band; mass",
        "  basis                      worked out, measured, or asked for",
        "  x_m, y_m                   with --at: the place; its layer (layer_m, clear_height_m, displacement_thickness_m); and, afloat, what "
            + "share of the upper water at the bow passes near it (sweep_down_share, 0 to 1)",
        "  depth_m                    of the skin at the place below the undisturbed water",
        "  bead_cavitates_kn          from which speed water boils there at a bead round a flush face, 0.5 mm high in the layer, faired to 5 mm",
        "  block_cavitates_kn         the same at the nose of the job's fairing block, its face as high as clear_height_m, the water 5 degrees aslant",
        "  judged                     whether layer and cavitation are held to limits at this speed, or told only",
        "  remarks                    why figures are missing, and what is to be said of the others",
        "%nEnds with 4 where how she runs is not known at one of the speeds, at her mean weight.%n"})
final class TrimCommand implements Callable<Integer> {
    private static final double MOST_KNOTS = 100;
    private static final double MOST_WITHIN = 5;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "JOB", description = "The job, an XML file as garboard-job.xsd describes it.")
    private Path file;

    private List<Double> speeds = List.of();
    private double within;
    private double upper;

    @Option(names = "--at", paramLabel = "X,Y", converter = PlaceConverter.class,
        description = "Tell layer, cavitation and sweep-down at this place too, in metres: x aft of the table's origin, y to starboard, port negative.")
    private PlanPoint at;

    @Option(names = "--pictures", paramLabel = "DIR",
        description = "Draw running.svg, trim and wetted lengths against speed, and for each speed flow-<speed>kn.svg, the bottom "
            + "from below with stagnation lines, spray, air behind steps, streamlines, layer, wake "
            + "shadows, and what is clean. Earlier pictures are replaced, any other file only with --replace.")
    private Path pictures;

    @Option(names = "--curves", description = "Print the lines of the water on the bottom instead, a row for each point, to starboard: the undisturbed "
        + "water from end to end, stagnation lines, streamlines, and where the layer is of round thicknesses.")
    private boolean curves;

    @Mixin
    private Elsewhere elsewhere;

    @Mixin
    private Replace replace;

    @Mixin
    private Threads threads;

    @Option(names = "--speeds", paramLabel = "KN", arity = "1..*", converter = NumberConverter.class,
        description = "Other speeds than the job's, in knots.")
    void setSpeeds(List<Double> knots) {
        for (double speed : knots) {
            if (!(speed > 0 && speed <= MOST_KNOTS)) {
                throw new ParameterException(spec.commandLine(), "--speeds is " + FixedDecimal.format(speed, 2)
                    + " kn; it must be more than 0 and at most 100");
            }
        }
        this.speeds = knots.stream().distinct().sorted().toList();
    }

    @Option(names = "--within", paramLabel = "M", defaultValue = "0.2", converter = MetresConverter.class,
        description = "Streamlines that pass so near the place count, in metres. Without it: 0.2 (our choice).")
    void setWithin(double metres) {
        this.within = inRange("--within", metres);
    }

    @Option(names = "--upper", paramLabel = "M", defaultValue = "0.3", converter = MetresConverter.class,
        description = "Depth of the water at the bow that carries air, in metres. Without it: 0.3 (our choice).")
    void setUpper(double metres) {
        this.upper = inRange("--upper", metres);
    }

    private double inRange(String option, double metres) {
        if (!(metres > 0 && metres <= MOST_WITHIN)) {
            throw new ParameterException(spec.commandLine(), option + " is " + FixedDecimal.format(metres, 3) + " m; it must be more than 0 and at most 5");
        }
        return metres;
    }

    @Override
    public Integer call() throws InputFault {
        if (curves && at != null) {
            throw new ParameterException(spec.commandLine(), "--curves are of the whole bottom; leave --at away");
        }
        JobSource source = JobSource.read(file, elsewhere.tables());
        Hull hull = Garboard.of(spec).hull(source.table(), source.job().fit());
        BottomFeatures features = source.features(hull);
        if (at != null && Double.isNaN(hull.height(at.x(), Math.abs(at.y())))) {
            return said("--at " + FixedDecimal.format(at.x(), 3) + "," + FixedDecimal.format(at.y(), 3) + " is off the skin, "
                + SkinReach.at(hull, at.x()), Exit.INPUT);
        }
        Optional<Craft> craft = source.job().particulars().craft();
        if (craft.isEmpty()) {
            return said(file + ": how she runs is NOT KNOWN: the job has no <craft>; write her drive, weights and speeds", Exit.NO);
        }
        CraftRunning.Answer answer = CraftRunning.of(hull, Keel.of(source.table().table(), hull), craft.get(),
            OptionalDouble.of(source.job().draught()));
        return answer instanceof CraftRunning.Ready ready ? run(source, hull, features, craft.get(), ready.running())
            : said(file + ": how she runs is NOT KNOWN: " + ((CraftRunning.NotReady) answer).reason(), Exit.NO);
    }

    private int run(JobSource source, Hull hull, BottomFeatures features, Craft craft, CraftRunning running) {
        Garboard.of(spec).stage("finding how she runs");
        List<AtSpeed> asked = asked(craft).stream().map(running::at).toList();
        WaterUnderWay waters = new WaterUnderWay(hull, water(craft), upper);
        TrimRows rows = new TrimRows(craft, waters, place(source, hull, craft));
        PrintWriter out = spec.commandLine().getOut();
        List<String> told = new ArrayList<>(craft.weights().isPresent() ? List.of(running.thrust()) : List.of());
        if (curves) {
            FlowCurvesCsv lines = new FlowCurvesCsv(out, hull);
            for (AtSpeed each : asked) {
                Garboard.of(spec).stage("tracing the water at " + FixedDecimal.format(each.speed().knots(), 1) + " kn");
                lines.print(each, waters);
                told.addAll(remarks(rows.of(each)));
            }
        } else {
            TrimCsv csv = new TrimCsv(out, at == null ? TrimCsv.Tells.OF_HER_ALONE : TrimCsv.Tells.OF_A_PLACE);
            for (AtSpeed each : asked) {
                List<TrimCsv.Row> band = rows.of(each);
                band.forEach(csv::print);
                told.addAll(remarks(band));
            }
        }
        out.flush();
        told.forEach(spec.commandLine().getErr()::println);
        if (pictures != null) {
            try {
                TrimPictures drawn = new TrimPictures(source, hull, features, Version.number(), replace);
                drawn.write(pictures, asked, waters).forEach(spec.commandLine().getErr()::println);
                drawn.diagram(pictures, running, asked).forEach(spec.commandLine().getErr()::println);
            } catch (OutputRefused refused) {
                return said(refused.getMessage(), Exit.USAGE);
            }
        }
        return (asked.stream().anyMatch(each -> each.middle() instanceof Attitude.NotKnown) ? Exit.NO : Exit.DONE).code();
    }

    /** Each remark once, with the loads that it is of. */
    private static List<String> remarks(List<TrimCsv.Row> rows) {
        Map<String, List<String>> loads = new LinkedHashMap<>();
        for (TrimCsv.Row row : rows) {
            row.remarks().forEach(remark -> loads.computeIfAbsent(remark, none -> new ArrayList<>()).add(row.load()));
        }
        return loads.entrySet().stream().map(remark -> FixedDecimal.format(rows.get(0).knots(), 1) + " kn, "
            + (remark.getValue().size() == rows.size() ? "all loads" : String.join(" and ", remark.getValue())) + ": " + remark.getKey()).toList();
    }

    /** The job's speeds, or those of the command line, by the job's names where it has them. */
    private List<RunningSpeed> asked(Craft craft) {
        return speeds.isEmpty() ? craft.speeds() : speeds.stream().map(knots -> craft.speeds().stream().filter(told -> told.knots() == knots).findFirst()
            .orElseGet(() -> new RunningSpeed("", knots, Optional.empty()))).toList();
    }

    private Optional<TrimRows.Place> place(JobSource source, Hull hull, Craft craft) {
        PlaceInFlow flow = new PlaceInFlow(hull, water(craft), LayerLaw.USUAL, source.job().installation().limits().of(LimitName.JUDGED_FROM).value());
        return Optional.ofNullable(at).map(point -> new TrimRows.Place(flow, point, within, source.job().installation().block()));
    }

    private static Water water(Craft craft) {
        return new Water(craft.water().celsius(), craft.water().salinity());
    }

    private int said(String message, Exit exit) {
        spec.commandLine().getErr().println(message);
        return exit.code();
    }
}
