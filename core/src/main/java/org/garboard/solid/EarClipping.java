package org.garboard.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Fills a loop with loops cut out of it by triangles between their own points: the inner loops are joined to
 * the outer one by bridges, then corners are clipped off one by one (Meisters, <i>Polygons have ears</i>,
 * American Mathematical Monthly 82, 1975; bridges after Eberly, <i>Triangulation by ear clipping</i>; both from memory).
 */
final class EarClipping {
    private final double[] places;
    /** The bridged polygon: vertex of each link, and the links before and after. */
    private final int[] vertex;
    private final int[] before;
    private final int[] after;
    private int links;
    private final int[] corners;
    private int filled;

    private EarClipping(double[] places, int loops) {
        this.places = places;
        int most = places.length / 2 + 2 * loops;
        vertex = new int[most];
        before = new int[most];
        after = new int[most];
        corners = new int[3 * most];
    }

    /**
     * Triangles, counter-clockwise, as indices of vertices numbered loop by loop.
     *
     * @param places u, v of the points of all loops, the outer first
     * @param starts first vertex of each loop, and the number of all behind
     */
    static int[] fill(double[] places, int[] starts) {
        EarClipping clipping = new EarClipping(places, starts.length - 1);
        int ring = clipping.ring(starts[0], starts[1], 1);
        List<int[]> holes = new ArrayList<>();
        for (int loop = 1; loop < starts.length - 1; loop++) {
            holes.add(new int[] {clipping.farthest(starts[loop], starts[loop + 1]), starts[loop], starts[loop + 1]});
        }
        holes.sort(Comparator.comparingDouble((int[] hole) -> -places[2 * hole[0]]).thenComparingInt(hole -> hole[0]));
        for (int[] hole : holes) {
            clipping.bridge(ring, hole);
        }
        clipping.clip(ring);
        return java.util.Arrays.copyOf(clipping.corners, clipping.filled);
    }

    /** Links a loop's vertices, forwards or backwards; the first link. */
    private int ring(int from, int to, int direction) {
        int first = links;
        int count = to - from;
        for (int i = 0; i < count; i++) {
            vertex[links] = direction > 0 ? from + i : to - 1 - i;
            before[links] = first + (i + count - 1) % count;
            after[links] = first + (i + 1) % count;
            links++;
        }
        return first;
    }

    private int farthest(int from, int to) {
        int best = from;
        for (int i = from + 1; i < to; i++) {
            if (places[2 * i] > places[2 * best]) {
                best = i;
            }
        }
        return best;
    }

    /** Joins a hole's farthest point to the nearest link of the polygon that it sees. */
    private void bridge(int ring, int[] hole) {
        int first = ring(hole[1], hole[2], -1);
        int from = first;
        while (vertex[from] != hole[0]) {
            from = after[from];
        }
        int to = nearestSeen(ring, from);
        int twinFrom = twin(from);
        int twinTo = twin(to);
        int next = after[to];
        int previous = before[from];
        join(to, from);
        join(previous, twinFrom);
        join(twinFrom, twinTo);
        join(twinTo, next);
    }

    private int twin(int link) {
        vertex[links] = vertex[link];
        return links++;
    }

    private void join(int one, int other) {
        after[one] = other;
        before[other] = one;
    }

    private int nearestSeen(int ring, int from) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        int link = ring;
        do {
            double distance = Math.hypot(places[2 * vertex[link]] - places[2 * vertex[from]],
                places[2 * vertex[link] + 1] - places[2 * vertex[from] + 1]);
            if (distance < least && opensTowards(link, from) && sees(ring, from, link) && sees(from, from, link)) {
                least = distance;
                best = link;
            }
            link = after[link];
        } while (link != ring);
        if (best < 0) {
            throw new IllegalArgumentException("a loop cut out of another does not lie inside it");
        }
        return best;
    }

    /** Whether the straight from a link to another place starts on the polygon's inside. */
    private boolean opensTowards(int link, int to) {
        double turn = turn(vertex[before[link]], vertex[link], vertex[after[link]]);
        boolean left = turn(vertex[before[link]], vertex[link], vertex[to]) > 0;
        boolean right = turn(vertex[link], vertex[after[link]], vertex[to]) > 0;
        return turn > 0 ? left && right : left || right;
    }

    /** Whether no side of a ring crosses or touches the straight between two links. */
    private boolean sees(int ring, int from, int to) {
        int a = vertex[from];
        int b = vertex[to];
        int link = ring;
        do {
            int c = vertex[link];
            int d = vertex[after[link]];
            if (c != a && c != b && d != a && d != b
                    && turn(a, b, c) > 0 != turn(a, b, d) > 0 && turn(c, d, a) > 0 != turn(c, d, b) > 0) {
                return false;
            }
            link = after[link];
        } while (link != ring);
        return true;
    }

    private void clip(int ring) {
        int left = 1;
        for (int link = after[ring]; link != ring; link = after[link]) {
            left++;
        }
        int link = ring;
        int idle = 0;
        while (left > 3) {
            if (isEar(link)) {
                emit(before[link], link, after[link]);
                join(before[link], after[link]);
                link = after[after[link]];
                left--;
                idle = 0;
            } else {
                link = after[link];
                if (++idle > left) {
                    throw new IllegalArgumentException("loops that cross or touch cannot be filled");
                }
            }
        }
        emit(before[link], link, after[link]);
    }

    private void emit(int one, int two, int three) {
        corners[filled++] = vertex[one];
        corners[filled++] = vertex[two];
        corners[filled++] = vertex[three];
    }

    private boolean isEar(int link) {
        int a = vertex[before[link]];
        int b = vertex[link];
        int c = vertex[after[link]];
        if (!(turn(a, b, c) > TriangleMeasure.LEAST)) {
            return false;
        }
        for (int other = after[after[link]]; other != before[link]; other = after[other]) {
            int p = vertex[other];
            if (p != a && p != b && p != c && turn(a, b, p) >= 0 && turn(b, c, p) >= 0
                    && turn(c, a, p) >= -TriangleMeasure.LEAST) {
                return false;
            }
        }
        return true;
    }

    /** Twice the area of a triangle, above 0 when it turns left. */
    private double turn(int a, int b, int c) {
        double ax = places[2 * a];
        double ay = places[2 * a + 1];
        return (places[2 * b] - ax) * (places[2 * c + 1] - ay) - (places[2 * c] - ax) * (places[2 * b + 1] - ay);
    }
}
