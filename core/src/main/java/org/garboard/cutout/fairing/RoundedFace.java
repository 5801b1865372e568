package org.garboard.cutout.fairing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.garboard.solid.Draft.Looks;
import org.garboard.solid.Fill;
import org.garboard.solid.Loop;
import org.garboard.solid.Weave;

/**
 * A block's face with its nose rounded: plane abaft of the round, ahead of that strips athwart which end at the round's
 * stations, parted by a hole where one goes through.
 */
final class RoundedFace {
    private static final double SAME = 1e-12;
    private static final double LARGE = 10;
    /** Strips are no narrower [m]. */
    private static final double APART = 1e-6;
    /** Less than the wall between the round and the body's recess [m]. */
    private static final double BEYOND = 0.001;

    private final double[] stations;
    private final Loop outline;
    private final Loop hole;

    /**
     * @param outline of the block, its nose the least u
     * @param hole in the round
     * @param stations u at which the face is straight athwart, from the nose on
     */
    RoundedFace(Loop outline, Loop hole, double[] stations) {
        double from = extreme(hole, -1);
        double to = extreme(hole, 1);
        DoubleStream clear = Arrays.stream(stations).filter(u -> Math.abs(u - from) > APART && Math.abs(u - to) > APART);
        // one strip more, plane already, so that a hole at the end of the round ends inside
        double last = Math.max(stations[stations.length - 1], to) + BEYOND;
        this.stations = DoubleStream.concat(clear, DoubleStream.of(from, to, last)).sorted().toArray();
        this.outline = crossed(outline);
        this.hole = crossed(hole);
    }

    private static double extreme(Loop loop, int sign) {
        double most = sign * loop.u(0);
        for (int i = 1; i < loop.size(); i++) {
            most = Math.max(most, sign * loop.u(i));
        }
        return sign * most;
    }

    /** The same loop with points where stations cross it. */
    private Loop crossed(Loop loop) {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < loop.size(); i++) {
            int next = (i + 1) % loop.size();
            double du = loop.u(next) - loop.u(i);
            double dv = loop.v(next) - loop.v(i);
            all.add(loop.u(i));
            all.add(loop.v(i));
            double low = Math.min(loop.u(i), loop.u(next)) + SAME;
            double high = Math.max(loop.u(i), loop.u(next)) - SAME;
            double[] between = Arrays.stream(stations).filter(u -> u > low && u < high).toArray();
            for (int k = 0; k < between.length; k++) {
                double u = between[du > 0 ? k : between.length - 1 - k];
                all.add(u);
                all.add(loop.v(i) + dv * (u - loop.u(i)) / du);
            }
        }
        return Loop.of(all.stream().mapToDouble(Double::doubleValue).toArray());
    }

    Loop outline() {
        return outline;
    }

    Loop hole() {
        return hole;
    }

    /**
     * Lays it, seen from below.
     *
     * @param edge numbers of the outline's points
     * @param bore of the hole's
     * @param others holes abaft of the round, and the numbers of their points
     */
    void lay(Weave weave, int[] edge, int[] bore, List<Loop> others, List<int[]> numbers) {
        for (int i = 0; i + 1 < stations.length; i++) {
            strip(weave, edge, bore, stations[i], stations[i + 1]);
        }
        Piece rest = new Piece();
        double last = stations[stations.length - 1];
        rest.add(outline, edge, side(outline, -1, last, Double.POSITIVE_INFINITY, 1));
        rest.add(outline, edge, side(outline, 1, last, Double.POSITIVE_INFINITY, -1));
        int[] all = rest.numbers();
        for (int[] more : numbers) {
            int before = all.length;
            all = Arrays.copyOf(all, before + more.length);
            System.arraycopy(more, 0, all, before, more.length);
        }
        weave.face(Looks.DOWN, Fill.of(rest.loop(), others, LARGE), all, (u, v) -> {
            throw new IllegalStateException("a plane face needs no more points");
        });
    }

    private void strip(Weave weave, int[] edge, int[] bore, double from, double to) {
        double holeFrom = extreme(hole, -1);
        double holeTo = extreme(hole, 1);
        if (from > holeFrom - SAME && to < holeTo + SAME) {
            Piece port = new Piece();
            port.add(outline, edge, side(outline, -1, from, to, 1));
            port.add(hole, bore, side(hole, -1, from, to, -1));
            port.lay(weave);
            Piece starboard = new Piece();
            starboard.add(hole, bore, side(hole, 1, from, to, 1));
            starboard.add(outline, edge, side(outline, 1, from, to, -1));
            starboard.lay(weave);
            return;
        }
        Piece piece = new Piece();
        piece.add(outline, edge, side(outline, -1, from, to, 1));
        if (Math.abs(to - holeFrom) < SAME) {
            piece.add(hole, bore, side(hole, 1, to, to, 1));
        }
        piece.add(outline, edge, side(outline, 1, from, to, -1));
        if (Math.abs(from - holeTo) < SAME) {
            piece.add(hole, bore, side(hole, 1, from, from, 1));
        }
        piece.lay(weave);
    }

    /**
     * Points of a loop to port (-1) or starboard (1) between two places, in the order of u (1) or against it (-1); points on the
     * middle belong to both sides.
     */
    private static List<Integer> side(Loop loop, int side, double from, double to, int order) {
        List<Integer> points = new ArrayList<>();
        for (int i = 0; i < loop.size(); i++) {
            if (loop.u(i) >= from - SAME && loop.u(i) <= to + SAME && side * loop.v(i) >= -SAME) {
                points.add(i);
            }
        }
        points.sort((a, b) -> {
            int along = order * Double.compare(loop.u(a), loop.u(b));
            // at the blunt after end from one side to the other
            return along != 0 ? along : Double.compare(loop.v(a), loop.v(b));
        });
        return points;
    }

    /** A piece of the face in the making; a point that stands twice in turn counts once. */
    private static final class Piece {
        private final List<Double> places = new ArrayList<>();
        private final List<Integer> numbers = new ArrayList<>();

        void add(Loop loop, int[] known, List<Integer> points) {
            for (int point : points) {
                if (!numbers.contains(known[point])) {
                    numbers.add(known[point]);
                    places.add(loop.u(point));
                    places.add(loop.v(point));
                }
            }
        }

        Loop loop() {
            return Loop.of(places.stream().mapToDouble(Double::doubleValue).toArray());
        }

        int[] numbers() {
            return numbers.stream().mapToInt(Integer::intValue).toArray();
        }

        void lay(Weave weave) {
            if (numbers.size() > 2) {
                weave.face(Looks.DOWN, Fill.of(loop(), List.of(), LARGE), numbers(), (u, v) -> {
                    throw new IllegalStateException("a strip needs no more points");
                });
            }
        }
    }
}
