package org.garboard.cutout.pocket;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.PocketSection;

/** The pocket cut along its middle and across it, for drawing. */
final class PocketSections {
    /** How much skin is drawn beyond the cut [m]; our choice, enough to see which way the skin runs. */
    private static final double BEYOND = 0.12;
    private static final int PIECES = 96;

    private final PocketForm form;
    private final PocketSurface surface;
    private final double[] net;
    private final PocketOutlines outlines;

    PocketSections(PocketForm form, PocketSurface surface, double[] net, PocketOutlines outlines) {
        this.form = form;
        this.surface = surface;
        this.net = net;
        this.outlines = outlines;
    }

    /** The long section, then A forward, B amidships of the pocket, C aft. */
    List<PocketSection> all() {
        double half = form.floor().length() / 2;
        boolean ramped = form.endRatio() > 0;
        double fore = ramped ? -0.5 * (outlines.extreme(0, -1) + half) : -half / 2;
        double aft = ramped ? 0.5 * (outlines.extreme(0, 1) + half) : half / 2;
        return List.of(section("LONG", 1, 0), section("A", 0, fore), section("B", 0, 0), section("C", 0, aft));
    }

    private PocketSection section(String name, int axis, double at) {
        List<Vector3D> cut = NetCut.line(surface, net, axis, at).stream()
            .map(place -> form.frame().toHull(place[0], place[1], place[2])).toList();
        double from = -outlines.extreme(1 - axis, -1) - BEYOND;
        double to = outlines.extreme(1 - axis, 1) + BEYOND;
        List<Vector3D> skin = new ArrayList<>();
        for (double other : stops(axis, at, from, to)) {
            double u = axis == 0 ? at : other;
            double v = axis == 0 ? other : at;
            double rise = form.frame().outside(u, v);
            if (rise == rise) {
                skin.add(form.frame().toHull(u, v, rise));
            }
        }
        return new PocketSection(name, axis == 0 ? at : 0, skin, cut);
    }

    /** Places along the section, its edges of the skin among them. */
    private List<Double> stops(int axis, double at, double from, double to) {
        List<Double> stops = new ArrayList<>();
        for (int i = 0; i <= PIECES; i++) {
            stops.add(from + (to - from) * i / PIECES);
        }
        if (axis == 0) {
            form.creases().forEach(line -> stops.add(line.v(at)));
        }
        return stops.stream().filter(stop -> stop >= from && stop <= to).sorted().distinct().toList();
    }
}
