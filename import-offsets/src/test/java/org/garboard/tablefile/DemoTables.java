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
 * Writes the demo boats' tables of offsets, here with stations in columns: those of the outboards in feet-inches-eighths, the
 * others in metres.
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
        write(demo.resolve("inboard-58/offsets.csv"), inboard58());
        write(demo.resolve("stepped-38/offsets.csv"), SteppedTable.stepped38());
        write(demo.resolve("displacement-30/offsets.csv"), DisplacementTakeOff.text());
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

    static String inboard58() {
        MetricTable table = new MetricTable("Inboard 58", "to outside of skin",
            0, 0.6, 1.2, 2.4, 3.6, 4.8, 6, 7.2, 8.4, 9.6, 10.8, 12, 13.2, 14.4, 15.6, 16.7, InboardBoat.LENGTH);
        table.heights().row("Sheer", InboardBoat::sheerHeight).row("Chine outer", InboardBoat::chineHeight)
            .row("Chine inner", InboardBoat::chineHeight);
        for (double y : new double[] {2, 1.5, 1, 0.5}) {
            table.row("Buttock " + MetricTable.cell(y), x -> InboardBoat.height(x, y));
        }
        table.row("Top of keel", InboardBoat::topOfKeel).row("Keel", InboardBoat::keel);
        table.halfBreadths().row("Sheer", InboardBoat::sheer).row("Chine outer", InboardBoat::outerChine)
            .row("Chine inner", InboardBoat::chine);
        for (double z : new double[] {2, 1.6, 1.2, 0.8}) {
            table.row("WL " + MetricTable.cell(z), x -> InboardBoat.halfBreadth(x, z));
        }
        return table.row("Top of keel", InboardBoat::siding).row("Half-siding", InboardBoat::siding).text();
    }

    static String displacement30() {
        MetricTable table = new MetricTable("Displacement 30", "to outside of planking",
            0, 0.5, 1, 2, 3, 4, 5, 6, 7, 7.6, DisplacementBoat.STERNPOST, 8.6, DisplacementBoat.LENGTH);
        table.heights().row("Sheer", DisplacementBoat::sheerHeight);
        for (double y : new double[] {1.2, 0.9, 0.6, 0.3}) {
            table.row("Buttock " + MetricTable.cell(y), x -> DisplacementBoat.height(x, y));
        }
        table.row("Rabbet", DisplacementBoat::rabbet).row("Keel bottom", DisplacementBoat::keelBottom);
        table.halfBreadths().row("Sheer", DisplacementBoat::sheer);
        for (double z : new double[] {1.6, 1.4, 1.2, 1.05, 0.9, 0.75}) {
            table.row("WL " + MetricTable.cell(z), x -> DisplacementBoat.halfBreadth(x, z));
        }
        return table.row("Half-siding at rabbet", DisplacementBoat::siding)
            .row("Half-siding at keel bottom", DisplacementBoat::keelBottomSiding).text();
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
