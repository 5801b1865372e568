package org.garboard.cli.print;

import java.io.PrintWriter;
import org.garboard.hydrostatics.Hydrostatics;

/** Figures of a floating hull as CSV, a row for each waterline. */
public final class HydroCsv {
    private static final int PLACES = 6;
    private static final int MASS_PLACES = 3;

    private final Csv csv;
    private final double density;

    public HydroCsv(PrintWriter out, double density) {
        this.csv = new Csv(out);
        this.density = density;
        csv.row("waterline_m", "about_x_m", "trim_deg", "density_kg_per_m3", "volume_m3", "mass_kg", "lcb_x_m", "vcb_z_m",
            "wet_from_x_m", "wet_to_x_m", "wetted_skin_m2", "forward_end_m2", "after_end_m2", "step_faces_m2", "waterplane_m2", "lcf_x_m",
            "transverse_second_moment_m4", "longitudinal_second_moment_m4", "transverse_bm_m", "longitudinal_bm_m");
    }

    public void print(Hydrostatics afloat) {
        csv.row(number(afloat.water().height()), number(afloat.water().about()),
            Csv.number(afloat.water().trim().degrees(), PLACES), Csv.number(density, MASS_PLACES),
            number(afloat.volume()), Csv.number(afloat.mass(density), MASS_PLACES), number(afloat.lcb()), number(afloat.vcb()),
            number(afloat.from()), number(afloat.to()), number(afloat.wettedSkin()), number(afloat.forwardEnd()),
            number(afloat.afterEnd()), number(afloat.steps()), number(afloat.waterplane().area()), number(afloat.waterplane().lcf()),
            number(afloat.waterplane().transverse()), number(afloat.waterplane().longitudinal()),
            number(afloat.transverseBm()), number(afloat.longitudinalBm()));
    }

    private static String number(double value) {
        return Csv.number(value, PLACES);
    }
}
