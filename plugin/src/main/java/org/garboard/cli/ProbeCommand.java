package org.garboard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.garboard.appendage.Keel;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.PointsFile;
import org.garboard.cli.files.TableSource;
import org.garboard.cli.print.Csv;
import org.garboard.cli.print.SkinReach;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.LaidFeature;
import org.garboard.hull.Hull;
import org.garboard.hull.SkinPoint;
import org.garboard.offsets.HullOffsets;
import org.garboard.siting.PlanPoint;
import org.garboard.units.FixedDecimal;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What the skin does at given places. */
@Command(
    name = "probe",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    usageHelpWidth = 100,
    customSynopsis = "garboard probe TABLE (--at X,Y ... | --points FILE) [--exact] [--threads N]",
    description = {
        "Tells what the skin does at given places, as CSV.",
        "%nA row for each place, in the order asked: height, deadrise, buttock slope, girth from the keel "
            + "line, principal curvatures and normal. At a knuckle the inboard face answers; above a keel below the skin, or a strake of the table, a message says so. The normal points "
            + "into the water; a sphere seen from outside has k1 = k2 = +1/R.%n",
        "x is aft of the table's origin (station 0, or the forward-most where stations count from aft), y to starboard (port negative), z above base; metres. A place off the "
            + "skin gets empty fields and a message, and the command ends with 3.%n"})
final class ProbeCommand implements Callable<Integer> {
    private static final int METRE_PLACES = 6;
    private static final int DEGREE_PLACES = 5;
    private static final int UNIT_VECTOR_PLACES = 9;

    @Spec
    private CommandSpec spec;

    @Mixin
    private TableArgument table;

    @ArgGroup(multiplicity = "1")
    private Places places;

    @Mixin
    private Threads threads;

    static final class Places {
        @Option(names = "--at", paramLabel = "X,Y", arity = "1..*", converter = PlaceConverter.class,
            description = "Places, in metres.")
        private List<PlanPoint> at;

        @Option(names = "--points", paramLabel = "FILE", description = "A CSV file with the columns x_m,y_m.")
        private Path points;

        List<PlanPoint> read() throws InputFault {
            return points == null ? at : PointsFile.read(points);
        }
    }

    @Override
    public Integer call() throws InputFault {
        List<PlanPoint> asked = places.read();
        TableSource source = table.read();
        Hull hull = table.hull(source);
        Optional<Keel> keel = Keel.of(source.table(), hull);
        PrintWriter out = spec.commandLine().getOut();
        Csv csv = new Csv(out);
        csv.row("x_m", "y_m", "z_m", "deadrise_deg", "buttock_slope_deg", "girth_m", "k1_per_m", "k2_per_m", "nx", "ny", "nz");
        List<PlanPoint> misses = new ArrayList<>();
        for (PlanPoint place : asked) {
            Optional<SkinPoint> skin = hull.at(place.x(), place.y());
            if (skin.isEmpty()) {
                misses.add(place);
            }
            csv.row(skin.map(point -> answer(point, hull)).orElseGet(() -> noAnswer(place)));
        }
        out.flush();
        asked.stream().filter(place -> keel.filter(below -> below.isOver(place.x(), place.y())).isPresent())
            .forEach(place -> spec.commandLine().getErr().println(under(place, keel.orElseThrow())));
        List<LaidFeature> strakes = BottomFeatures.NOT_LISTED.with(source.table(), hull).laid();
        for (PlanPoint place : asked) {
            strakes.stream().filter(strake -> strake.covers(place.x(), place.y())).forEach(strake ->
                spec.commandLine().getErr().println(at(place) + " lies under the " + strake.kind() + " \"" + strake.name()
                    + "\": the row tells of the skin above it"));
        }
        misses.forEach(place -> spec.commandLine().getErr().println(missed(place, hull, source.table())));
        return (misses.isEmpty() ? Exit.DONE : Exit.INPUT).code();
    }

    private static String[] answer(SkinPoint skin, Hull hull) {
        return new String[] {
            metres(skin.x()), metres(skin.y()), metres(skin.z()),
            Csv.number(skin.deadrise().degrees(), DEGREE_PLACES),
            Csv.number(skin.buttockSlope().degrees(), DEGREE_PLACES),
            metres(hull.girth(skin.x(), skin.y())),
            metres(skin.k1()), metres(skin.k2()),
            Csv.number(skin.nx(), UNIT_VECTOR_PLACES),
            Csv.number(skin.ny(), UNIT_VECTOR_PLACES),
            Csv.number(skin.nz(), UNIT_VECTOR_PLACES)};
    }

    private static String[] noAnswer(PlanPoint place) {
        return new String[] {metres(place.x()), metres(place.y()), "", "", "", "", "", "", "", "", ""};
    }

    private static String metres(double value) {
        return Csv.number(value, METRE_PLACES);
    }

    private static String at(PlanPoint place) {
        return "x " + FixedDecimal.format(place.x(), 3) + " m, y " + FixedDecimal.format(place.y(), 3) + " m";
    }

    /** The row then tells of the lid that closes the hull above the keel. */
    private static String under(PlanPoint place, Keel keel) {
        return at(place) + " lies above the keel, which"
            + " hangs " + FixedDecimal.format(keel.depth(place.x()), 3) + " m below the rabbet there: no skin is to be seen";
    }

    private static String missed(PlanPoint place, Hull hull, HullOffsets from) {
        return at(place) + " is " + from.beyond() + " the skin, " + SkinReach.at(hull, place.x());
    }
}
