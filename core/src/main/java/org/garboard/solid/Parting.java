package org.garboard.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/**
 * A plane figure parted along lines that run from edge to edge of it, so that each piece may bend by itself.
 *
 * <p>Points are numbered: the outer loop's, the hole's, then those that the lines add. Where a line crosses a loop the
 * loop must have a point, see {@link #crossed}.
 */
public final class Parting {
    /** A point is on a line when it is so near [m]. */
    private static final double ON = 1e-7;

    private final Loop outer;
    private final List<Loop> holes;
    private double[] places;
    private int points;
    private final List<int[]> edges = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();

    /** A line that parts: v over u. */
    @FunctionalInterface
    public interface Line {
        double v(double u);
    }

    /**
     * A piece: numbers of its points, counter-clockwise, and of the loop cut out of it.
     *
     * @param hole empty where there is none
     */
    public record Piece(List<Integer> loop, List<Integer> hole) {
        public Piece {
            loop = List.copyOf(loop);
            hole = List.copyOf(hole);
        }
    }

    private Parting(Loop outer, List<Loop> holes) {
        this.outer = outer;
        this.holes = holes;
        this.places = new double[2 * (outer.size() + holes.stream().mapToInt(Loop::size).sum())];
        add(outer);
        holes.forEach(this::add);
    }

    private void add(Loop loop) {
        for (int i = 0; i < loop.size(); i++) {
            places[2 * points] = loop.u(i);
            places[2 * points + 1] = loop.v(i);
            points++;
        }
    }

    /** The same loop with points where lines cross it. */
    public static Loop crossed(Loop loop, List<Line> lines) {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < loop.size(); i++) {
            int next = (i + 1) % loop.size();
            List<Double> shares = new ArrayList<>(List.of(0.0));
            for (Line line : lines) {
                double here = loop.v(i) - line.v(loop.u(i));
                double there = loop.v(next) - line.v(loop.u(next));
                if (Math.abs(here) > ON && Math.abs(there) > ON && here > 0 != there > 0) {
                    shares.add(crossing(loop, i, next, line));
                }
            }
            Collections.sort(shares);
            for (double share : shares) {
                all.add(loop.u(i) + share * (loop.u(next) - loop.u(i)));
                all.add(loop.v(i) + share * (loop.v(next) - loop.v(i)));
            }
        }
        return Loop.of(all.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static double crossing(Loop loop, int i, int next, Line line) {
        double low = 0;
        double high = 1;
        boolean above = loop.v(i) > line.v(loop.u(i));
        for (int k = 0; k < 60; k++) {
            double middle = (low + high) / 2;
            double u = loop.u(i) + middle * (loop.u(next) - loop.u(i));
            double v = loop.v(i) + middle * (loop.v(next) - loop.v(i));
            if (v > line.v(u) == above) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /**
     * Parts a loop, less a hole.
     *
     * @param holes none, or one
     * @param step between points of the lines [m]
     */
    public static Parting of(Loop outer, List<Loop> holes, List<Line> lines, double step) {
        Parting parting = new Parting(outer, holes);
        for (Line line : lines) {
            parting.lay(line, step);
        }
        parting.trace();
        return parting;
    }

    /** Lays a line between neighbouring points of the loops that lie on it, where it is inside the figure. */
    private void lay(Line line, double step) {
        List<Integer> on = new ArrayList<>();
        int ofLoops = outer.size() + holes.stream().mapToInt(Loop::size).sum();
        for (int i = 0; i < ofLoops; i++) {
            if (Math.abs(v(i) - line.v(u(i))) <= ON) {
                on.add(i);
            }
        }
        on.sort(Comparator.comparingDouble(this::u));
        for (int k = 0; k + 1 < on.size(); k++) {
            double middle = (u(on.get(k)) + u(on.get(k + 1))) / 2;
            double v = line.v(middle);
            if (outer.holds(middle, v) && holes.stream().noneMatch(hole -> hole.holds(middle, v))) {
                chain(line, on.get(k), on.get(k + 1), step);
            }
        }
    }

    private void chain(Line line, int from, int to, double step) {
        double length = u(to) - u(from);
        int parts = Math.max(1, (int) Math.ceil(length / step));
        int last = from;
        for (int i = 1; i < parts; i++) {
            if (2 * points + 2 > places.length) {
                places = Arrays.copyOf(places, 2 * places.length);
            }
            places[2 * points] = u(from) + length * i / parts;
            places[2 * points + 1] = line.v(places[2 * points]);
            both(last, points);
            last = points++;
        }
        both(last, to);
    }

    private void both(int a, int b) {
        edges.add(new int[] {a, b});
        edges.add(new int[] {b, a});
    }

    /** Goes along every edge with the figure to the left; a way round that turns clockwise is that of the hole alone. */
    private void trace() {
        ring(0, outer.size(), 1);
        for (Loop hole : holes) {
            ring(outer.size(), hole.size(), -1);
        }
        List<List<int[]>> leaving = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            leaving.add(new ArrayList<>());
        }
        edges.forEach(edge -> leaving.get(edge[0]).add(edge));
        Set<int[]> used = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Integer> clockwise = new ArrayList<>();
        for (int[] first : edges) {
            List<Integer> way = new ArrayList<>();
            int[] edge = first;
            while (used.add(edge)) {
                way.add(edge[0]);
                edge = next(edge, leaving.get(edge[1]));
            }
            if (twiceArea(way) > 0) {
                pieces.add(new Piece(way, List.of()));
            } else if (!way.isEmpty()) {
                clockwise = way;
            }
        }
        if (!clockwise.isEmpty()) {
            cutOut(clockwise);
        }
    }

    private void ring(int from, int size, int direction) {
        for (int i = 0; i < size; i++) {
            int next = from + (i + 1) % size;
            edges.add(direction > 0 ? new int[] {from + i, next} : new int[] {next, from + i});
        }
    }

    private double twiceArea(List<Integer> way) {
        double sum = 0;
        for (int i = 0; i < way.size(); i++) {
            int a = way.get(i);
            int b = way.get((i + 1) % way.size());
            sum += (u(a) - u(way.get(0))) * (v(b) - v(way.get(0))) - (u(b) - u(way.get(0))) * (v(a) - v(way.get(0)));
        }
        return sum;
    }

    private void cutOut(List<Integer> clockwise) {
        List<Integer> hole = new ArrayList<>(clockwise);
        Collections.reverse(hole);
        for (int i = 0; i < pieces.size(); i++) {
            if (loop(pieces.get(i).loop()).holds(u(hole.get(0)), v(hole.get(0)))) {
                pieces.set(i, new Piece(pieces.get(i).loop(), hole));
                return;
            }
        }
        throw new IllegalArgumentException("a hole lies outside what it is cut out of");
    }

    /** The first way on, clockwise from the way back. */
    private int[] next(int[] came, List<int[]> ways) {
        double back = direction(came[1], came[0]);
        int[] best = ways.get(0);
        double least = Double.POSITIVE_INFINITY;
        for (int[] way : ways) {
            double turn = back - direction(way[0], way[1]);
            double clockwise = turn <= 0 ? turn + 2 * Math.PI : turn;
            if (way[1] != came[0] && clockwise < least) {
                least = clockwise;
                best = way;
            }
        }
        return best;
    }

    private double direction(int a, int b) {
        return Math.atan2(v(b) - v(a), u(b) - u(a));
    }

    public List<Piece> pieces() {
        return List.copyOf(pieces);
    }

    public int points() {
        return points;
    }

    public double u(int point) {
        return places[2 * point];
    }

    public double v(int point) {
        return places[2 * point + 1];
    }

    /** Points as a loop. */
    public Loop loop(List<Integer> numbers) {
        double[] at = new double[2 * numbers.size()];
        for (int i = 0; i < numbers.size(); i++) {
            at[2 * i] = u(numbers.get(i));
            at[2 * i + 1] = v(numbers.get(i));
        }
        return Loop.of(at);
    }
}
