package org.garboard.tablefile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import org.garboard.units.FeetInches;
import org.garboard.units.LengthUnit;

/**
 * Writes the demo boats' tables of offsets, in feet-inches-eighths, stations in columns.
 *
 * <p>After a change of the formulas, run {@link #main} with the demo folder ({@code plugin/src/main/demo})
 * as its argument; the classes of core and of this module's tests are all it needs.
 */
final class DemoTables {
    private final VBottomBoat boat;
    private final double[] stations;
    private final StringBuilder csv = new StringBuilder();

    private DemoTables(VBottomBoat boat, double[] stations) {
        this.boat = boat;
        this.stations = stations;
    }

    public static void main(String[] arguments) throws IOException {
        Path demo = Path.of(arguments[0]);
        write(demo.resolve("outboard-22/offsets.csv"), outboard22());
        write(demo.resolve("outboard-39/offsets.csv"), outboard39());
    }

    private static void write(Path file, String csv) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, csv, StandardCharsets.UTF_8);
    }

    static String outboard22() {
        DemoTables table = new DemoTables(VBottomBoat.outboard22(),
            new double[] {0, 1, 2, 4, 6, 8.5, 11, 13.75, 16.5, 19.25, 22});
        return table.write("Outboard 22", new double[] {1, 2, 3}, new double[] {1.5, 2, 2.5, 3});
    }

    static String outboard39() {
        DemoTables table = new DemoTables(VBottomBoat.outboard39(),
            new double[] {0, 1.5, 3, 6, 9, 12, 15, 19, 23, 27, 31, 35, 39});
        return table.write("Outboard 39", new double[] {1, 2, 3, 4}, new double[] {2.5, 3.25, 4, 4.75});
    }

    private String write(String title, double[] buttocks, double[] waterlines) {
        csv.append("TABLE OF OFFSETS,").append(title).append('\n');
        csv.append("Units,feet-inches-eighths,to outside of skin\n");
        csv.append("Note,an invented boat; its lines are simple formulas rounded to the eighth\n");
        csv.append("Station");
        for (int i = 0; i < stations.length; i++) {
            csv.append(',').append(i);
        }
        csv.append('\n');
        row("Distance from 0", x -> x);
        csv.append("HEIGHTS ABOVE BASE\n");
        row("Sheer", boat::heightOfSheer);
        row("Chine", boat::chineHeight);
        for (int i = buttocks.length - 1; i >= 0; i--) {
            double y = buttocks[i];
            rowWithGaps("Buttock " + cell(y), x -> boat.height(x, y));
        }
        row("Keel", boat::keelHeight);
        csv.append("HALF-BREADTHS FROM CENTRELINE\n");
        row("Sheer", boat::sheerHalfBreadth);
        row("Chine", boat::chineHalfBreadth);
        for (int i = waterlines.length - 1; i >= 0; i--) {
            double z = waterlines[i];
            rowWithGaps("WL " + cell(z), x -> boat.halfBreadth(x, z));
        }
        return csv.toString();
    }

    private void row(String label, DoubleUnaryOperator values) {
        rowWithGaps(label, x -> OptionalDouble.of(values.applyAsDouble(x)));
    }

    private void rowWithGaps(String label, DoubleFunction<OptionalDouble> values) {
        csv.append(label).append(',')
            .append(Arrays.stream(stations).mapToObj(values).map(DemoTables::cell).collect(Collectors.joining(",")))
            .append('\n');
    }

    private static String cell(OptionalDouble feet) {
        return feet.isPresent() ? cell(feet.getAsDouble()) : "—";
    }

    private static String cell(double feet) {
        return FeetInches.dashed(feet * LengthUnit.FOOT.metres());
    }
}
