package org.garboard.solid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Where a plane cuts a solid: closed loops in the plane, their corners on edges of the mesh. */
public final class PlaneCut {
    /** A plane through a corner of the mesh is moved aside by this much [m]: nothing that is drawn shows it. */
    private static final double ASIDE = 1e-7;

    private final Solid solid;
    private final double[] height;
    private final Map<Long, Vector3D> places = new HashMap<>();
    private final Map<Long, Long> next = new HashMap<>();

    private PlaneCut(Solid solid, double[] height) {
        this.solid = solid;
        this.height = height;
    }

    /**
     * The loops, each from one of its corners round to it, the last not repeated; in the order of the mesh.
     *
     * @param at a place in the plane [m]
     * @param normal of the plane, unit vector
     */
    public static List<List<Vector3D>> of(Solid solid, Vector3D at, Vector3D normal) {
        double[] height = new double[solid.vertices()];
        double aside = 0;
        boolean clear = false;
        while (!clear) {
            clear = true;
            for (int vertex = 0; vertex < height.length; vertex++) {
                height[vertex] = Vector3D.of(solid.x(vertex), solid.y(vertex), solid.z(vertex)).subtract(at).dot(normal) - aside;
                clear &= Math.abs(height[vertex]) > ASIDE / 10;
            }
            aside += ASIDE;
        }
        return new PlaneCut(solid, height).loops();
    }

    private List<List<Vector3D>> loops() {
        List<Long> order = new ArrayList<>();
        for (int triangle = 0; triangle < solid.triangles(); triangle++) {
            long up = -1;
            long down = -1;
            for (int corner = 0; corner < 3; corner++) {
                int from = solid.corner(triangle, corner);
                int to = solid.corner(triangle, (corner + 1) % 3);
                if (height[from] < 0 && height[to] > 0) {
                    up = crossing(from, to);
                } else if (height[from] > 0 && height[to] < 0) {
                    down = crossing(from, to);
                }
            }
            // a closed mesh turned one way round: each edge is gone through once in each direction
            if (up >= 0) {
                next.put(up, down);
                order.add(up);
            }
        }
        List<List<Vector3D>> loops = new ArrayList<>();
        for (long start : order) {
            List<Vector3D> loop = new ArrayList<>();
            for (Long edge = start; next.containsKey(edge);) {
                loop.add(places.get(edge));
                edge = next.remove(edge);
            }
            if (loop.size() > 2) {
                loops.add(loop);
            }
        }
        return loops;
    }

    private long crossing(int one, int other) {
        int low = Math.min(one, other);
        int high = Math.max(one, other);
        long edge = (long) low * solid.vertices() + high;
        places.computeIfAbsent(edge, unseen -> {
            double share = height[low] / (height[low] - height[high]);
            return Vector3D.of(between(solid.x(low), solid.x(high), share), between(solid.y(low), solid.y(high), share),
                between(solid.z(low), solid.z(high), share));
        });
        return edge;
    }

    private static double between(double from, double to, double share) {
        return from + share * (to - from);
    }
}
