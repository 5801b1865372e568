package org.garboard.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.OutputRefused;
import org.garboard.cli.files.SingleFile;
import org.garboard.cli.files.TableSource;
import org.garboard.cli.print.Csv;
import org.garboard.exchange.SurfaceFile;
import org.garboard.hull.Curve;
import org.garboard.hull.Hull;
import org.garboard.lines.EvenSteps;
import org.garboard.units.FixedDecimal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Sections, buttocks and waterlines of the hull as points. */
@Command(
    name = "lines",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = "garboard lines TABLE [--section X ...] [--buttock Y ...] [--waterline Z ...] [--step S] [--surface FILE] [--exact] [--threads N]",
    description = {
        "Prints sections, buttocks and waterlines as CSV.",
        "%nA row for each point of the starboard side; of the port side for a buttock at a negative distance. Sections run from the keel outward, the others from "
            + "forward aft; a curve that breaks, at a knuckle too, goes on as its next branch.",
        "%nWith --surface it writes the whole surface as B-splines for a CAD kernel.%n"})
final class LinesCommand implements Callable<Integer> {
    /** Points lie so near each other that chords stay within a tenth of a millimetre of the skin. */
    private static final double CHORD = 1e-4;
    /** Even steps are laid off along chords this near the skin [m]: a hundredth of a millimetre. */
    private static final double FINE_CHORD = 1e-5;
    private static final double LEAST_STEP = 1e-4;
    private static final int PLACES = 6;

    @Spec
    private CommandSpec spec;

    @Mixin
    private TableArgument table;

    @Option(names = "--section", paramLabel = "X", arity = "1..*", converter = MetresConverter.class,
        description = "Sections at these distances aft of the table's origin, in metres.")
    private List<Double> sections = List.of();

    @Option(names = "--buttock", paramLabel = "Y", arity = "1..*", converter = MetresConverter.class,
        description = "Buttocks at these distances from the centreline, in metres.")
    private List<Double> buttocks = List.of();

    @Option(names = "--waterline", paramLabel = "Z", arity = "1..*", converter = MetresConverter.class,
        description = "Waterlines at these heights above base, in metres.")
    private List<Double> waterlines = List.of();

    @Option(names = "--step", paramLabel = "S", converter = MetresConverter.class,
        description = "Lay points off evenly along each branch, at most S metres apart. Else they stand as close "
            + "as the curve needs for its chords to stay within 0.1 mm of the skin.")
    private Double step;

    @Option(names = "--surface", paramLabel = "FILE",
        description = "Write the poles, knots and degrees of every panel to this file, XML as garboard-surface.xsd "
            + "describes it: starboard, metres, to the last bit.")
    void setSurface(Path surface) {
        if (surface.toString().isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--surface is empty; name a file");
        }
        this.surface = surface;
    }

    @Mixin
    private Threads threads;

    private Path surface;
    private final List<String> misses = new ArrayList<>();

    @Override
    public Integer call() throws InputFault {
        boolean noCurves = sections.isEmpty() && buttocks.isEmpty() && waterlines.isEmpty();
        if (noCurves && surface == null) {
            throw new ParameterException(spec.commandLine(),
                "no curve is asked for; give --section, --buttock or --waterline, or --surface for the whole");
        }
        if (step != null && step < LEAST_STEP) {
            throw new ParameterException(spec.commandLine(), "--step is " + FixedDecimal.format(step, PLACES)
                + " m; it must be at least " + FixedDecimal.format(LEAST_STEP, 4) + " m");
        }
        TableSource source = table.read();
        Hull hull = table.hull(source);
        try {
            if (surface != null) {
                new SingleFile(surface, SurfaceFile.BEGINNING).write(SurfaceFile.write(hull, Version.number(), source.file()));
            }
        } catch (OutputRefused refused) {
            spec.commandLine().getErr().println(refused.getMessage());
            return Exit.USAGE.code();
        }
        return noCurves ? Exit.DONE.code() : printCurves(hull);
    }

    private int printCurves(Hull hull) {
        double chord = step == null ? CHORD : FINE_CHORD;
        Csv csv = new Csv(spec.commandLine().getOut());
        csv.row("curve", "branch", "position_m", "angle_deg", "x_m", "y_m", "z_m");
        sections.forEach(x -> print(csv, "section", x, 1, hull.section(x, chord)));
        buttocks.forEach(y -> print(csv, "buttock", y, y < 0 ? -1 : 1, hull.buttock(Math.abs(y), chord)));
        waterlines.forEach(z -> print(csv, "waterline", z, 1, hull.waterline(z, chord)));
        spec.commandLine().getOut().flush();
        misses.forEach(spec.commandLine().getErr()::println);
        return (misses.isEmpty() ? Exit.DONE : Exit.INPUT).code();
    }

    /** Curves of the starboard skin; side -1 mirrors them to port. */
    private void print(Csv csv, String name, double position, int side, List<Curve> branches) {
        if (branches.isEmpty()) {
            misses.add("the " + name + " at " + Csv.number(position, PLACES) + " m misses the hull of " + table.name());
        }
        for (int branch = 0; branch < branches.size(); branch++) {
            List<Vector3D> points = branches.get(branch).points();
            for (Vector3D point : step == null ? points : EvenSteps.along(points, step)) {
                csv.row(name, Integer.toString(branch + 1), Csv.number(position, PLACES), "",
                    Csv.number(point.getX(), PLACES), Csv.number(side * point.getY(), PLACES), Csv.number(point.getZ(), PLACES));
            }
        }
    }
}
