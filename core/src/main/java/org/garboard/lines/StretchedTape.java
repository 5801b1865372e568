package org.garboard.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hull.Panel;
import org.garboard.hull.Step;

/**
 * The shortest way between two places that stays outside the skin: a tape pulled tight. Where the skin swells
 * it lies on it and is a geodesic of it; over a hollow it runs straight.
 *
 * <p>The way is drawn in plan as offsets w from the straight line between its ends, at even distances along that
 * line. Over any way in plan, laid out flat, the tape is the lower hull of the skin's heights; which way is
 * shortest is found by Gauss-Newton steps on the sum of the lengths between the places that touch (a
 * tridiagonal system each), shortened until the sum falls. Corners of the skin are put in when it is measured,
 * and where it bends over one, {@link TapeOverCorners} finds the place of the bend.
 */
public final class StretchedTape {
    /** Places lie so near in plan [m]: a chord of a circle of 1 m falls short by 4e-8 of it. */
    private static final double APART = 0.01;
    private static final int FEWEST = 40;
    private static final int MOST = 2000;
    private static final int MOST_ROUNDS = 200;
    /** The sum has settled when a round wins less [m]. */
    private static final double SETTLED = 1e-10;
    private static final int MOST_HALVINGS = 20;
    private static final int HALVINGS_TO_A_CORNER = 60;

    private final Hull hull;
    private final Vector3D from;
    private final double alongX;
    private final double alongY;
    private final int count;
    private final double[] s;
    private final double[] w;
    private final double[] z;
    private final double[] point = new double[Panel.POINT_SIZE];

    private StretchedTape(Hull hull, Vector3D from, Vector3D to) {
        double plan = Math.hypot(to.getX() - from.getX(), to.getY() - from.getY());
        this.hull = hull;
        this.from = from;
        this.alongX = (to.getX() - from.getX()) / plan;
        this.alongY = (to.getY() - from.getY()) / plan;
        this.count = (int) Math.min(MOST, Math.max(FEWEST, Math.ceil(plan / APART))) + 1;
        this.s = new double[count];
        this.w = new double[count];
        this.z = new double[count];
        for (int i = 0; i < count; i++) {
            s[i] = plan * i / (count - 1);
        }
        z[0] = from.getZ();
        z[count - 1] = to.getZ();
    }

    /**
     * The tape between two places of the bottom, on one side or across the keel.
     *
     * @return empty where it would run off the skin, or where the two stand over one another
     */
    public static Optional<TapeRun> between(Hull hull, Vector3D from, Vector3D to) {
        return within(hull, from, to).map(tape -> new TapeOverCorners(hull, tape).settled());
    }

    /** The same where no corner of the skin is crossed; near the shortest where one is, since places stick to it. */
    static Optional<TapeRun> within(Hull hull, Vector3D from, Vector3D to) {
        if (Math.hypot(to.getX() - from.getX(), to.getY() - from.getY()) < 1e-6) {
            return Optional.empty();
        }
        StretchedTape tape = new StretchedTape(hull, from, to);
        return tape.tightened() ? Optional.of(tape.measured()) : Optional.empty();
    }

    private double x(double along, double aside) {
        return from.getX() + along * alongX - aside * alongY;
    }

    private double y(double along, double aside) {
        return from.getY() + along * alongY + aside * alongX;
    }

    /** Draws the tape tight; false where it leaves the skin. */
    private boolean tightened() {
        if (!lay()) {
            return false;
        }
        int[] touching = new TautProfile(s, w, z).touching();
        double sum = length(touching);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double[] move = move(touching);
            double[] before = w.clone();
            double tried = Double.POSITIVE_INFINITY;
            int[] then = touching;
            double share = 1;
            for (int halving = 0; halving < MOST_HALVINGS && !(tried < sum); halving++, share /= 2) {
                moved(before, touching, move, share);
                if (lay()) {
                    then = new TautProfile(s, w, z).touching();
                    tried = length(then);
                }
            }
            if (!(tried < sum)) {
                System.arraycopy(before, 0, w, 0, count);
                return lay();
            }
            boolean settled = sum - tried < SETTLED;
            touching = then;
            sum = tried;
            if (settled) {
                return true;
            }
        }
        return true;
    }

    /** Heights of the skin along the way; false where it leaves the skin. */
    private boolean lay() {
        for (int i = 1; i < count - 1; i++) {
            z[i] = hull.height(x(s[i], w[i]), y(s[i], w[i]));
            if (Double.isNaN(z[i])) {
                return false;
            }
        }
        return true;
    }

    private double length(int[] touching) {
        double sum = 0;
        for (int k = 1; k < touching.length; k++) {
            sum += span(touching[k - 1], touching[k]);
        }
        return sum;
    }

    private double span(int a, int b) {
        double ds = s[b] - s[a];
        double dw = w[b] - w[a];
        double dz = z[b] - z[a];
        return Math.sqrt(ds * ds + dw * dw + dz * dz);
    }

    /** How far each touching place would go aside, in turn of touching: ends stay. */
    private double[] move(int[] touching) {
        int inner = touching.length - 2;
        double[] move = new double[touching.length];
        if (inner < 1) {
            return move;
        }
        double[] rise = new double[touching.length];
        for (int k = 1; k <= inner; k++) {
            rise[k] = riseAside(touching[k]);
        }
        double[] diagonal = new double[inner];
        double[] beside = new double[inner];
        double[] right = new double[inner];
        for (int k = 1; k <= inner; k++) {
            double back = span(touching[k - 1], touching[k]);
            double ahead = span(touching[k], touching[k + 1]);
            diagonal[k - 1] = (1 + rise[k] * rise[k]) * (1 / back + 1 / ahead);
            beside[k - 1] = k == inner ? 0 : -(1 + rise[k] * rise[k + 1]) / ahead;
            right[k - 1] = -(pull(touching[k - 1], touching[k], rise[k]) / back - pull(touching[k], touching[k + 1], rise[k]) / ahead);
        }
        for (int k = 1; k < inner; k++) {
            double share = beside[k - 1] / diagonal[k - 1];
            diagonal[k] -= share * beside[k - 1];
            right[k] -= share * right[k - 1];
        }
        for (int k = inner - 1; k >= 0; k--) {
            move[k + 1] = (right[k] - (k == inner - 1 ? 0 : beside[k] * move[k + 2])) / diagonal[k];
        }
        return move;
    }

    private double pull(int a, int b, double rise) {
        return w[b] - w[a] + (z[b] - z[a]) * rise;
    }

    /** Rise of the skin per way aside. */
    private double riseAside(int i) {
        hull.evaluate(x(s[i], w[i]), y(s[i], w[i]), point, 0);
        return (point[Panel.NX] * alongY - point[Panel.NY] * alongX) / point[Panel.NZ];
    }

    /** Moves touching places by a share of their moves, and sets those between on the straight. */
    private void moved(double[] before, int[] touching, double[] move, double share) {
        for (int k = 1; k < touching.length; k++) {
            int a = touching[k - 1];
            int b = touching[k];
            double atA = before[a] + share * move[k - 1];
            double atB = before[b] + share * move[k];
            for (int i = a; i <= b; i++) {
                w[i] = atA + (atB - atA) * (s[i] - s[a]) / (s[b] - s[a]);
            }
        }
    }

    private TapeRun measured() {
        List<Vector3D> laid = withCorners();
        double[] along = new double[laid.size()];
        double[] aside = new double[laid.size()];
        double[] heights = new double[laid.size()];
        for (int i = 0; i < laid.size(); i++) {
            double dx = laid.get(i).getX() - from.getX();
            double dy = laid.get(i).getY() - from.getY();
            along[i] = dx * alongX + dy * alongY;
            aside[i] = dy * alongX - dx * alongY;
            heights[i] = laid.get(i).getZ();
        }
        TautProfile profile = new TautProfile(along, aside, heights);
        int[] touching = profile.touching();
        List<Vector3D> path = new ArrayList<>();
        double length = 0;
        double off = 0;
        Vector3D at = from;
        for (int k = 0; k < touching.length; k++) {
            path.add(laid.get(touching[k]));
            if (k > 0) {
                length += laid.get(touching[k - 1]).distance(laid.get(touching[k]));
                for (int i = touching[k - 1] + 1; i < touching[k]; i++) {
                    double here = profile.below(i, touching[k - 1], touching[k]) * upright(laid.get(i));
                    if (here > off) {
                        off = here;
                        at = laid.get(i);
                    }
                }
            }
        }
        return new TapeRun(path, length, off, at);
    }

    /** Cosine of the skin's lean, which turns a gap up and down into one square to the skin. */
    private double upright(Vector3D place) {
        return hull.evaluate(place.getX(), place.getY(), point, 0) ? Math.abs(point[Panel.NZ]) : 1;
    }

    /** The way as it is laid, with the places where it crosses knuckles and steps. */
    private List<Vector3D> withCorners() {
        List<Vector3D> laid = new ArrayList<>();
        laid.add(from);
        for (int i = 1; i < count; i++) {
            Vector3D before = laid.get(laid.size() - 1);
            Vector3D next = Vector3D.of(x(s[i], w[i]), y(s[i], w[i]), z[i]);
            corners(before, next, laid);
            laid.add(next);
        }
        return laid;
    }

    private void corners(Vector3D a, Vector3D b, List<Vector3D> laid) {
        List<Double> shares = new ArrayList<>();
        crossing(share -> a.lerp(b, share).getY(), shares);
        for (HullLine line : hull.lines().subList(1, hull.lines().size())) {
            crossing(share -> {
                Vector3D at = a.lerp(b, share);
                return Math.abs(at.getY()) - line.y(at.getX());
            }, shares);
        }
        shares.stream().sorted().forEach(share -> {
            Vector3D at = a.lerp(b, share);
            double height = hull.height(at.getX(), at.getY());
            if (!Double.isNaN(height)) {
                laid.add(Vector3D.of(at.getX(), at.getY(), height));
            }
        });
        for (Step step : hull.steps()) {
            List<Double> there = new ArrayList<>();
            crossing(share -> a.lerp(b, share).getX() - step.x(a.lerp(b, share).getY()), there);
            for (double share : there) {
                Vector3D at = a.lerp(b, share);
                double lower = step.lower(at.getY());
                if (!Double.isNaN(lower)) {
                    laid.add(Vector3D.of(at.getX(), at.getY(), lower));
                }
            }
        }
    }

    /** Where between two places something changes its sign, as a share of the way. */
    private static void crossing(DoubleUnaryOperator value, List<Double> shares) {
        double low = 0;
        double high = 1;
        double atLow = value.applyAsDouble(0);
        double atHigh = value.applyAsDouble(1);
        if (!(atLow * atHigh < 0)) {
            return;
        }
        for (int i = 0; i < HALVINGS_TO_A_CORNER; i++) {
            double middle = 0.5 * (low + high);
            if (value.applyAsDouble(middle) * atLow > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        shares.add(0.5 * (low + high));
    }
}
