package org.garboard.flow.doublebody;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.garboard.flow.panels.PanelMesh;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hydrostatics.Floating;
import org.garboard.hydrostatics.Hydrostatics;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.hydrostatics.WetEnds;

/** Makes the mesh: stations, rows along the girth, then the ends. */
final class Mesher {
    /** How much of the even spacing of stations is given up to crowd them at the ends: our choice. */
    private static final double CROWDING = 0.6;
    /** An end section smaller than this part of the wetted length squared is a stem and needs no closing. */
    private static final double STEM = 1e-6;

    private final Hull hull;
    private final WaterSurface water;
    private final MeshWish wish;
    private final WaterFrame frame;

    Mesher(Hull hull, WaterSurface water, MeshWish wish) {
        this.hull = hull;
        this.water = water;
        this.wish = wish;
        this.frame = new WaterFrame(water);
    }

    /**
     * Rounded or raked, a transom cuts the skin forward of its aftermost place; the mesh goes on to there over the skin as it
     * is drawn on, which is what the water that leaves it does.
     */
    Meshed mesh() {
        if (!hull.steps().isEmpty()) {
            return new Meshed.NotMeshed(String.format(Locale.ROOT, "a bottom with %d step(s), the first at x = %.3f m on the centreline: "
                + "no water runs along it as along a whole one, and this method does not serve", hull.steps().size(), hull.steps().get(0).x(0)));
        }
        Floating floating = Hydrostatics.of(hull, water);
        if (!(floating instanceof Hydrostatics afloat)) {
            return new Meshed.NotMeshed(misses(floating));
        }
        double[] stations = stations(afloat.from(), afloat.to());
        List<WetGirth> sections = new ArrayList<>();
        for (double x : stations) {
            WetGirth section = new WetGirth(hull.panels(), water, x);
            if (!section.fault().isEmpty()) {
                return new Meshed.NotMeshed(section.fault());
            }
            sections.add(section);
        }
        double[] corners = corners(stations, sections);
        return new HullMesh(wish, frame, stations, corners, panels(corners, afloat));
    }

    private String misses(Floating floating) {
        HullLine sheer = hull.lines().get(hull.lines().size() - 1);
        String lies = String.format(Locale.ROOT, "water at %.3f m above base at x = %.3f m, trim %.2f degrees, ",
            water.height(), water.about(), water.trim().degrees());
        if (floating instanceof Floating.Swamped over) {
            return lies + String.format(Locale.ROOT, "comes %.3f m over the sheer at x = %.3f m, where that is %.3f m above base",
                over.depth(), over.x(), sheer.z(over.x()));
        }
        double lowest = ((Floating.ClearOfWater) floating).lowest();
        return lies + String.format(Locale.ROOT, "does not cut the hull: her keel stays %.3f m above it", lowest);
    }

    /** Crowded towards both ends: a blend of even steps and the cosine's. */
    private double[] stations(double from, double to) {
        double[] x = new double[wish.columns() + 1];
        for (int i = 0; i < x.length; i++) {
            double t = (double) i / wish.columns();
            x[i] = from + (to - from) * ((1 - CROWDING) * t + CROWDING * (1 - Math.cos(Math.PI * t)) / 2);
        }
        x[wish.columns()] = to;
        return x;
    }

    private double[] corners(double[] stations, List<WetGirth> sections) {
        int across = wish.rows() + 1;
        RowShares shares = new RowShares(sections, hull.panels().size(), wish.rows());
        double[] corners = new double[3 * stations.length * across];
        double[] point = new double[2];
        for (int line = 0; line < stations.length; line++) {
            double[] parts = shares.parts(sections.get(line));
            for (int k = 0; k < across; k++) {
                sections.get(line).at(parts[k], point);
                int at = 3 * (line * across + k);
                corners[at] = frame.along(stations[line], point[1]);
                corners[at + 1] = point[0];
                corners[at + 2] = k == across - 1 ? 0 : Math.min(0, frame.above(stations[line], point[1]));
            }
        }
        return corners;
    }

    private PanelMesh panels(double[] corners, Hydrostatics afloat) {
        PanelCorners all = new PanelCorners();
        int across = wish.rows() + 1;
        for (int line = 0; line < wish.columns(); line++) {
            for (int k = 0; k < wish.rows(); k++) {
                int here = 3 * (line * across + k);
                int aft = 3 * ((line + 1) * across + k);
                all.add(corners, here, here + 3, aft + 3, aft);
            }
        }
        double length = afloat.to() - afloat.from();
        MeshEnds ends = new MeshEnds(corners, wish, all);
        WetEnds wet = WetEnds.of(hull, water);
        if (hull.stem().isEmpty() && wet.forward() > STEM * length * length) {
            ends.closeForward();
        }
        if (wet.after() > STEM * length * length) {
            if (wish.stern() == Stern.CLOSED) {
                ends.closeAft();
            } else {
                ends.runAft(length);
            }
        }
        return all.mesh();
    }
}
