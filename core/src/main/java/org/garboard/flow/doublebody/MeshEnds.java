package org.garboard.flow.doublebody;


/** Panels beyond the skin's ends: flats that close them, or the run behind a transom. */
final class MeshEnds {
    private final double[] corners;
    private final int rows;
    private final int lastLine;
    private final PanelCorners panels;

    MeshEnds(double[] corners, MeshWish wish, PanelCorners panels) {
        this.corners = corners;
        this.rows = wish.rows();
        this.lastLine = wish.columns();
        this.panels = panels;
    }

    void closeForward() {
        double[] fan = fan(0);
        for (int ring = 0; ring < MeshWish.CAP_RINGS; ring++) {
            for (int k = 0; k < rows; k++) {
                int inner = 3 * (ring * (rows + 1) + k);
                int outer = inner + 3 * (rows + 1);
                panels.add(fan, inner, inner + 3, outer + 3, outer);
            }
        }
    }

    void closeAft() {
        double[] fan = fan(lastLine);
        for (int ring = 0; ring < MeshWish.CAP_RINGS; ring++) {
            for (int k = 0; k < rows; k++) {
                int inner = 3 * (ring * (rows + 1) + k);
                int outer = inner + 3 * (rows + 1);
                panels.add(fan, outer, outer + 3, inner + 3, inner);
            }
        }
    }

    /** Rings of points from the centreline at the surface out to a section. */
    private double[] fan(int line) {
        double[] fan = new double[3 * (MeshWish.CAP_RINGS + 1) * (rows + 1)];
        int waterEnd = at(line, rows);
        for (int ring = 0; ring <= MeshWish.CAP_RINGS; ring++) {
            double share = (double) ring / MeshWish.CAP_RINGS;
            for (int k = 0; k <= rows; k++) {
                int to = 3 * (ring * (rows + 1) + k);
                int from = at(line, k);
                fan[to] = corners[waterEnd] + share * (corners[from] - corners[waterEnd]);
                fan[to + 1] = share * corners[from + 1];
                fan[to + 2] = share * corners[from + 2];
            }
        }
        return fan;
    }

    /** Each column longer than the one before by a constant ratio, the first as long as the hull's last. */
    void runAft(double length) {
        double first = corners[at(lastLine, rows)] - corners[at(lastLine - 1, rows)];
        double ratio = ratio(length / first);
        double[] section = new double[6 * (rows + 1)];
        double from = 0;
        double step = first;
        for (int column = 0; column < MeshWish.RUN_COLUMNS; column++) {
            for (int k = 0; k <= rows; k++) {
                lay(section, 3 * k, k, from);
                lay(section, 3 * (rows + 1 + k), k, from + step);
            }
            for (int k = 0; k < rows; k++) {
                int here = 3 * k;
                int aft = 3 * (rows + 1 + k);
                panels.add(section, here, here + 3, aft + 3, aft);
            }
            from += step;
            step *= ratio;
        }
    }

    private void lay(double[] section, int to, int k, double aft) {
        System.arraycopy(corners, at(lastLine, k), section, to, 3);
        section[to] += aft;
    }

    /** The ratio by which so many steps, the first of them 1, make up a length. */
    private static double ratio(double length) {
        double low = 1;
        double high = 10;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            double sum = (Math.pow(middle, MeshWish.RUN_COLUMNS) - 1) / (middle - 1);
            if (sum < length) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private int at(int line, int k) {
        return 3 * (line * (rows + 1) + k);
    }
}
