package org.garboard.cli.print;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.appendage.Keel;
import org.garboard.hydrostatics.Hydrostatics;
import org.garboard.hydrostatics.KeelAfloat;
import org.garboard.hydrostatics.Together;
import org.garboard.hydrostatics.WetEnds;

/** Figures of a floating hull as CSV, a row for each waterline. */
public final class HydroCsv {
    private static final int PLACES = 6;
    private static final int MASS_PLACES = 3;

    private static final List<String> HULL = List.of("waterline_m", "about_x_m", "trim_deg", "density_kg_per_m3", "volume_m3", "mass_kg", "lcb_x_m", "vcb_z_m",
            "wet_from_x_m", "wet_to_x_m", "wetted_skin_m2", "forward_end_m2", "after_end_m2", "step_faces_m2", "waterplane_m2", "lcf_x_m",
            "transverse_second_moment_m4", "longitudinal_second_moment_m4", "transverse_bm_m", "longitudinal_bm_m");
    private static final List<String> KEEL = List.of("keel_volume_m3", "keel_lcb_x_m", "keel_vcb_z_m", "keel_wetted_m2", "keel_covers_m2",
        "keel_waterplane_m2", "total_volume_m3", "total_mass_kg", "total_lcb_x_m", "total_vcb_z_m", "total_wetted_m2",
        "total_transverse_bm_m", "total_longitudinal_bm_m");

    private final Csv csv;
    private final double density;
    private final Optional<Keel> keel;

    /** @param keel below the skin, whose figures follow those of the hull; without one they have no columns */
    public HydroCsv(PrintWriter out, double density, Optional<Keel> keel) {
        this.csv = new Csv(out);
        this.density = density;
        this.keel = keel;
        List<String> heading = new ArrayList<>(HULL);
        heading.addAll(keel.isPresent() ? KEEL : List.of());
        csv.row(heading.toArray(String[]::new));
    }

    /** @param ends of the same hull in the same water */
    public void print(Hydrostatics afloat, WetEnds ends) {
        List<String> row = new ArrayList<>(List.of(number(afloat.water().height()), number(afloat.water().about()),
            Csv.number(afloat.water().trim().degrees(), PLACES), Csv.number(density, MASS_PLACES),
            number(afloat.volume()), Csv.number(afloat.mass(density), MASS_PLACES), number(afloat.lcb()), number(afloat.vcb()),
            number(afloat.from()), number(afloat.to()), number(afloat.wettedSkin()), number(ends.forward()),
            number(ends.after()), number(ends.steps()), number(afloat.waterplane().area()), number(afloat.waterplane().lcf()),
            number(afloat.waterplane().transverse()), number(afloat.waterplane().longitudinal()),
            number(afloat.transverseBm()), number(afloat.longitudinalBm())));
        keel.ifPresent(below -> row.addAll(below(afloat, KeelAfloat.of(below, afloat.water()))));
        csv.row(row.toArray(String[]::new));
    }

    private List<String> below(Hydrostatics hull, KeelAfloat keel) {
        Together both = Together.of(hull, keel);
        return List.of(number(keel.volume()), number(keel.lcb()), number(keel.vcb()), number(keel.wetted()), number(keel.covered()),
            number(keel.waterplane()), number(both.volume()), Csv.number(both.mass(density), MASS_PLACES), number(both.lcb()),
            number(both.vcb()), number(both.wetted()), number(both.transverseBm()), number(both.longitudinalBm()));
    }

    private static String number(double value) {
        return Csv.number(value, PLACES);
    }
}
