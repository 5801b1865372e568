package org.garboard.flow.panels;

/**
 * Flat four-cornered panels: the corners given are laid into the plane square to both diagonals through their
 * mean (Hess and Smith 1964), and the flow is held along the skin at the centre of the panel's area.
 *
 * <p>A panel may have two corners in one place and is then a triangle.
 */
public final class PanelMesh {
    /** Coordinates of a panel's four corners. */
    public static final int CORNERS = 12;
    /** Numbers kept of a panel in its own frame; the places of each follow. */
    static final int LOCAL = 24;
    static final int CORNER = 0;
    static final int EDGE = 8;
    static final int LENGTH = 16;
    static final int TRIANGLE = 20;
    static final int MOMENT = 22;

    private final int size;
    final double[] centre;
    /** Two axes in the plane, then the normal. */
    final double[] axes;
    final double[] local;
    final double[] area;
    final double[] radius;
    /** Third second moment of area: x y. */
    final double[] product;

    /**
     * @param corners of all panels, {@link #CORNERS} numbers each: x, y, z [m], counter-clockwise seen from the water
     * @throws IllegalArgumentException if a panel has no area
     */
    public PanelMesh(double[] corners) {
        this.size = corners.length / CORNERS;
        this.centre = new double[3 * size];
        this.axes = new double[9 * size];
        this.local = new double[LOCAL * size];
        this.area = new double[size];
        this.radius = new double[size];
        this.product = new double[size];
        for (int panel = 0; panel < size; panel++) {
            frame(corners, panel);
            flatten(corners, panel);
            edges(panel);
        }
    }

    public int size() {
        return size;
    }

    /** Where the flow is held along the skin: 0 for x, 1 for y, 2 for z [m]. */
    public double centre(int panel, int coordinate) {
        return centre[3 * panel + coordinate];
    }

    /** The unit normal into the water. */
    public double normal(int panel, int coordinate) {
        return axes[9 * panel + 6 + coordinate];
    }

    /** [m2] */
    public double area(int panel) {
        return area[panel];
    }

    /** Greatest distance from the centre to a corner [m]. */
    public double radius(int panel) {
        return radius[panel];
    }

    /** First axis along a diagonal, normal square to both diagonals. */
    private void frame(double[] corners, int panel) {
        int c = CORNERS * panel;
        double[] one = {corners[c + 6] - corners[c], corners[c + 7] - corners[c + 1], corners[c + 8] - corners[c + 2]};
        double[] other = {corners[c + 9] - corners[c + 3], corners[c + 10] - corners[c + 4], corners[c + 11] - corners[c + 5]};
        double[] normal = cross(one, other);
        double twice = norm(normal);
        if (!(twice > 0)) {
            throw new IllegalArgumentException("panel " + panel + " at x = " + corners[c] + " m, y = " + corners[c + 1]
                + " m, z = " + corners[c + 2] + " m has no area");
        }
        double length = norm(one);
        for (int k = 0; k < 3; k++) {
            normal[k] /= twice;
            one[k] /= length;
        }
        double[] second = cross(normal, one);
        System.arraycopy(one, 0, axes, 9 * panel, 3);
        System.arraycopy(second, 0, axes, 9 * panel + 3, 3);
        System.arraycopy(normal, 0, axes, 9 * panel + 6, 3);
    }

    /** Corners in the panel's plane about the centre of its area, and its second moments. */
    private void flatten(double[] corners, int panel) {
        double[] mean = new double[3];
        for (int k = 0; k < CORNERS; k++) {
            mean[k % 3] += corners[CORNERS * panel + k] / 4;
        }
        double[] flat = new double[8];
        for (int k = 0; k < 8; k++) {
            int at = CORNERS * panel + 3 * (k / 2);
            int axis = 9 * panel + 3 * (k % 2);
            for (int i = 0; i < 3; i++) {
                flat[k] += (corners[at + i] - mean[i]) * axes[axis + i];
            }
        }
        double[] first = moments(flat);
        for (int k = 0; k < 8; k++) {
            flat[k] -= first[1 + k % 2];
            local[LOCAL * panel + CORNER + k] = flat[k];
        }
        for (int k = 0; k < 8; k += 2) {
            radius[panel] = Math.max(radius[panel], Math.hypot(flat[k], flat[k + 1]));
        }
        for (int i = 0; i < 3; i++) {
            centre[3 * panel + i] = mean[i] + first[1] * axes[9 * panel + i] + first[2] * axes[9 * panel + 3 + i];
        }
        double[] about = moments(flat);
        area[panel] = about[0];
        local[LOCAL * panel + MOMENT] = about[3];
        local[LOCAL * panel + MOMENT + 1] = about[4];
        product[panel] = about[5];
    }

    /** Area, centre, and moments of x x, y y and x y over a plane figure of four corners, by Green's theorem. */
    private static double[] moments(double[] p) {
        double[] sums = new double[6];
        for (int k = 0; k < 4; k++) {
            double x0 = p[2 * k];
            double y0 = p[2 * k + 1];
            double x1 = p[2 * ((k + 1) % 4)];
            double y1 = p[2 * ((k + 1) % 4) + 1];
            double c = x0 * y1 - x1 * y0;
            sums[0] += c / 2;
            sums[1] += c * (x0 + x1) / 6;
            sums[2] += c * (y0 + y1) / 6;
            sums[3] += c * (x0 * x0 + x0 * x1 + x1 * x1) / 12;
            sums[4] += c * (y0 * y0 + y0 * y1 + y1 * y1) / 12;
            sums[5] += c * (2 * x0 * y0 + x0 * y1 + x1 * y0 + 2 * x1 * y1) / 24;
        }
        sums[1] /= sums[0];
        sums[2] /= sums[0];
        return sums;
    }

    private void edges(int panel) {
        int at = LOCAL * panel;
        for (int k = 0; k < 4; k++) {
            int next = (k + 1) % 4;
            double dx = local[at + CORNER + 2 * next] - local[at + CORNER + 2 * k];
            double dy = local[at + CORNER + 2 * next + 1] - local[at + CORNER + 2 * k + 1];
            double length = Math.hypot(dx, dy);
            boolean none = length <= 1e-9 * radius[panel];
            local[at + LENGTH + k] = none ? 0 : length;
            local[at + EDGE + 2 * k] = none ? 0 : dx / length;
            local[at + EDGE + 2 * k + 1] = none ? 0 : dy / length;
        }
        local[at + TRIANGLE] = twiceArea(at, 1, 2);
        local[at + TRIANGLE + 1] = twiceArea(at, 2, 3);
    }

    private double twiceArea(int at, int one, int other) {
        double x0 = local[at];
        double y0 = local[at + 1];
        return (local[at + 2 * one] - x0) * (local[at + 2 * other + 1] - y0)
            - (local[at + 2 * other] - x0) * (local[at + 2 * one + 1] - y0);
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double norm(double[] a) {
        return Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
    }
}
