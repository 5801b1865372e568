package org.garboard.hull;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * Curves of a panel on which a y + b z = c: buttocks (1, 0), waterlines (0, 1), diagonals.
 *
 * <p>The panel is netted in its parameters, crossings are found on the net's threads to rounding,
 * joined mesh by mesh, and refined until the chords lie within a distance of the curve.
 */
final class LevelCurves {
    private static final int MESHES_PER_CELL = 4;
    private static final int MOST_HALVINGS = 8;

    private final Panel panel;
    private final double a;
    private final double b;
    private final double c;
    private final double[] netX;
    private final double[] netV;
    private final double[] point = new double[Panel.POINT_SIZE];

    /** A place in the panel's parameters. */
    private record Place(double x, double v) {
    }

    LevelCurves(Panel panel, double a, double b, double c) {
        this.panel = panel;
        this.a = a;
        this.b = b;
        this.c = c;
        this.netX = net(panel.cells().along());
        this.netV = net(panel.cells().across());
    }

    private static double[] net(CellIndex cells) {
        double[] net = new double[cells.cells() * MESHES_PER_CELL + 1];
        for (int i = 0; i < net.length; i++) {
            int cell = Math.min(i / MESHES_PER_CELL, cells.cells() - 1);
            double part = (double) (i - cell * MESHES_PER_CELL) / MESHES_PER_CELL;
            net[i] = cells.bound(cell) + part * (cells.bound(cell + 1) - cells.bound(cell));
        }
        return net;
    }

    private double height(double x, double v) {
        panel.evaluate(x, v, point, 0);
        return a * point[Panel.Y] + b * point[Panel.Z] - c;
    }

    /** The curves as runs of points, each from its forward end aft. */
    List<List<Vector3D>> trace(double chord) {
        List<List<Vector3D>> curves = new ArrayList<>();
        for (List<Place> run : chains().stream().flatMap(chain -> onSkin(chain).stream()).toList()) {
            List<Vector3D> points = new ArrayList<>();
            points.add(at(run.get(0)));
            for (int i = 1; i < run.size(); i++) {
                refine(run.get(i - 1), run.get(i), chord, MOST_HALVINGS, points);
            }
            if (points.get(0).getX() > points.get(points.size() - 1).getX()) {
                Collections.reverse(points);
            }
            curves.add(points);
        }
        return curves;
    }

    /** The parts of a run that the faces at the panel's ends leave. */
    private List<List<Place>> onSkin(List<Place> run) {
        if (panel.isWhole()) {
            return List.of(run);
        }
        List<List<Place>> parts = new ArrayList<>();
        List<Place> part = new ArrayList<>();
        for (int i = 0; i < run.size(); i++) {
            Place here = run.get(i);
            boolean skin = panel.isSkin(here.x, here.v);
            if (i > 0 && skin != panel.isSkin(run.get(i - 1).x, run.get(i - 1).v)) {
                part.add(skin ? edge(here, run.get(i - 1)) : edge(run.get(i - 1), here));
            }
            if (skin) {
                part.add(here);
            } else if (!part.isEmpty()) {
                parts.add(part);
                part = new ArrayList<>();
            }
        }
        parts.add(part);
        return parts.stream().filter(each -> each.size() > 1).toList();
    }

    /** Where the curve leaves the skin between two of its places. */
    private Place edge(Place skin, Place off) {
        Place on = skin;
        Place beyond = off;
        for (int i = 0; i < 50; i++) {
            Place middle = onCurve(0.5 * (on.x + beyond.x), 0.5 * (on.v + beyond.v));
            if (panel.isSkin(middle.x, middle.v)) {
                on = middle;
            } else {
                beyond = middle;
            }
        }
        return on;
    }

    private Vector3D at(Place place) {
        panel.evaluate(place.x, place.v, point, 0);
        return Vector3D.of(point[Panel.X], point[Panel.Y], point[Panel.Z]);
    }

    private void refine(Place from, Place to, double chord, int depth, List<Vector3D> points) {
        Place middle = onCurve(0.5 * (from.x + to.x), 0.5 * (from.v + to.v));
        Vector3D start = at(from);
        Vector3D end = at(to);
        Vector3D between = at(middle);
        Vector3D span = end.subtract(start);
        double length = span.norm();
        double sagitta = length > 0 ? span.cross(between.subtract(start)).norm() / length : 0;
        if (depth > 0 && sagitta > chord) {
            refine(from, middle, chord, depth - 1, points);
            refine(middle, to, chord, depth - 1, points);
        } else {
            points.add(end);
        }
    }

    /** Newton's method down the gradient, in parameters scaled by the net. */
    private Place onCurve(double x, double v) {
        double scaleX = netX[1] - netX[0];
        double scaleV = netV[1] - netV[0];
        double px = x;
        double pv = v;
        for (int i = 0; i < 8; i++) {
            double f = height(px, pv);
            double dx = (height(clampX(px + 1e-5 * scaleX), pv) - height(clampX(px - 1e-5 * scaleX), pv)) / 2e-5;
            double dv = (height(px, clampV(pv + 1e-5 * scaleV)) - height(px, clampV(pv - 1e-5 * scaleV))) / 2e-5;
            double square = dx * dx + dv * dv;
            if (Math.abs(f) < 1e-10 || !(square > 0)) {
                break;
            }
            px = clampX(px - f * dx / square * scaleX);
            pv = clampV(pv - f * dv / square * scaleV);
        }
        return new Place(px, pv);
    }

    private double clampX(double x) {
        return Math.min(netX[netX.length - 1], Math.max(netX[0], x));
    }

    private double clampV(double v) {
        return Math.min(1, Math.max(0, v));
    }

    private List<List<Place>> chains() {
        int nu = netX.length;
        int nv = netV.length;
        double[] field = new double[nu * nv];
        for (int i = 0; i < nu; i++) {
            for (int k = 0; k < nv; k++) {
                field[i * nv + k] = height(netX[i], netV[k]);
            }
        }
        Map<Integer, List<Integer>> links = new LinkedHashMap<>();
        for (int i = 0; i + 1 < nu; i++) {
            for (int k = 0; k + 1 < nv; k++) {
                linkMesh(field, i, k, links);
            }
        }
        return walk(links, field);
    }

    /** Threads have the number of their first knot twice over, plus one for those across. */
    private void linkMesh(double[] field, int i, int k, Map<Integer, List<Integer>> links) {
        int nv = netV.length;
        int corner = i * nv + k;
        int[] corners = {corner, corner + nv, corner + nv + 1, corner + 1};
        int[] threads = {2 * corner, 2 * (corner + nv) + 1, 2 * (corner + 1), 2 * corner + 1};
        int[] crossed = new int[4];
        int count = 0;
        for (int side = 0; side < 4; side++) {
            if (field[corners[side]] < 0 != field[corners[(side + 1) % 4]] < 0) {
                crossed[count++] = threads[side];
            }
        }
        if (count == 2) {
            link(links, crossed[0], crossed[1]);
        } else if (count == 4) {
            double centre = 0.25 * (field[corners[0]] + field[corners[1]] + field[corners[2]] + field[corners[3]]);
            int turn = centre < 0 == field[corners[0]] < 0 ? 0 : 1;
            link(links, crossed[turn], crossed[(turn + 1) % 4]);
            link(links, crossed[(turn + 2) % 4], crossed[(turn + 3) % 4]);
        }
    }

    private static void link(Map<Integer, List<Integer>> links, int one, int other) {
        links.computeIfAbsent(one, key -> new ArrayList<>(2)).add(other);
        links.computeIfAbsent(other, key -> new ArrayList<>(2)).add(one);
    }

    private List<List<Place>> walk(Map<Integer, List<Integer>> links, double[] field) {
        List<List<Place>> chains = new ArrayList<>();
        List<Integer> starts = new ArrayList<>();
        links.forEach((thread, ends) -> {
            if (ends.size() == 1) {
                starts.add(thread);
            }
        });
        starts.addAll(links.keySet());
        for (int start : starts) {
            if (!links.containsKey(start) || links.get(start).isEmpty()) {
                continue;
            }
            List<Place> chain = new ArrayList<>();
            chain.add(crossing(start, field));
            int here = start;
            while (!links.get(here).isEmpty()) {
                int next = links.get(here).get(0);
                links.get(here).remove(Integer.valueOf(next));
                links.get(next).remove(Integer.valueOf(here));
                chain.add(crossing(next, field));
                here = next;
            }
            chains.add(chain);
        }
        return chains;
    }

    private Place crossing(int thread, double[] field) {
        int nv = netV.length;
        int knot = thread / 2;
        int i = knot / nv;
        int k = knot % nv;
        boolean alongX = thread % 2 == 0;
        double low = 0;
        double high = 1;
        boolean rising = field[knot] < 0;
        for (int step = 0; step < 50; step++) {
            double middle = 0.5 * (low + high);
            Place place = between(i, k, alongX, middle);
            if (height(place.x, place.v) < 0 == rising) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return between(i, k, alongX, 0.5 * (low + high));
    }

    private Place between(int i, int k, boolean alongX, double part) {
        return alongX
                ? new Place(netX[i] + part * (netX[i + 1] - netX[i]), netV[k])
                : new Place(netX[i], netV[k] + part * (netV[k + 1] - netV[k]));
    }
}
