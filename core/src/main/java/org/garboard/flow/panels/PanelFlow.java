package org.garboard.flow.panels;

import org.garboard.processors.Rows;

/** The flow about a mesh of panels: no water goes through the centre of any. Speeds over the stream's. */
public final class PanelFlow implements PanelSolution {
    private final PanelMesh mesh;
    private final Images images;
    private final Stream stream;
    private final double[] strength;
    private final double[] velocity;

    PanelFlow(PanelMesh mesh, Images images, Stream stream, double[] strength) {
        this.mesh = mesh;
        this.images = images;
        this.stream = stream;
        this.strength = strength;
        this.velocity = new double[3 * mesh.size()];
        Rows.each(mesh.size(), (from, to) -> {
            SourcePanel source = new SourcePanel(mesh);
            for (int row = from; row < to; row++) {
                at(source, row, mesh.centre[3 * row], mesh.centre[3 * row + 1], mesh.centre[3 * row + 2], velocity, 3 * row);
            }
        });
    }

    public PanelMesh mesh() {
        return mesh;
    }

    /** Velocity along the skin at a panel's centre: 0 for x, 1 for y, 2 for z. */
    public double velocity(int panel, int coordinate) {
        return velocity[3 * panel + coordinate];
    }

    /** Size of the velocity at a panel's centre. */
    public double speed(int panel) {
        int v = 3 * panel;
        return Math.sqrt(velocity[v] * velocity[v] + velocity[v + 1] * velocity[v + 1] + velocity[v + 2] * velocity[v + 2]);
    }

    /** Pressure over that of the still water at the same depth, in units of half the density times speed squared. */
    public double pressure(int panel) {
        double speed = speed(panel);
        return 1 - speed * speed;
    }

    /** Velocity at a place in the water, off the panels: x, y, z. */
    public double[] velocityAt(double x, double y, double z) {
        double[] out = new double[3];
        at(new SourcePanel(mesh), -1, x, y, z, out, 0);
        return out;
    }

    /** All sources of the panels together, as a part of the sum of their sizes; 0 for a closed body. */
    public double netSource() {
        double sum = 0;
        double size = 0;
        for (int panel = 0; panel < mesh.size(); panel++) {
            sum += strength[panel] * mesh.area(panel);
            size += Math.abs(strength[panel] * mesh.area(panel));
        }
        return size == 0 ? 0 : sum / size;
    }

    /** @param own the panel at whose centre the place is, or -1 */
    private void at(SourcePanel source, int own, double x, double y, double z, double[] out, int at) {
        double vx = stream.x();
        double vy = stream.y();
        double vz = stream.z();
        for (int image = 0; image < images.count(); image++) {
            double across = Images.acrossIn(image);
            double up = Images.upIn(image);
            for (int panel = 0; panel < mesh.size(); panel++) {
                if (image == 0 && panel == own) {
                    source.ofItself(panel);
                } else {
                    source.at(panel, x, across * y, up * z);
                }
                vx += strength[panel] * source.vx;
                vy += across * strength[panel] * source.vy;
                vz += up * strength[panel] * source.vz;
            }
        }
        out[at] = vx;
        out[at + 1] = vy;
        out[at + 2] = vz;
    }
}
