package org.garboard.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cli.print.Csv;
import org.garboard.hull.Curve;
import org.garboard.hull.Hull;
import org.garboard.lines.DrawnLine;
import org.garboard.lines.DrawnLine.Diagonal;
import org.garboard.lines.EvenSteps;
import org.garboard.lines.ExpandedSection;
import org.garboard.units.FixedDecimal;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The curves of the hull that a command line asks for, and their points as CSV. */
final class AskedCurves {
    /** Points lie so near each other that chords stay within a tenth of a millimetre of the skin. */
    private static final double CHORD = 1e-4;
    /** Even steps are laid off along chords this near the skin [m]: a hundredth of a millimetre. */
    private static final double FINE_CHORD = 1e-5;
    /** To see whether a line meets the hull at all [m]. */
    private static final double ROUGH_CHORD = 1e-2;
    private static final double LEAST_STEP = 1e-4;
    private static final int PLACES = 6;
    private static final int DEGREE_PLACES = 5;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--section", paramLabel = "X", arity = "1..*", converter = MetresConverter.class,
        description = "Sections at these distances aft of the table's origin, in metres.")
    private List<Double> sections = List.of();

    @Option(names = "--buttock", paramLabel = "Y", arity = "1..*", converter = MetresConverter.class,
        description = "Buttocks at these distances from the centreline, in metres.")
    private List<Double> buttocks = List.of();

    @Option(names = "--waterline", paramLabel = "Z", arity = "1..*", converter = MetresConverter.class,
        description = "Waterlines at these heights above base, in metres.")
    private List<Double> waterlines = List.of();

    @Option(names = "--diagonal", paramLabel = "Z:DEG", arity = "1..*", converter = DiagonalConverter.class,
        description = "Diagonals: each starts on the centreline Z metres above base and runs outward and down, DEG degrees "
            + "below the horizontal.")
    private List<Diagonal> diagonals = List.of();

    @Option(names = "--expanded", paramLabel = "X", arity = "1..*", converter = MetresConverter.class,
        description = "Sections at these x laid out flat: the girth along the skin from the keel line stands in y_m. CSV only.")
    private List<Double> expanded = List.of();

    private Double step;

    @Option(names = "--step", paramLabel = "S", converter = MetresConverter.class,
        description = "Lay points off evenly along each branch, at most S metres apart. Else they stand as close "
            + "as the curve needs for its chords to stay within 0.1 mm of the skin.")
    void setStep(double step) {
        if (step < LEAST_STEP) {
            throw new ParameterException(spec.commandLine(), "--step is " + FixedDecimal.format(step, PLACES)
                + " m; it must be at least " + FixedDecimal.format(LEAST_STEP, 4) + " m");
        }
        this.step = step;
    }

    boolean none() {
        return sections.isEmpty() && buttocks.isEmpty() && waterlines.isEmpty() && diagonals.isEmpty() && expanded.isEmpty();
    }

    boolean stepped() {
        return step != null;
    }

    List<Double> sections() {
        return sections;
    }

    List<Double> buttocks() {
        return buttocks;
    }

    List<Double> waterlines() {
        return waterlines;
    }

    List<Diagonal> diagonals() {
        return diagonals;
    }

    List<Double> expanded() {
        return expanded;
    }

    /** One curve that is asked for: what the CSV says of it, and which line it is; side -1 mirrors it to port. */
    private record Asked(String name, String position, String angle, int side, DrawnLine line) {
        String words() {
            return name + " at " + position + " m" + (angle.isEmpty() ? "" : ", " + angle + " deg");
        }
    }

    private List<Asked> asked() {
        List<Asked> asked = new ArrayList<>();
        sections.forEach(x -> asked.add(new Asked("section", number(x), "", 1, new DrawnLine.Section(x))));
        buttocks.forEach(y -> asked.add(new Asked("buttock", number(y), "", y < 0 ? -1 : 1, new DrawnLine.Buttock(Math.abs(y)))));
        waterlines.forEach(z -> asked.add(new Asked("waterline", number(z), "", 1, new DrawnLine.Waterline(z))));
        diagonals.forEach(each -> asked.add(new Asked("diagonal", number(each.z()),
            Csv.number(each.below().degrees(), DEGREE_PLACES), 1, each)));
        return asked;
    }

    /** Prints a row for each point, and returns what is to be said of curves that miss the hull. */
    List<String> print(Hull hull, String table, PrintWriter out) {
        Csv csv = new Csv(out);
        csv.row("curve", "branch", "position_m", "angle_deg", "x_m", "y_m", "z_m");
        List<String> misses = new ArrayList<>();
        for (Asked each : asked()) {
            print(csv, each, points(each.line().on(hull, step == null ? CHORD : FINE_CHORD)), table, misses);
        }
        for (double x : expanded) {
            List<Curve> curves = step == null ? ExpandedSection.at(hull, x, CHORD) : ExpandedSection.evenlyAt(hull, x, step);
            print(csv, new Asked("expanded", number(x), "", 1, new DrawnLine.Section(x)),
                curves.stream().map(Curve::points).toList(), table, misses);
        }
        out.flush();
        return misses;
    }

    private List<List<Vector3D>> points(List<Curve> branches) {
        return branches.stream().map(Curve::points).map(points -> step == null ? points : EvenSteps.along(points, step)).toList();
    }

    private static void print(Csv csv, Asked asked, List<List<Vector3D>> branches, String table, List<String> misses) {
        if (branches.isEmpty()) {
            misses.add(miss(asked, table));
        }
        for (int branch = 0; branch < branches.size(); branch++) {
            for (Vector3D point : branches.get(branch)) {
                csv.row(asked.name(), Integer.toString(branch + 1), asked.position(), asked.angle(),
                    number(point.getX()), number(asked.side() * point.getY()), number(point.getZ()));
            }
        }
    }

    /** What is to be said of curves that miss the hull, without printing the others. */
    List<String> misses(Hull hull, String table) {
        return asked().stream().filter(each -> each.line().on(hull, ROUGH_CHORD).isEmpty())
            .map(each -> miss(each, table)).toList();
    }

    private static String miss(Asked asked, String table) {
        return "the " + asked.words() + " misses the hull of " + table;
    }

    private static String number(double metres) {
        return Csv.number(metres, PLACES);
    }
}
