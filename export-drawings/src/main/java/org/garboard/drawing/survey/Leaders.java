package org.garboard.drawing.survey;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.garboard.drawing.Point;
import org.garboard.drawing.survey.Seats.Seat;

/**
 * How leaders run from places to seats, and how well they keep clear: of each other, and of dots that are not theirs.
 * Places that all but coincide may be met from several seats, side by side.
 */
final class Leaders {
    /** Between two leaders [mm]: a pen's width and a half. */
    static final double APART = 0.35;
    /** Between a leader and another's dot, from its middle [mm]: the dot, and a pen's width. */
    static final double OFF_DOT = 0.9;
    /** Places nearer than this are one [mm]. */
    static final double ONE = 1.9;
    private static final int MOST_ROUNDS = 12;
    private static final int MOST_KICKS = 20;
    private static final int KICKED_TO = 24;
    /** One that runs nearly along a station line is hard to tell from it: nearer than this to upright [mm], or per mm of its length. */
    private static final double UPRIGHT = 1.5;
    private static final double LEAN = 0.08;
    /** Touching is so much worse than being upright. */
    private static final int TOUCH = 10;
    /** What a leader goes round [mm] rather than stand upright, or pass over a dot. */
    private static final double DETOUR = 12;
    private static final double FAR_DETOUR = 1000;
    private static final double NEVER = 1e6;
    private static final int FREE = -1;

    private final List<Seat> seats;
    private final int[] seat;
    private final int[] holder;
    private final double[][] ways;
    private int held = FREE;
    // ends of each leader: its place, and the gate of its seat [mm]
    private final double[] px;
    private final double[] py;
    private final double[] gx;
    private final double[] gy;

    private Leaders(List<Point> places, List<Seat> seats, int[] seat) {
        this.seats = seats;
        this.seat = seat;
        this.holder = new int[seats.size()];
        this.px = places.stream().mapToDouble(Point::x).toArray();
        this.py = places.stream().mapToDouble(Point::y).toArray();
        this.ways = new double[seat.length][seats.size()];
        this.gx = new double[seat.length];
        this.gy = new double[seat.length];
        Arrays.fill(holder, FREE);
        for (int i = 0; i < seat.length; i++) {
            take(i, seat[i]);
        }
    }

    /** The shortest that pass by every dot and run along no station line, then those that touch another led elsewhere. */
    static Leaders between(List<Point> places, List<Seat> seats) {
        Leaders leaders = new Leaders(places, seats, IntStream.range(0, places.size()).toArray());
        for (int i = 0; i < places.size(); i++) {
            for (int s = 0; s < seats.size(); s++) {
                leaders.ways[i][s] = leaders.way(i, seats.get(s).gate());
            }
        }
        leaders.seatAs(ShortestMatching.of(leaders.ways));
        leaders.settle();
        for (int kick = 0; kick < MOST_KICKS && leaders.kick(); kick++) {
            // each kick leaves fewer that touch
        }
        return leaders;
    }

    /** From a place to a gate [mm], much farther where that passes over another's dot, and somewhat where it stands upright. */
    private double way(int i, Point gate) {
        gx[i] = gate.x();
        gy[i] = gate.y();
        double way = Math.hypot(gx[i] - px[i], gy[i] - py[i]) + (isUpright(i) ? DETOUR : 0);
        for (int k = 0; k < px.length; k++) {
            boolean other = k != i && Math.hypot(px[i] - px[k], py[i] - py[k]) >= ONE;
            way += other && from(px[k], py[k], i) < OFF_DOT ? FAR_DETOUR : 0;
        }
        return way;
    }

    private boolean isUpright(int i) {
        double aside = Math.abs(gx[i] - px[i]);
        return aside < UPRIGHT || aside < LEAN * Math.abs(gy[i] - py[i]);
    }

    /** Each round leads those that do harm to the seat where they do least. */
    private void settle() {
        boolean better = true;
        for (int round = 0; round < MOST_ROUNDS && better; round++) {
            better = improve();
        }
    }

    /** Where nothing is bettered by one move: holds one that touches to a seat where it passes by every dot, and seats all others anew. */
    private boolean kick() {
        int before = touches();
        int[] kept = seat.clone();
        for (int i = 0; i < seat.length && before > 0; i++) {
            if (touches(i) > 0) {
                for (int s : nearest(i)) {
                    if (ways[i][s] < FAR_DETOUR) {
                        seatAs(ShortestMatching.of(waysAround(i, s)));
                        held = i;
                        settle();
                        held = FREE;
                        if (touches() < before) {
                            return true;
                        }
                    }
                }
                seatAs(kept);
            }
        }
        return false;
    }

    /** Ways where one place has its seat for certain, and others had better not touch its leader. */
    private double[][] waysAround(int i, int s) {
        exchange(i, s);
        double[][] around = new double[ways.length][];
        for (int k = 0; k < ways.length; k++) {
            around[k] = ways[k].clone();
            for (int t = 0; t < seats.size(); t++) {
                if (k == i || t == s) {
                    around[k][t] = k == i && t == s ? 0 : NEVER;
                } else {
                    gx[k] = seats.get(t).gate().x();
                    gy[k] = seats.get(t).gate().y();
                    around[k][t] += FAR_DETOUR * touches(k, i);
                }
            }
        }
        return around;
    }

    /** Seats other than its own, those with the shortest way first. */
    private int[] nearest(int i) {
        return IntStream.range(0, seats.size()).filter(s -> s != seat[i]).boxed()
            .sorted(Comparator.comparingDouble(s -> Math.hypot(seats.get(s).gate().x() - px[i], seats.get(s).gate().y() - py[i])))
            .limit(KICKED_TO).mapToInt(Integer::intValue).toArray();
    }

    private void seatAs(int[] kept) {
        Arrays.fill(holder, FREE);
        for (int i = 0; i < kept.length; i++) {
            take(i, kept[i]);
        }
    }

    Seat seat(int place) {
        return seats.get(seat[place]);
    }

    /** How often a leader touches another, or another's dot. */
    int touches() {
        int touches = 0;
        for (int i = 0; i < seat.length; i++) {
            touches += touches(i);
        }
        return touches;
    }

    private void take(int i, int s) {
        seat[i] = s;
        holder[s] = i;
        gx[i] = seats.get(s).gate().x();
        gy[i] = seats.get(s).gate().y();
    }

    private int harm(int i) {
        return TOUCH * touches(i) + (isUpright(i) ? 1 : 0);
    }

    private int touches(int i) {
        double left = Math.min(px[i], gx[i]) - OFF_DOT;
        double right = Math.max(px[i], gx[i]) + OFF_DOT;
        int touches = 0;
        for (int k = 0; k < seat.length; k++) {
            if (k != i && Math.min(px[k], gx[k]) < right && Math.max(px[k], gx[k]) > left) {
                touches += touches(i, k);
            }
        }
        return touches;
    }

    /** Those of one place meet there and nowhere else. */
    private int touches(int i, int k) {
        boolean one = Math.hypot(px[i] - px[k], py[i] - py[k]) < ONE;
        if (one) {
            return crosses(i, k) ? 1 : 0;
        }
        double dotOfOther = from(px[k], py[k], i);
        double dotOfOwn = from(px[i], py[i], k);
        double gates = Math.min(from(gx[k], gy[k], i), from(gx[i], gy[i], k));
        int touches = (dotOfOther < OFF_DOT ? 1 : 0) + (dotOfOwn < OFF_DOT ? 1 : 0);
        return touches + (crosses(i, k) || Math.min(gates, Math.min(dotOfOther, dotOfOwn)) < APART ? 1 : 0);
    }

    private boolean crosses(int i, int k) {
        return turn(i, px[k], py[k]) * turn(i, gx[k], gy[k]) < 0 && turn(k, px[i], py[i]) * turn(k, gx[i], gy[i]) < 0;
    }

    /** On which side of a leader a point lies. */
    private double turn(int i, double x, double y) {
        return (gx[i] - px[i]) * (y - py[i]) - (gy[i] - py[i]) * (x - px[i]);
    }

    /** Distance of a point from a leader [mm]. */
    private double from(double x, double y, int i) {
        double dx = gx[i] - px[i];
        double dy = gy[i] - py[i];
        double t = Math.max(0, Math.min(1, ((x - px[i]) * dx + (y - py[i]) * dy) / (dx * dx + dy * dy)));
        return Math.hypot(px[i] + t * dx - x, py[i] + t * dy - y);
    }

    /** Leads each that does harm to the free seat, or exchanges it with the one, where least is done. */
    private boolean improve() {
        boolean better = false;
        for (int i = 0; i < seat.length; i++) {
            if (i != held && harm(i) > 0) {
                better |= leadElsewhere(i);
            }
        }
        return better;
    }

    private boolean leadElsewhere(int i) {
        int own = seat[i];
        int best = own;
        int least = 0;
        double shortest = Double.POSITIVE_INFINITY;
        int before = harm(i);
        for (int s = 0; s < seats.size(); s++) {
            if (s != own && (held == FREE || holder[s] != held)) {
                int other = holder[s];
                int harm = before + (other == FREE ? 0 : harm(other));
                exchange(i, s);
                int gain = harm(i) + (other == FREE ? 0 : harm(other)) - harm;
                double way = Math.hypot(gx[i] - px[i], gy[i] - py[i]);
                if (gain < least || gain == least && gain < 0 && way < shortest) {
                    least = gain;
                    best = s;
                    shortest = way;
                }
                exchange(i, own);
            }
        }
        if (best != own) {
            exchange(i, best);
        }
        return best != own;
    }

    /** Seats one, and whoever sat there where it was. */
    private void exchange(int i, int s) {
        int own = seat[i];
        int other = holder[s];
        holder[own] = FREE;
        if (other != FREE) {
            take(other, own);
        }
        take(i, s);
    }
}
