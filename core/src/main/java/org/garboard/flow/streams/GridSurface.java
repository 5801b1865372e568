package org.garboard.flow.streams;

/**
 * A skin as a grid of four-cornered panels with the velocity at the middle of each, interpolated between.
 *
 * <p>A place is (u, v): u columns from the first, v rows from the first. What is interpolated is the motion in u and v for a
 * metre along the flow, not the velocity in space, so that a line cannot leave the skin and crosses a knuckle as
 * water does. Cubic convolution (R. G. Keys, IEEE Trans. ASSP 29, 1981; from memory) makes it smooth; at the first and the
 * last row the skin is mirrored, so that no line crosses the keel or the water's surface.
 */
public final class GridSurface implements SurfaceMotion {
    private static final int PAD = 2;
    private static final int U = 0;
    private static final int V = 1;
    private static final int SPEED = 2;
    private static final int VALUES = 3;
    /** Water slower than this part of the stream has no direction worth following: our choice. */
    private static final double SLOWEST = 1e-6;

    private final int columns;
    private final int rows;
    private final double[] corners;
    private final double[] motion;
    private final int stride;

    /**
     * @param corners x, y, z of (columns + 1)(rows + 1) corners, row after row within a column's line
     * @param velocity x, y, z for each panel, row after row within a column
     */
    public GridSurface(int columns, int rows, double[] corners, double[] velocity) {
        this.columns = columns;
        this.rows = rows;
        this.corners = corners.clone();
        this.stride = rows + 2 * PAD;
        this.motion = new double[VALUES * (columns + 2 * PAD) * stride];
        for (int column = 0; column < columns; column++) {
            for (int row = 0; row < rows; row++) {
                panel(column, row, velocity);
            }
        }
        mirrorRows();
        continueColumns();
    }

    @Override
    public int columns() {
        return columns;
    }

    @Override
    public int rows() {
        return rows;
    }

    /** Speed over the stream's at a place. */
    public double speed(double u, double v) {
        return value(SPEED, u, v);
    }

    @Override
    public void rate(double u, double v, double[] out) {
        out[0] = value(U, u, v);
        out[1] = value(V, u, v);
    }

    @Override
    public void position(double u, double v, double[] out) {
        int column = (int) Math.max(0, Math.min(columns - 1, Math.floor(u)));
        int row = (int) Math.max(0, Math.min(rows - 1, Math.floor(v)));
        double s = Math.max(0, Math.min(1, u - column));
        double t = Math.max(0, Math.min(1, v - row));
        for (int k = 0; k < 3; k++) {
            double near = (1 - t) * corner(column, row, k) + t * corner(column, row + 1, k);
            double far = (1 - t) * corner(column + 1, row, k) + t * corner(column + 1, row + 1, k);
            out[k] = (1 - s) * near + s * far;
        }
    }

    private double corner(int line, int across, int coordinate) {
        return corners[3 * (line * (rows + 1) + across) + coordinate];
    }

    /** Velocity by its parts along the panel's two middle lines; it lies in their plane. */
    private void panel(int column, int row, double[] velocity) {
        double[] along = new double[3];
        double[] across = new double[3];
        double[] w = new double[3];
        for (int k = 0; k < 3; k++) {
            double p00 = corner(column, row, k);
            double p01 = corner(column, row + 1, k);
            double p10 = corner(column + 1, row, k);
            double p11 = corner(column + 1, row + 1, k);
            along[k] = 0.5 * (p10 + p11 - p00 - p01);
            across[k] = 0.5 * (p01 + p11 - p00 - p10);
            w[k] = velocity[3 * (column * rows + row) + k];
        }
        double aa = dot(along, along);
        double ab = dot(along, across);
        double bb = dot(across, across);
        double wa = dot(w, along);
        double wb = dot(w, across);
        double speed = Math.sqrt(dot(w, w));
        double by = (aa * bb - ab * ab) * Math.max(speed, SLOWEST);
        int at = VALUES * ((column + PAD) * stride + row + PAD);
        motion[at + U] = (wa * bb - wb * ab) / by;
        motion[at + V] = (wb * aa - wa * ab) / by;
        motion[at + SPEED] = speed;
    }

    private void mirrorRows() {
        for (int column = 0; column < columns; column++) {
            for (int k = 1; k <= PAD; k++) {
                mirror(column, -k, k - 1);
                mirror(column, rows - 1 + k, rows - k);
            }
        }
    }

    private void mirror(int column, int to, int from) {
        int line = (column + PAD) * stride + PAD;
        for (int value = 0; value < VALUES; value++) {
            motion[VALUES * (line + to) + value] = (value == V ? -1 : 1) * motion[VALUES * (line + from) + value];
        }
    }

    /** Straight on at both ends. */
    private void continueColumns() {
        int line = VALUES * stride;
        for (int k = 0; k < line; k++) {
            for (int beyond = 1; beyond <= PAD; beyond++) {
                int first = PAD * line + k;
                int last = (PAD + columns - 1) * line + k;
                motion[first - beyond * line] = motion[first] + beyond * (motion[first] - motion[first + line]);
                motion[last + beyond * line] = motion[last] + beyond * (motion[last] - motion[last - line]);
            }
        }
    }

    private double value(int which, double u, double v) {
        double p = Math.max(0, Math.min(columns, u)) - 0.5 + PAD;
        double q = Math.max(0, Math.min(rows, v)) - 0.5 + PAD;
        int i = Math.min((int) p, columns + PAD - 1);
        int j = Math.min((int) q, rows + PAD - 1);
        double sum = 0;
        for (int a = -1; a <= 2; a++) {
            double inner = 0;
            for (int b = -1; b <= 2; b++) {
                inner += weight(q - j, b) * motion[VALUES * ((i + a) * stride + j + b) + which];
            }
            sum += weight(p - i, a) * inner;
        }
        return sum;
    }

    /** Weight of a value so many places on, at s of the way from one to the next. */
    private static double weight(double s, int place) {
        return switch (place) {
            case -1 -> 0.5 * s * (-1 + s * (2 - s));
            case 0 -> 1 + 0.5 * s * s * (3 * s - 5);
            case 1 -> 0.5 * s * (1 + s * (4 - 3 * s));
            default -> 0.5 * s * s * (s - 1);
        };
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }
}
