package org.garboard.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.garboard.appendage.Keel;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.TableSource;
import org.garboard.cli.print.HydroCsv;
import org.garboard.cli.print.HydroReport;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.Floating;
import org.garboard.hydrostatics.Hydrostatics;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.hydrostatics.WetEnds;
import org.garboard.offsets.OpenEnd;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How a hull floats to given waterlines. */
@Command(
    name = "hydro",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = "garboard hydro TABLE --waterline Z ... [--trim DEG] [--about X] [--density D] [--csv] [--exact] [--threads N]",
    description = {
        "Tells how the hull floats: displacement, centre of buoyancy, wetted skin, waterplane.",
        "%nA column of figures for each waterline; with --csv a row for each. The hull is upright, in still water, and "
            + "to the outside of its skin; both sides are counted. It is closed by flat ends where the table begins and "
            + "ends. A keel below the rabbet, where the table gives one, is told by itself, and then hull and keel "
            + "together. Nothing else outside the skin is counted: no strake, skeg, rudder or drive.",
        "%nA waterline that misses the hull or comes over the sheer has no figures: a message says so, and the command "
            + "ends with 4.%n"})
final class HydroCommand implements Callable<Integer> {
    /** No boat lies so. */
    private static final double MOST_TRIM = 30;
    /** Salt water as tables of boats take it; common practice, no source. */
    private static final String SEA = "1025";
    /** From lighter than any water to heavier than any sea; what is meant as tonnes or pounds falls outside. */
    private static final double LIGHTEST = 900;
    private static final double HEAVIEST = 1300;

    @Spec
    private CommandSpec spec;

    @Mixin
    private TableArgument argument;

    @Option(names = "--waterline", paramLabel = "Z", arity = "1..*", required = true, converter = MetresConverter.class,
        description = "Heights of the water above base, in metres; of a trimmed hull, at --about.")
    private List<Double> waterlines;

    private double trim;
    private double density;

    @Option(names = "--about", paramLabel = "X", converter = MetresConverter.class,
        description = "Where along the hull the height of the water is taken: the x round which a trimmed hull turns, "
            + "in metres aft of the table's origin. Without it: halfway between the ends of the skin.")
    private Double about;

    @Option(names = "--csv", description = "Print a row for each waterline, as CSV.")
    private boolean csv;

    @Mixin
    private Threads threads;

    @Option(names = "--trim", paramLabel = "DEG", defaultValue = "0", converter = NumberConverter.class,
        description = "How far the bow is up, in degrees; negative for a bow that is down.")
    void setTrim(double degrees) {
        if (!(Math.abs(degrees) <= MOST_TRIM)) {
            throw new ParameterException(spec.commandLine(), "--trim is " + FixedDecimal.format(degrees, 2)
                + " deg; it must be from -30 to 30, positive with the bow up");
        }
        this.trim = degrees;
    }

    @Option(names = "--density", paramLabel = "D", defaultValue = SEA, converter = NumberConverter.class,
        description = "Of the water, in kilograms for a cubic metre. Without it: " + SEA + ", salt water (common "
            + "practice); fresh water is 1000.")
    void setDensity(double density) {
        if (!(density >= LIGHTEST && density <= HEAVIEST)) {
            throw new ParameterException(spec.commandLine(), "--density is " + FixedDecimal.format(density, 3)
                + " kg/m3; water has from 900 to 1300, fresh 1000, salt 1025");
        }
        this.density = density;
    }

    @Override
    public Integer call() throws InputFault {
        TableSource source = argument.read();
        Hull hull = argument.hull(source);
        double middle = about == null ? 0.5 * (hull.forwardEnd() + hull.afterEnd()) : about;
        List<Hydrostatics> afloat = new ArrayList<>();
        List<String> misses = new ArrayList<>();
        for (double z : waterlines) {
            WaterSurface water = new WaterSurface(z, middle, Angle.ofDegrees(trim));
            Optional<String> open = openEnd(source, hull, water);
            if (open.isPresent()) {
                misses.add("waterline " + FixedDecimal.format(z, 3) + " m: " + open.get());
                continue;
            }
            Floating floating = Hydrostatics.of(hull, water);
            if (floating instanceof Hydrostatics figures) {
                afloat.add(figures);
            } else {
                misses.add(HydroReport.miss(floating, z, hull));
            }
        }
        print(source, hull, afloat);
        misses.forEach(spec.commandLine().getErr()::println);
        return (misses.isEmpty() ? Exit.DONE : Exit.NO).code();
    }

    /** Beyond an end that is none of the boat there may be more of her in the water. */
    private static Optional<String> openEnd(TableSource source, Hull hull, WaterSurface water) {
        for (OpenEnd end : OpenEnd.values()) {
            double x = end == OpenEnd.FORWARD ? hull.forwardEnd() : hull.afterEnd();
            double lowest = hull.lines().stream().mapToDouble(line -> line.z(x)).min().orElseThrow();
            if (source.table().openEnds().contains(end) && lowest < water.at(x)) {
                return Optional.of("the take-off does not cover the hull: " + (end == OpenEnd.FORWARD ? "forward" : "aft")
                    + " of x = " + FixedDecimal.format(x, 3) + " m, where she is in the water, nothing was measured; if she ends"
                    + " there, say so in a row Covers, with \"to the " + (end == OpenEnd.FORWARD ? "stem" : "transom") + "\" in its next cell");
            }
        }
        return Optional.empty();
    }

    private void print(TableSource source, Hull hull, List<Hydrostatics> afloat) {
        PrintWriter out = spec.commandLine().getOut();
        if (csv) {
            HydroCsv table = new HydroCsv(out, density, Keel.of(source.table(), hull));
            afloat.forEach(figures -> table.print(figures, WetEnds.of(hull, figures.water())));
        } else if (!afloat.isEmpty()) {
            new HydroReport(out, source.table(), hull, density).print(afloat);
        }
        out.flush();
    }
}
