package org.garboard.flow.streams;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.flow.doublebody.HullFlow;
import org.garboard.flow.doublebody.HullMesh;

/** Streamlines of the double body's flow over the hull; both sides, each the mirror of the other. */
public final class HullStreams {
    private final HullMesh mesh;
    private final GridSurface skin;
    private final Tracer tracer;

    public HullStreams(HullFlow flow) {
        this.mesh = flow.mesh();
        int columns = mesh.columns();
        int rows = mesh.rows();
        double[] corners = new double[3 * (columns + 1) * (rows + 1)];
        double[] velocity = new double[3 * columns * rows];
        int at = 0;
        for (int line = 0; line <= columns; line++) {
            for (int across = 0; across <= rows; across++) {
                for (int k = 0; k < 3; k++) {
                    corners[at++] = mesh.corner(line, across, k);
                }
            }
        }
        for (int i = 0; i < velocity.length; i++) {
            velocity[i] = flow.flow().velocity(i / 3, i % 3);
        }
        this.skin = new GridSurface(columns, rows, corners, velocity);
        this.tracer = new Tracer(skin);
    }

    /** x of the forward end of the hull in the water [m]. */
    public double forwardEnd() {
        return mesh.station(0);
    }

    /** x of its after end [m]. */
    public double afterEnd() {
        return mesh.station(mesh.columns());
    }

    /** Half-breadth of what is in the water, at lines from its forward end aft: (x, y), hull frame [m]. */
    public List<Vector2D> edge() {
        List<Vector2D> edge = new ArrayList<>();
        for (int line = 0; line <= mesh.columns(); line++) {
            double widest = 0;
            for (int across = 0; across <= mesh.rows(); across++) {
                widest = Math.max(widest, mesh.corner(line, across, 1));
            }
            edge.add(Vector2D.of(mesh.station(line), widest));
        }
        return edge;
    }

    /** Through a place in plan, port is negative y; the lowest skin there. */
    public Traced through(double x, double y) {
        return through(new Crossing(x, 1, Math.abs(y)), y < 0 ? -1 : 1);
    }

    /** Through a place at a station and a depth below the water's surface, starboard [m]. */
    public Traced atDepth(double x, double depth) {
        return through(new Crossing(x, 2, -depth), 1);
    }

    /** Depth of the keel below the water's surface at a station, square to it; 0 off the hull [m]. */
    public double keelDepth(double x) {
        if (!(x >= forwardEnd() && x <= afterEnd())) {
            return 0;
        }
        double[] place = new double[3];
        skin.position(column(x), 0, place);
        return -place[2];
    }

    private Traced through(Crossing crossing, int side) {
        if (!(crossing.x >= forwardEnd() && crossing.x <= afterEnd())) {
            return new Traced.OffTheSkin(String.format(Locale.ROOT, "x = %.3f m is off the hull in the water, which is from %.3f to %.3f m",
                crossing.x, forwardEnd(), afterEnd()));
        }
        double u = column(crossing.x);
        double v = crossing.row(u);
        if (!(v >= 0)) {
            return new Traced.OffTheSkin(crossing.misses(u));
        }
        Tracer.Way upstream = tracer.up(u, v);
        Tracer.Way downstream = tracer.down(u, v);
        List<double[]> up = upstream.places();
        List<double[]> places = new ArrayList<>();
        for (int i = up.size() - 1; i > 0; i--) {
            places.add(up.get(i));
        }
        int seed = places.size();
        places.addAll(downstream.places());
        return new Streamline(points(places, side), seed, upstream.followed(), downstream.followed());
    }

    private List<StreamPoint> points(List<double[]> places, int side) {
        List<StreamPoint> points = new ArrayList<>();
        double[] place = new double[3];
        double[] before = new double[3];
        double run = 0;
        for (double[] uv : places) {
            skin.position(uv[0], uv[1], place);
            if (!points.isEmpty()) {
                run += Math.sqrt(Math.pow(place[0] - before[0], 2) + Math.pow(place[1] - before[1], 2) + Math.pow(place[2] - before[2], 2));
            }
            System.arraycopy(place, 0, before, 0, 3);
            points.add(new StreamPoint(mesh.frame().x(place[0], place[2]), side * place[1], mesh.frame().z(place[0], place[2]),
                run, skin.speed(uv[0], uv[1])));
        }
        return points;
    }

    /** Columns are at constant x, hull frame. */
    private double column(double x) {
        int low = 0;
        int high = mesh.columns();
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (mesh.station(middle) <= x) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low + (x - mesh.station(low)) / (mesh.station(high) - mesh.station(low));
    }

    /** Where the skin at a station has a half-breadth or a height above the water. */
    private final class Crossing {
        private final double x;
        private final int coordinate;
        private final double wanted;
        private final double[] place = new double[3];

        Crossing(double x, int coordinate, double wanted) {
            this.x = x;
            this.coordinate = coordinate;
            this.wanted = wanted;
        }

        /** The first row from the keel, NaN if there is none. */
        double row(double u) {
            double before = at(u, 0);
            for (int row = 1; row <= mesh.rows(); row++) {
                double here = at(u, row);
                if ((before - wanted) * (here - wanted) <= 0 && (here != before || wanted == here)) {
                    return row - 1 + (here == before ? 0 : (wanted - before) / (here - before));
                }
                before = here;
            }
            return Double.NaN;
        }

        private double at(double u, double v) {
            skin.position(u, v, place);
            return place[coordinate];
        }

        String misses(double u) {
            double keel = at(u, 0);
            double surface = at(u, mesh.rows());
            return coordinate == 1
                ? String.format(Locale.ROOT, "y = %.3f m at x = %.3f m is off the hull in the water, which is %.3f to %.3f m from the centreline there",
                    wanted, x, keel, surface)
                : String.format(Locale.ROOT, "a depth of %.3f m at x = %.3f m is off the hull, which is from 0 to %.3f m deep there",
                    -wanted, x, -keel);
        }
    }
}
