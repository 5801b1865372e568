package org.garboard.cutout;

import java.util.ArrayList;
import java.util.List;

/**
 * Closed outlines of a pocket in plan of its own frame, as places {along, across} [m]: from forward on
 * the keel, first along starboard, then port.
 */
final class PocketRing {
    /** Chords stay within r (1 - cos(90 deg / 24 / 2)) of a round: 0.05 mm, as a cut file must, up to 90 mm. */
    private static final int CORNER_PIECES = 24;
    private static final int SIDE_PIECES = 24;
    private static final int END_PIECES = 12;
    private static final int RAMP_PIECES = 24;

    private PocketRing() {
    }

    /** The floor's outline. */
    static List<double[]> floor(PocketForm form) {
        double radius = form.cornerRadius();
        double along = form.halfLength() - radius;
        double across = form.halfWidth() - radius;
        List<double[]> starboard = new ArrayList<>();
        for (int i = 0; i < END_PIECES && across > 0; i++) {
            starboard.add(new double[] {-form.halfLength(), across * i / END_PIECES});
        }
        corner(starboard, -along, across, radius, Math.PI);
        for (int i = 1; i < SIDE_PIECES && along > 0; i++) {
            starboard.add(new double[] {along * (2.0 * i / SIDE_PIECES - 1), form.halfWidth()});
        }
        corner(starboard, along, across, radius, Math.PI / 2);
        for (int i = END_PIECES - 1; i >= 0 && across > 0; i--) {
            starboard.add(new double[] {form.halfLength(), across * i / END_PIECES});
        }
        return mirrored(starboard);
    }

    /** A quarter round down from an angle, counted from aft towards starboard; one point if sharp. */
    private static void corner(List<double[]> places, double along, double across, double radius, double from) {
        int pieces = radius > 0 ? CORNER_PIECES : 0;
        for (int i = 0; i <= pieces; i++) {
            double angle = from - (pieces == 0 ? 0 : Math.PI / 2 * i / pieces);
            places.add(new double[] {along + radius * Math.cos(angle), across + radius * Math.sin(angle)});
        }
    }

    /** Where pocket and ramps come out through the skin: the floor's outline where there are no ramps. */
    static List<double[]> opening(PocketForm form, PocketOpening opening) {
        if (!form.ramped()) {
            return floor(form);
        }
        double half = form.halfWidth();
        List<double[]> starboard = new ArrayList<>();
        for (int i = 0; i <= RAMP_PIECES; i++) {
            double across = half * i / RAMP_PIECES;
            starboard.add(new double[] {opening.fore(across), across});
        }
        double from = opening.fore(half);
        double to = opening.after(half);
        for (int i = 1; i < SIDE_PIECES; i++) {
            starboard.add(new double[] {from + (to - from) * i / SIDE_PIECES, half});
        }
        for (int i = RAMP_PIECES; i >= 0; i--) {
            double across = half * i / RAMP_PIECES;
            starboard.add(new double[] {opening.after(across), across});
        }
        return mirrored(starboard);
    }

    private static List<double[]> mirrored(List<double[]> starboard) {
        List<double[]> all = new ArrayList<>(starboard);
        for (int i = starboard.size() - 1; i >= 0; i--) {
            double[] place = starboard.get(i);
            if (place[1] > 1e-12) {
                all.add(new double[] {place[0], -place[1]});
            }
        }
        return all;
    }
}
