package org.garboard.hydrostatics;

import org.garboard.geometry.GaussRule;
import org.garboard.hull.SkinRun;
import org.garboard.hull.TransomFace;

/** What the faces at steps and transom add to the sums of one section, whose skin they close; see {@link WetSection}. */
final class FaceOfSection {
    private static final GaussRule RULE = GaussRule.of(12);
    private static final int MOST_ROUNDS = 50;

    private final double x;
    private final double water;
    private final double[] out;

    /** @param out sums that are added to */
    FaceOfSection(double x, double water, double[] out) {
        this.x = x;
        this.water = water;
        this.out = out;
    }

    /** Across the transom from the centreline to where the first run begins. */
    void toFirst(SkinRun run) {
        if (run.panel().isAtStem(x)) {
            across(run, run.from(), 1);
            return;
        }
        if (run.panel().aft() instanceof TransomFace face) {
            transom(face, 0, run.y(run.from()), run.z(run.from()));
        }
    }

    /** From the end of one run to where the next begins: up a step, or along the transom. */
    void between(SkinRun from, SkinRun to) {
        if (from.panel().isAtStem(x)) {
            across(from, from.to(), -1);
            across(to, to.from(), 1);
            return;
        }
        if (from.panel().aft() == to.panel().aft() && from.panel().aft() instanceof TransomFace face) {
            transom(face, from.y(from.to()), to.y(to.from()), from.z(from.to()));
        } else {
            step(from, to);
        }
    }

    /** Where the transom cuts the last run short of the sheer: in to the centreline, or out to the water. */
    void fromLast(SkinRun run) {
        if (run.panel().isAtStem(x)) {
            across(run, run.to(), -1);
            return;
        }
        double y = run.y(run.to());
        double z = run.z(run.to());
        if (run.panel().aft() instanceof TransomFace face) {
            if (face.slopeUp(z) < 0) {
                transom(face, y, 0, z);
            } else if (z < water && face.roundPerSquare() > 0) {
                transom(face, y, Math.sqrt(Math.max(0, (face.profile(water) - x) / face.roundPerSquare())), z);
            }
        }
    }

    /** Level across the stem, where it stands at this x, out to a run's end or in from it. */
    private void across(SkinRun run, double v, int way) {
        if (run.z(v) < water) {
            double y = run.y(v);
            out[WetSection.HALF_BREADTH] += way * y;
            out[WetSection.CUBE] += way * y * y * y;
        }
    }

    private void step(SkinRun from, SkinRun to) {
        double y = from.y(from.to());
        double low = Math.min(water, from.z(from.to()));
        double high = Math.min(water, to.z(to.from()));
        out[WetSection.AREA] += y * (high - low);
        out[WetSection.HEIGHT_MOMENT] += y * (high * high - low * low) / 2;
    }

    /** Along the transom, where it stands at this x, from one half-breadth to another; its height turns nowhere between. */
    private void transom(TransomFace face, double from, double to, double guess) {
        boolean wetFirst = height(face, from, guess) < water;
        boolean wetLast = height(face, to, guess) < water;
        if (from == to || !wetFirst && !wetLast) {
            return;
        }
        double edge = wetFirst == wetLast ? to : crossing(face, from, to, guess);
        double start = wetFirst ? from : edge;
        double end = wetLast ? to : edge;
        for (int i = 0; i < RULE.size(); i++) {
            double y = start + (end - start) * RULE.at(i);
            double z = height(face, y, guess);
            double area = (end - start) * RULE.weight(i) * y * -face.slopeOut(y) / face.slopeUp(z);
            out[WetSection.AREA] += area;
            out[WetSection.HEIGHT_MOMENT] += area * z;
        }
        out[WetSection.HALF_BREADTH] += end - start;
        out[WetSection.CUBE] += end * end * end - start * start * start;
    }

    /** Height at which the transom stands at this x, at a half-breadth; Newton's method. */
    private double height(TransomFace face, double y, double guess) {
        double z = guess;
        for (int i = 0; i < MOST_ROUNDS; i++) {
            double move = (x - face.x(y, z)) / face.slopeUp(z);
            z += move;
            if (!(Math.abs(move) > 1e-13)) {
                break;
            }
        }
        return z;
    }

    private double crossing(TransomFace face, double from, double to, double guess) {
        boolean wet = height(face, from, guess) < water;
        double one = from;
        double other = to;
        for (int i = 0; i < MOST_ROUNDS; i++) {
            double y = 0.5 * (one + other);
            if (height(face, y, guess) < water == wet) {
                one = y;
            } else {
                other = y;
            }
        }
        return 0.5 * (one + other);
    }
}
