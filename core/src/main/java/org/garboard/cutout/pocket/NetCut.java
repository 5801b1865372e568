package org.garboard.cutout.pocket;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Where a plane along or across a pocket's frame cuts the triangles of its finished face: one line from skin to skin. */
final class NetCut {
    private static final double JOINED = 1e-9;
    /** A plane through points of the net is moved by so much [m]. */
    private static final double ASIDE = 1e-7;

    private final double[] net;
    private final int rings;
    private final int rays;
    private final int axis;
    private final double at;
    private final List<double[][]> pieces = new ArrayList<>();

    private NetCut(PocketSurface surface, double[] net, int axis, double at) {
        this.net = net;
        this.rings = surface.rings();
        this.rays = surface.rays().count();
        this.axis = axis;
        double moved = at;
        for (int i = axis; i < net.length; i += 3) {
            if (Math.abs(net[i] - at) < ASIDE / 10) {
                moved = at + ASIDE;
            }
        }
        this.at = moved;
    }

    /**
     * The line in the plane at a distance along (axis 0) or across (axis 1), from its end of least other coordinate.
     *
     * @return u, v, w of each point; empty where the plane misses the pocket
     */
    static List<double[]> line(PocketSurface surface, double[] net, int axis, double at) {
        NetCut cut = new NetCut(surface, net, axis, at);
        cut.cutBands();
        cut.cutFloor();
        return cut.joined();
    }

    private void cutBands() {
        for (int ray = 0; ray < rays; ray++) {
            int next = (ray + 1) % rays;
            for (int ring = rings - 1; ring > 0; ring--) {
                int a = at(ray, ring);
                int b = at(next, ring);
                int c = at(next, ring - 1);
                int d = at(ray, ring - 1);
                triangle(a, b, c);
                triangle(a, c, d);
            }
        }
    }

    private int at(int ray, int ring) {
        return 3 * (rings * ray + ring);
    }

    private void triangle(int a, int b, int c) {
        List<double[]> ends = new ArrayList<>();
        cross(a, b, ends);
        cross(b, c, ends);
        cross(c, a, ends);
        add(ends);
    }

    /** The floor is plane: one piece between where its outline is crossed. */
    private void cutFloor() {
        List<double[]> ends = new ArrayList<>();
        for (int ray = 0; ray < rays; ray++) {
            cross(at(ray, 0), at((ray + 1) % rays, 0), ends);
        }
        add(ends);
    }

    private void add(List<double[]> ends) {
        if (ends.size() == 2 && distance(ends.get(0), ends.get(1)) > JOINED) {
            pieces.add(new double[][] {ends.get(0), ends.get(1)});
        }
    }

    private void cross(int a, int b, List<double[]> ends) {
        double from = net[a + axis] - at;
        double to = net[b + axis] - at;
        if (from > 0 != to > 0) {
            // from the lower end, so that two triangles find the same place
            boolean turned = net[a] > net[b] || net[a] == net[b] && net[a + 1] > net[b + 1] || net[a] == net[b] && net[a + 1] == net[b + 1] && net[a + 2] > net[b + 2];
            int low = turned ? b : a;
            int high = turned ? a : b;
            double share = (at - net[low + axis]) / (net[high + axis] - net[low + axis]);
            double[] place = new double[3];
            for (int k = 0; k < 3; k++) {
                place[k] = net[low + k] + share * (net[high + k] - net[low + k]);
            }
            ends.add(place);
        }
    }

    private List<double[]> joined() {
        List<double[]> longest = List.of();
        List<double[][]> left = new ArrayList<>(pieces);
        while (!left.isEmpty()) {
            Deque<double[]> line = new ArrayDeque<>(List.of(left.get(0)[0], left.remove(0)[1]));
            boolean grown = true;
            while (grown) {
                grown = false;
                for (int i = 0; i < left.size(); i++) {
                    if (grow(line, left.get(i))) {
                        left.remove(i);
                        grown = true;
                        break;
                    }
                }
            }
            if (line.size() > longest.size()) {
                longest = new ArrayList<>(line);
            }
        }
        int other = 1 - axis;
        if (!longest.isEmpty() && longest.get(0)[other] > longest.get(longest.size() - 1)[other]) {
            java.util.Collections.reverse(longest);
        }
        return longest;
    }

    private static boolean grow(Deque<double[]> line, double[][] piece) {
        for (int end = 0; end < 2; end++) {
            if (distance(line.peekLast(), piece[end]) < JOINED) {
                line.addLast(piece[1 - end]);
                return true;
            }
            if (distance(line.peekFirst(), piece[end]) < JOINED) {
                line.addFirst(piece[1 - end]);
                return true;
            }
        }
        return false;
    }

    private static double distance(double[] a, double[] b) {
        return Math.abs(a[0] - b[0]) + Math.abs(a[1] - b[1]) + Math.abs(a[2] - b[2]);
    }
}
