package org.garboard.cli.print;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.layer.LayerLaw;

/** How a boat runs as CSV: for each speed a row at the mean load, and one for each end of the band of load and trim. */
public final class TrimCsv {
    private static final int PLACES = 4;
    private static final int ANGLE_PLACES = 3;
    private static final int LAYER_PLACES = 5;
    private static final List<String> COLUMNS = List.of("speed_kn", "regime", "trim_deg", "wetted_keel_m", "wetted_chine_m", "mean_wetted_beams",
        "stagnation_angle_deg", "drag_n", "layer_at_transom_m", "clear_height_at_transom_m", "draught_m", "froude_number", "speed_coefficient",
        "speed", "load", "mass_kg", "basis");

    private final Csv csv;

    /**
     * One row.
     *
     * @param name of the speed; empty where it has none
     * @param load middle, or which end of the band
     * @param atTransom the layer there
     * @param place what the water does at the place that is asked for
     */
    public record Row(double knots, String name, String load, double mass, Attitude attitude, LayerLaw.Answer atTransom, Optional<PlaceTold> place) {

        /** Why figures are missing, and what is to be said of those that are there. */
        public List<String> remarks() {
            return attitude instanceof Attitude.NotKnown unknown ? List.of("NOT KNOWN: " + unknown.reason())
                : Stream.of(doubts(attitude).stream(),
                    atTransom instanceof LayerLaw.Outside outside ? Stream.of("layer at the transom NOT KNOWN: " + outside.reason()) : Stream.<String>of(),
                    place.stream().flatMap(PlaceTold::remarks)).flatMap(each -> each).distinct().toList();
        }

        private static List<String> doubts(Attitude attitude) {
            return attitude instanceof Attitude.Wetted planes ? planes.doubts()
                : attitude instanceof Attitude.Floats floats ? floats.doubts()
                : attitude instanceof Attitude.Stepped stepped ? Stream.concat(stepped.doubts().stream(),
                    stepped.bottom().air().stream().map(air -> "behind " + air.step() + ": " + air.note())).toList()
                : List.of();
        }
    }

    /** Whether rows tell of a place too. */
    public enum Tells { OF_HER_ALONE, OF_A_PLACE }

    public TrimCsv(PrintWriter out, Tells tells) {
        this.csv = new Csv(out);
        List<String> heading = new ArrayList<>(COLUMNS);
        heading.addAll(tells == Tells.OF_A_PLACE ? PlaceTold.COLUMNS : List.of());
        heading.add("remarks");
        csv.row(heading.toArray(String[]::new));
    }

    public void print(Row row) {
        List<String> fields = new ArrayList<>(List.of(Csv.number(row.knots(), 2), row.attitude().regime().words()));
        fields.addAll(attitude(row.attitude()));
        fields.addAll(layer(row.atTransom()));
        Optional<Attitude.Floats> floats = as(Attitude.Floats.class, row.attitude());
        fields.add(floats.map(each -> Csv.number(each.draught(), PLACES)).orElse(""));
        fields.add(floats.map(each -> Csv.number(each.froude(), ANGLE_PLACES)).orElse(""));
        fields.add(row.attitude().carrying().map(each -> Csv.number(each.speedCoefficient(), ANGLE_PLACES)).orElse(""));
        fields.addAll(List.of(row.name(), row.load(), Csv.number(row.mass(), 1), basis(row.attitude())));
        row.place().ifPresent(place -> fields.addAll(place.fields()));
        fields.add(String.join("; ", row.remarks()));
        csv.row(fields.toArray(String[]::new));
    }

    /** Trim, wetted keel and chine, mean wetted beams, stagnation angle, drag. */
    private static List<String> attitude(Attitude attitude) {
        String trim = attitude.knownTrim().map(angle -> Csv.number(angle.degrees(), ANGLE_PLACES)).orElse("");
        Optional<Attitude.Wetted> wetted = attitude.carrying();
        if (wetted.isEmpty()) {
            return List.of(trim, "", "", "", "", "");
        }
        Optional<Attitude.Planes> planes = as(Attitude.Planes.class, wetted.get());
        return List.of(trim, Csv.number(wetted.get().wettedKeel(), PLACES), planes.map(each -> Csv.number(each.wettedChine(), PLACES)).orElse(""),
            planes.map(each -> Csv.number(each.beams(), PLACES)).orElse(""), Csv.number(wetted.get().stagnationAngle().degrees(), ANGLE_PLACES),
            attitude instanceof Attitude.Stepped ? "" : planes.map(each -> Csv.number(each.drag(), 0)).orElse(""));
    }

    private static <T> Optional<T> as(Class<T> type, Object value) {
        return type.isInstance(value) ? Optional.of(type.cast(value)) : Optional.empty();
    }

    private static String basis(Attitude attitude) {
        return attitude instanceof Attitude.Wetted planes ? planes.basis().words()
            : attitude instanceof Attitude.Floats floats ? floats.basis().words()
            : attitude instanceof Attitude.Stepped stepped ? stepped.basis().words() : "";
    }

    private static List<String> layer(LayerLaw.Answer answer) {
        return answer instanceof LayerLaw.Known known
            ? List.of(Csv.number(known.layer().thickness(), LAYER_PLACES), Csv.number(known.layer().clearHeight(), LAYER_PLACES)) : List.of("", "");
    }
}
