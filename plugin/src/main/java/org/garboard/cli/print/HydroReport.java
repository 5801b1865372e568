package org.garboard.cli.print;

import java.io.PrintWriter;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.garboard.appendage.Keel;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hydrostatics.Floating;
import org.garboard.hydrostatics.Hydrostatics;
import org.garboard.hydrostatics.KeelAfloat;
import org.garboard.hydrostatics.Together;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.hydrostatics.WetEnds;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.LineKind;
import org.garboard.units.FixedDecimal;

/** Figures of a floating hull for people, a column for each waterline. */
public final class HydroReport {
    private final PrintWriter out;
    private final HullOffsets table;
    private final Hull hull;
    private final double density;

    public HydroReport(PrintWriter out, HullOffsets table, Hull hull, double density) {
        this.out = out;
        this.table = table;
        this.hull = hull;
        this.density = density;
    }

    /** Why there are no figures for a waterline. */
    public static String miss(Floating floating, double waterline, Hull hull) {
        String name = "waterline " + FixedDecimal.format(waterline, 3) + " m: ";
        if (floating instanceof Floating.Swamped over) {
            return name + "the water comes over " + outermost(hull) + ", where the skin ends, most at x = "
                + FixedDecimal.format(over.x(), 3) + " m, by " + FixedDecimal.format(over.depth(), 3)
                + " m; a waterline lower by that much or more has figures";
        }
        double above = ((Floating.ClearOfWater) floating).lowest();
        return name + "the hull is clear of the water: its lowest place stands " + FixedDecimal.format(Math.max(0, above), 3)
            + " m above it; a waterline higher by more than that has figures";
    }

    private static String outermost(Hull hull) {
        HullLine line = hull.lines().get(hull.lines().size() - 1);
        return line.kind() == LineKind.SHEER ? "the sheer" : line.kind() == LineKind.EDGE ? "the edge of what was measured"
            : line.name() + ", the edge of what was measured";
    }

    /** @param afloat one at least, all trimmed alike */
    public void print(List<Hydrostatics> afloat) {
        heading(afloat.get(0).water());
        TextTable rows = new TextTable(Stream.concat(Stream.of("<waterline above base", "<"),
            afloat.stream().map(each -> FixedDecimal.format(each.water().height(), 3))).toArray(String[]::new));
        row(rows, afloat, "volume of displacement", "m3", 4, Hydrostatics::volume);
        row(rows, afloat, "mass of displacement", "kg", 1, each -> each.mass(density));
        row(rows, afloat, "centre of buoyancy, x", "m", 3, Hydrostatics::lcb);
        row(rows, afloat, "centre of buoyancy above base", "m", 3, Hydrostatics::vcb);
        row(rows, afloat, "wet from x", "m", 3, Hydrostatics::from);
        row(rows, afloat, "wet to x", "m", 3, Hydrostatics::to);
        row(rows, afloat, "wetted skin, without the ends", "m2", 3, Hydrostatics::wettedSkin);
        List<WetEnds> ends = afloat.stream().map(each -> WetEnds.of(hull, each.water())).toList();
        row(rows, ends, "wet part of the forward end", "m2", 3, WetEnds::forward);
        row(rows, ends, "wet part of the after end", "m2", 3, WetEnds::after);
        if (!hull.steps().isEmpty()) {
            row(rows, ends, "wet part of the steps' faces", "m2", 3, WetEnds::steps);
        }
        row(rows, afloat, "waterplane", "m2", 3, each -> each.waterplane().area());
        row(rows, afloat, "centre of flotation, x", "m", 3, each -> each.waterplane().lcf());
        row(rows, afloat, "second moment, transverse", "m4", 4, each -> each.waterplane().transverse());
        row(rows, afloat, "second moment, longitudinal", "m4", 4, each -> each.waterplane().longitudinal());
        row(rows, afloat, "BM, transverse", "m", 3, Hydrostatics::transverseBm);
        row(rows, afloat, "BM, longitudinal", "m", 3, Hydrostatics::longitudinalBm);
        Keel.of(table, hull).ifPresent(keel -> below(rows, afloat, keel));
        rows.print(out);
    }

    private String closing() {
        boolean square = hull.endsSquare();
        String ends = hull.stem().isPresent() ? (square ? "its stem and a flat end aft" : "its stem and its transom")
            : square ? "flat ends" : "a flat end forward and its transom";
        return hull.steps().isEmpty() ? ends : ends + " and the faces of its steps";
    }

    private void heading(WaterSurface water) {
        out.println(table.title());
        out.println("to the outside of the skin, from x = " + FixedDecimal.format(hull.forwardEnd(), 3) + " m to "
            + FixedDecimal.format(hull.afterEnd(), 3) + " m aft of " + table.origin() + ", closed by " + closing() + "; "
            + Keel.of(table, hull).map(this::keel).orElse("no appendages")
            + (table.strakes().isEmpty() ? "" : "; strakes are not counted"));
        out.println("water of " + FixedDecimal.format(density, 1) + " kg/m3; trim " + FixedDecimal.format(water.trim().degrees(), 2)
            + " deg bow-up, the waterline's height taken at x = " + FixedDecimal.format(water.about(), 3) + " m");
        out.println();
    }

    /** "a keel of flat sides below it from x = 2.000 m to 6.000 m, at its lowest -0.500 m above base at x = 2.000 m". */
    private String keel(Keel keel) {
        Keel.Knee lowest = keel.lowest();
        return "a keel of flat sides below the rabbet from x = " + FixedDecimal.format(keel.from(), 3) + " m to "
            + FixedDecimal.format(keel.to(), 3) + " m, lowest at x = " + FixedDecimal.format(lowest.x(), 3) + " m, z = "
            + FixedDecimal.format(lowest.z(), 3) + " m; no other appendages";
    }

    private void below(TextTable rows, List<Hydrostatics> afloat, Keel keel) {
        row(rows, afloat, "keel: volume", "m3", 4, each -> KeelAfloat.of(keel, each.water()).volume());
        row(rows, afloat, "keel: centre, x", "m", 3, each -> KeelAfloat.of(keel, each.water()).lcb());
        row(rows, afloat, "keel: centre above base", "m", 3, each -> KeelAfloat.of(keel, each.water()).vcb());
        row(rows, afloat, "keel: wetted, with its ends", "m2", 3, each -> KeelAfloat.of(keel, each.water()).wetted());
        row(rows, afloat, "keel: covers of the hull's skin", "m2", 3, each -> KeelAfloat.of(keel, each.water()).covered());
        row(rows, afloat, "keel: waterplane of its own", "m2", 3, each -> KeelAfloat.of(keel, each.water()).waterplane());
        both(rows, afloat, keel, "together: volume", "m3", 4, Together::volume);
        both(rows, afloat, keel, "together: mass", "kg", 1, both -> both.mass(density));
        both(rows, afloat, keel, "together: centre, x", "m", 3, Together::lcb);
        both(rows, afloat, keel, "together: centre above base", "m", 3, Together::vcb);
        both(rows, afloat, keel, "together: wetted, hull's ends left out", "m2", 3, Together::wetted);
        both(rows, afloat, keel, "together: BM, transverse", "m", 3, Together::transverseBm);
        both(rows, afloat, keel, "together: BM, longitudinal", "m", 3, Together::longitudinalBm);
    }

    private static void both(TextTable rows, List<Hydrostatics> afloat, Keel keel, String name, String unit, int places,
                             ToDoubleFunction<Together> figure) {
        row(rows, afloat, name, unit, places,
            each -> figure.applyAsDouble(Together.of(each, KeelAfloat.of(keel, each.water()))));
    }

    private static <T> void row(TextTable rows, List<T> afloat, String name, String unit, int places, ToDoubleFunction<T> figure) {
        rows.row(Stream.concat(Stream.of(name, unit),
            afloat.stream().map(each -> FixedDecimal.format(figure.applyAsDouble(each), places))).toArray(String[]::new));
    }
}
