package org.garboard.flow.doublebody;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.garboard.geometry.KnotVector;
import org.garboard.hull.Panel;
import org.garboard.hydrostatics.WaterSurface;

/** The skin of one starboard section from the keel to the water's surface, by parts of its girth. */
final class WetGirth {
    /** Chords in each cell of a panel across; they only share out the girth, the corners lie on the skin itself. */
    private static final int CHORDS = 8;
    /** Skin so little out of the water is at its surface [m]. */
    private static final double AT_SURFACE = 1e-7;
    /**
     * A keel so little out of the water beside wet skin is at the surface too [m]: where a keel fades, rounding draws its
     * bottom that much higher than its top. Our choice, more than tables round by and far less than a panel's side.
     */
    private static final double KEEL_AT_SURFACE = 5e-3;

    private final List<Panel> panels;
    private final WaterSurface water;
    private final double x;
    private final double[] place = new double[Panel.DERIVATIVES];
    /** Panel, v and girth of each sample, the last at the water. */
    private final List<double[]> samples = new ArrayList<>();
    private final double[] knuckles;
    private String fault = "";

    WetGirth(List<Panel> panels, WaterSurface water, double x) {
        this.panels = panels;
        this.water = water;
        this.x = x;
        this.knuckles = new double[panels.size() + 1];
        walk();
    }

    /** Why the section cannot be meshed; empty if it can. */
    String fault() {
        return fault;
    }

    /** [m] */
    double girth() {
        return samples.get(samples.size() - 1)[2];
    }

    /** The part of the girth at which a panel ends; 1 where that is above the water. */
    double knuckle(int panel) {
        return girth() > 0 ? Math.min(1, knuckles[panel + 1] / girth()) : 1;
    }

    /** Half-breadth and height at a part of the girth, on the skin [m]. */
    void at(double part, double[] out) {
        double wanted = part * girth();
        int after = 1;
        while (after < samples.size() - 1 && samples.get(after)[2] < wanted) {
            after++;
        }
        double[] one = samples.get(Math.max(0, after - 1));
        double[] other = samples.get(Math.min(after, samples.size() - 1));
        if (one[0] != other[0]) {
            // between the end of one panel and the start of the next there is no girth
            other = new double[] {one[0], 1, other[2]};
        }
        double share = other[2] > one[2] ? (wanted - one[2]) / (other[2] - one[2]) : 0;
        panels.get((int) one[0]).differentiate(x, one[1] + Math.max(0, Math.min(1, share)) * (other[1] - one[1]), place, 0);
        // a stem's face, as narrow as it is, is left out and its edge drawn in to the centreline
        out[0] = wanted == 0 && panels.get((int) one[0]).isAtStem(x) ? 0 : Math.max(0, place[0]);
        out[1] = place[1];
    }

    private void walk() {
        double level = water.at(x);
        double girth = 0;
        double[] last = null;
        boolean wet = false;
        boolean out = false;
        for (int p = 0; p < panels.size(); p++) {
            KnotVector across = panels.get(p).knotsAcross();
            int pieces = across.cells() * CHORDS;
            boolean atStem = panels.get(p).isAtStem(x);
            double off = Double.NaN;
            for (int i = 0; i <= pieces; i++) {
                int cell = Math.min(i / CHORDS, across.cells() - 1);
                double start = across.cellStart(cell);
                double v = start + (across.cellStart(cell + 1) - start) * (i - cell * CHORDS) / CHORDS;
                if (atStem && !panels.get(p).isSkin(x, v)) {
                    if (last != null && !out) {
                        fault = String.format(Locale.ROOT, "the section at x = %.3f m ends on the stem under water, for the stem leans"
                            + " aft there: such a bow is beyond this method", x);
                        return;
                    }
                    off = v;
                    continue;
                }
                if (off == off && last == null) {
                    // the piece in which the skin begins on the stem is begun there
                    v = onStem(panels.get(p), off, v);
                    off = Double.NaN;
                    i--;
                }
                panels.get(p).differentiate(x, v, place, 0);
                double[] here = {p, v, girth, place[0], place[1]};
                if (out) {
                    if (place[1] < level - AT_SURFACE) {
                        fault = String.format(Locale.ROOT, "the section at x = %.3f m comes out of the water and dips into it "
                            + "again at y = %.3f m: such air under the hull is beyond this method", x, place[0]);
                        return;
                    }
                    continue;
                }
                wet |= place[1] < level;
                if (!wet && place[1] > level + KEEL_AT_SURFACE) {
                    dry(here, level);
                    return;
                }
                if (wet && place[1] >= level) {
                    samples.add(crossing(last, here, level));
                    out = true;
                    continue;
                }
                if (last != null) {
                    girth += Math.hypot(place[0] - last[3], place[1] - last[4]);
                    here[2] = girth;
                }
                samples.add(here);
                last = here;
            }
            knuckles[p + 1] = out ? Double.POSITIVE_INFINITY : girth;
        }
        if (last == null && !out) {
            int outer = panels.size() - 1;
            panels.get(outer).differentiate(x, 1, place, 0);
            samples.add(new double[] {outer, 1, 0, place[0], place[1]});
            return;
        }
        if (!out) {
            fault = String.format(Locale.ROOT, "the section at x = %.3f m lies wholly under water", x);
        }
    }

    /** The first place that is skin, on the stem. */
    private double onStem(Panel panel, double off, double skin) {
        double beyond = off;
        double on = skin;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (beyond + on);
            if (panel.isSkin(x, middle)) {
                on = middle;
            } else {
                beyond = middle;
            }
        }
        return on;
    }

    /** No girth: the section shrinks to the keel, which is at the surface unless the skin is out of the water from the first. */
    private void dry(double[] here, double level) {
        boolean fromTheFirst = samples.isEmpty();
        double[] keel = fromTheFirst ? here : samples.get(0);
        samples.clear();
        samples.add(new double[] {keel[0], keel[1], 0, keel[3], keel[4]});
        Arrays.fill(knuckles, 1, knuckles.length, Double.POSITIVE_INFINITY);
        if (fromTheFirst) {
            fault = String.format(Locale.ROOT, "at x = %.3f m the keel is %.3f m out of the water, between places where the hull is in it",
                x, here[4] - level);
        }
    }

    /** Halves the stretch on which the section leaves the water. */
    private double[] crossing(double[] below, double[] above, double level) {
        Panel panel = panels.get((int) above[0]);
        double low = below[0] == above[0] ? below[1] : 0;
        double high = above[1];
        for (int i = 0; i < 50; i++) {
            double middle = 0.5 * (low + high);
            panel.differentiate(x, middle, place, 0);
            if (place[1] < level) {
                low = middle;
            } else {
                high = middle;
            }
        }
        panel.differentiate(x, low, place, 0);
        return new double[] {above[0], low, below[2] + Math.hypot(place[0] - below[3], place[1] - below[4])};
    }
}
