package org.garboard.flow.doublebody;

import java.util.List;

/**
 * How the rows of a mesh are shared over the girth: rows of corners follow the knuckles where these are in the water, so
 * that no panel bridges a chine; where a knuckle nears the surface its row keeps half a row's usual breadth from it
 * (our choice), and past that panels do bridge it.
 */
final class RowShares {
    /** A strip narrower than this part of the girth has no rows of its own: our choice. */
    private static final double NARROWEST = 0.02;

    private final int rows;
    private final int panels;
    private final double[] mean;
    private final int[] count;

    RowShares(List<WetGirth> sections, int panels, int rows) {
        this.rows = rows;
        this.panels = panels;
        this.mean = new double[panels];
        this.count = new int[panels];
        int wet = 0;
        for (WetGirth section : sections) {
            if (section.girth() > 0) {
                wet++;
                for (int p = 0; p < panels; p++) {
                    mean[p] += end(section, p) - (p == 0 ? 0 : end(section, p - 1));
                }
            }
        }
        for (int p = 0; p < panels; p++) {
            mean[p] /= Math.max(1, wet);
        }
        share();
    }

    private double end(WetGirth section, int panel) {
        return panel == panels - 1 ? 1 : section.knuckle(panel);
    }

    /** Every strip of some breadth has a row; the rest go one by one to where rows are broadest. */
    private void share() {
        int given = 0;
        for (int p = 0; p < panels; p++) {
            count[p] = mean[p] >= NARROWEST && given < rows ? 1 : 0;
            given += count[p];
        }
        for (; given < rows; given++) {
            int broadest = 0;
            for (int p = 1; p < panels; p++) {
                if (count[p] > 0 && (count[broadest] == 0 || mean[p] / count[p] > mean[broadest] / count[broadest])) {
                    broadest = p;
                }
            }
            count[broadest]++;
        }
    }

    /** Parts of the girth at which the rows' corners lie in a section, 0 at the keel and 1 at the water. */
    double[] parts(WetGirth section) {
        double[] ends = ends(section);
        double[] parts = new double[rows + 1];
        int at = 0;
        double from = 0;
        for (int p = 0; p < panels; p++) {
            for (int i = 1; i <= count[p]; i++) {
                parts[++at] = from + (ends[p] - from) * i / count[p];
            }
            from = count[p] > 0 ? ends[p] : from;
        }
        return parts;
    }

    private double[] ends(WetGirth section) {
        double[] ends = new double[panels];
        double before = 0;
        int last = 0;
        for (int p = 0; p < panels; p++) {
            ends[p] = Math.max(end(section, p), before + least(p));
            before = count[p] > 0 ? ends[p] : before;
            last = count[p] > 0 ? p : last;
        }
        double next = 1 + least(last);
        for (int p = last; p >= 0; p--) {
            if (count[p] > 0) {
                ends[p] = p == last ? 1 : Math.min(ends[p], next);
                next = ends[p] - least(p);
            }
        }
        return ends;
    }

    private double least(int panel) {
        return count[panel] == 0 ? 0 : 0.5 * Math.min((double) count[panel] / rows, mean[panel]);
    }
}
