package org.garboard.flow.panels;

/** The body that a source at x = -1 and a sink at x = 1 make of a stream; strength over speed M = m / (U a^2). */
final class RankineOvoid {
    private final double strength;
    private final double halfLength;

    RankineOvoid(double strength) {
        this.strength = strength;
        // (L^2 - 1)^2 = 4 M L
        double low = 1;
        double high = 10;
        for (int i = 0; i < 200; i++) {
            double middle = 0.5 * (low + high);
            if (Math.pow(middle * middle - 1, 2) < 4 * strength * middle) {
                low = middle;
            } else {
                high = middle;
            }
        }
        this.halfLength = low;
    }

    double greatest() {
        double h = radius(0);
        return 1 + 2 * strength / Math.pow(1 + h * h, 1.5);
    }

    /** R^2 / 2 = M (cos of the source's angle - cos of the sink's): the stream function is nought on the body. */
    double radius(double x) {
        double low = 0;
        double high = 10;
        for (int i = 0; i < 200; i++) {
            double r = 0.5 * (low + high);
            double sent = strength * ((x + 1) / Math.hypot(x + 1, r) - (x - 1) / Math.hypot(x - 1, r));
            if (r * r / 2 < sent) {
                low = r;
            } else {
                high = r;
            }
        }
        return low;
    }

    PanelMesh quarter(int columns, int rows) {
        double[] corners = new double[PanelMesh.CORNERS * columns * rows];
        int at = 0;
        for (int i = 0; i < columns; i++) {
            for (int j = 0; j < rows; j++) {
                int[][] around = {{i, j}, {i, j + 1}, {i + 1, j + 1}, {i + 1, j}};
                for (int[] corner : around) {
                    double x = -halfLength * Math.cos(Math.PI * corner[0] / columns);
                    double r = corner[0] == 0 || corner[0] == columns ? 0 : radius(x);
                    double phi = 0.5 * Math.PI * corner[1] / rows;
                    corners[at++] = x;
                    corners[at++] = r * Math.sin(phi);
                    corners[at++] = -r * Math.cos(phi);
                }
            }
        }
        return new PanelMesh(corners);
    }
}
