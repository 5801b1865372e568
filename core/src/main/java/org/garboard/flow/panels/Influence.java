package org.garboard.flow.panels;

import org.garboard.processors.Rows;

/** How much water each panel and its images send out through every panel: 8 bytes for each pair. */
final class Influence {
    /** On fewer panels another processor costs more than it saves: measured. */
    private static final int MANY = 1500;

    private final PanelMesh mesh;
    private final Images images;
    private final double[][] normal;

    Influence(PanelMesh mesh, Images images) {
        this.mesh = mesh;
        this.images = images;
        this.normal = new double[mesh.size()][];
        Rows.each(mesh.size(), (from, to) -> {
            SourcePanel source = new SourcePanel(mesh);
            for (int row = from; row < to; row++) {
                normal[row] = row(source, row);
            }
        });
    }

    private double[] row(SourcePanel source, int row) {
        int n = mesh.size();
        double[] out = new double[n];
        int c = 3 * row;
        int a = 9 * row + 6;
        for (int image = 0; image < images.count(); image++) {
            double across = Images.acrossIn(image);
            double up = Images.upIn(image);
            double x = mesh.centre[c];
            double y = across * mesh.centre[c + 1];
            double z = up * mesh.centre[c + 2];
            double nx = mesh.axes[a];
            double ny = across * mesh.axes[a + 1];
            double nz = up * mesh.axes[a + 2];
            for (int panel = 0; panel < n; panel++) {
                if (image == 0 && panel == row) {
                    source.ofItself(panel);
                } else {
                    source.at(panel, x, y, z);
                }
                out[panel] += source.vx * nx + source.vy * ny + source.vz * nz;
            }
        }
        return out;
    }

    void times(double[] strength, double[] out) {
        if (mesh.size() < MANY) {
            times(strength, out, 0, mesh.size());
        } else {
            Rows.each(mesh.size(), (from, to) -> times(strength, out, from, to));
        }
    }

    private void times(double[] strength, double[] out, int from, int to) {
        for (int row = from; row < to; row++) {
            double[] own = normal[row];
            double sum = 0;
            for (int panel = 0; panel < own.length; panel++) {
                sum += own[panel] * strength[panel];
            }
            out[row] = sum;
        }
    }
}
