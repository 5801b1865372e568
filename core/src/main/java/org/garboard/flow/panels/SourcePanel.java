package org.garboard.flow.panels;

/**
 * The velocity that panels of unit strength give the water: one place after another, for one thread.
 *
 * <p>Nearer than {@link #SECOND_MOMENT} radii the closed form is taken:
 * v = (1/4π) { Σ ln[(r1 + r2 + d)/(r1 + r2 − d)] (e × n) + Ω n } over the edges, e an edge's direction, d its
 * length, r1 and r2 the distances from its ends, Ω the solid angle. Beyond that the panel is a point source with
 * its second moments of area, and beyond {@link #POINT} radii a point source. So placed, the rule changes the velocity of
 * a panel by at most 0.15 % of itself (measured over shapes from square to 5 : 1, all directions).
 */
final class SourcePanel {
    /** Radii beyond which second moments serve; our choice, so that the error is the same as beyond {@link #POINT}. */
    static final double SECOND_MOMENT = 5;
    /** Radii beyond which a point serves; our choice. */
    static final double POINT = 26;
    private static final double FOUR_PI = 4 * Math.PI;

    private final PanelMesh mesh;
    double vx;
    double vy;
    double vz;

    SourcePanel(PanelMesh mesh) {
        this.mesh = mesh;
    }

    /** Fills in the velocity that a panel gives at a place. */
    void at(int panel, double x, double y, double z) {
        int c = 3 * panel;
        double dx = x - mesh.centre[c];
        double dy = y - mesh.centre[c + 1];
        double dz = z - mesh.centre[c + 2];
        double square = dx * dx + dy * dy + dz * dz;
        double radius = mesh.radius[panel];
        if (square > POINT * POINT * radius * radius) {
            double by = mesh.area[panel] / (FOUR_PI * square * Math.sqrt(square));
            vx = by * dx;
            vy = by * dy;
            vz = by * dz;
            return;
        }
        if (square > SECOND_MOMENT * SECOND_MOMENT * radius * radius) {
            moments(panel, dx, dy, dz, square);
        } else {
            exact(panel, dx, dy, dz);
        }
    }

    /** The closed form at a place, however far. */
    void near(int panel, double x, double y, double z) {
        exact(panel, x - mesh.centre[3 * panel], y - mesh.centre[3 * panel + 1], z - mesh.centre[3 * panel + 2]);
    }

    /** What a panel does to its own centre: half the source goes out on either side, 2π of solid angle. */
    void ofItself(int panel) {
        inPlane(panel, 0, 0, 0);
        vz = 0.5;
        turn(panel);
    }

    /** From the panel's frame. */
    private void turn(int panel) {
        int a = 9 * panel;
        double[] axes = mesh.axes;
        double u = vx;
        double v = vy;
        double w = vz;
        vx = u * axes[a] + v * axes[a + 3] + w * axes[a + 6];
        vy = u * axes[a + 1] + v * axes[a + 4] + w * axes[a + 7];
        vz = u * axes[a + 2] + v * axes[a + 5] + w * axes[a + 8];
    }

    private void exact(int panel, double dx, double dy, double dz) {
        int a = 9 * panel;
        double[] axes = mesh.axes;
        inPlane(panel, dx * axes[a] + dy * axes[a + 1] + dz * axes[a + 2],
            dx * axes[a + 3] + dy * axes[a + 4] + dz * axes[a + 5],
            dx * axes[a + 6] + dy * axes[a + 7] + dz * axes[a + 8]);
        turn(panel);
    }

    /** Gradient of −(1/4π)[A/r + (3 rQr − tr Q r²)/(2 r⁵)], Q the second moments of area. */
    private void moments(int panel, double dx, double dy, double dz, double square) {
        int a = 9 * panel;
        double[] axes = mesh.axes;
        double u = dx * axes[a] + dy * axes[a + 1] + dz * axes[a + 2];
        double v = dx * axes[a + 3] + dy * axes[a + 4] + dz * axes[a + 5];
        int at = PanelMesh.LOCAL * panel + PanelMesh.MOMENT;
        double xx = mesh.local[at];
        double yy = mesh.local[at + 1];
        double xy = mesh.product[panel];
        double qx = xx * u + xy * v;
        double qy = xy * u + yy * v;
        double q = qx * u + qy * v;
        double inverse = 1 / Math.sqrt(square);
        double third = inverse / square;
        double fifth = third / square;
        double along = mesh.area[panel] * third + (7.5 * q / square - 1.5 * (xx + yy)) * fifth;
        double inX = 3 * qx * fifth;
        double inY = 3 * qy * fifth;
        vx = (along * dx - inX * axes[a] - inY * axes[a + 3]) / FOUR_PI;
        vy = (along * dy - inX * axes[a + 1] - inY * axes[a + 4]) / FOUR_PI;
        vz = (along * dz - inX * axes[a + 2] - inY * axes[a + 5]) / FOUR_PI;
    }

    private void inPlane(int panel, double u, double v, double w) {
        double[] local = mesh.local;
        int at = PanelMesh.LOCAL * panel;
        double x0 = local[at] - u;
        double y0 = local[at + 1] - v;
        double x1 = local[at + 2] - u;
        double y1 = local[at + 3] - v;
        double x2 = local[at + 4] - u;
        double y2 = local[at + 5] - v;
        double x3 = local[at + 6] - u;
        double y3 = local[at + 7] - v;
        double ww = w * w;
        double r0 = Math.sqrt(x0 * x0 + y0 * y0 + ww);
        double r1 = Math.sqrt(x1 * x1 + y1 * y1 + ww);
        double r2 = Math.sqrt(x2 * x2 + y2 * y2 + ww);
        double r3 = Math.sqrt(x3 * x3 + y3 * y3 + ww);
        int edge = at + PanelMesh.EDGE;
        int length = at + PanelMesh.LENGTH;
        double l0 = log(r0 + r1, local[length]);
        double l1 = log(r1 + r2, local[length + 1]);
        double l2 = log(r2 + r3, local[length + 2]);
        double l3 = log(r3 + r0, local[length + 3]);
        vx = (l0 * local[edge + 1] + l1 * local[edge + 3] + l2 * local[edge + 5] + l3 * local[edge + 7]) / FOUR_PI;
        vy = -(l0 * local[edge] + l1 * local[edge + 2] + l2 * local[edge + 4] + l3 * local[edge + 6]) / FOUR_PI;
        double d01 = x0 * x1 + y0 * y1 + ww;
        double d12 = x1 * x2 + y1 * y2 + ww;
        double d02 = x0 * x2 + y0 * y2 + ww;
        double d23 = x2 * x3 + y2 * y3 + ww;
        double d03 = x0 * x3 + y0 * y3 + ww;
        double over = w * local[at + PanelMesh.TRIANGLE];
        double under = r0 * r1 * r2 + d01 * r2 + d12 * r0 + d02 * r1;
        double overOther = w * local[at + PanelMesh.TRIANGLE + 1];
        double underOther = r0 * r2 * r3 + d02 * r3 + d23 * r0 + d03 * r2;
        // both triangles at once: the angle of a product of two complex numbers is the sum of theirs
        double omega = 2 * Math.atan2(over * underOther + overOther * under, under * underOther - over * overOther);
        vz = omega / FOUR_PI;
    }

    /** Finite on the edge itself too, where the flow of a source panel is not: within 1e-12 of its length. */
    private static double log(double ends, double length) {
        return length == 0 ? 0 : Math.log((ends + length) / Math.max(ends - length, 1e-12 * length));
    }
}
