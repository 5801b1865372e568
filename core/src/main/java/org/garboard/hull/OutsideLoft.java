package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.garboard.geometry.CubicSpline;
import org.garboard.geometry.KnotVector;
import org.garboard.geometry.SplineSites;

/**
 * Draws the outside of a hull whose inside is drawn: points of the outside are taken on a net of sites, and a
 * bicubic panel is laid through them. Sites are set closer where half-way between them the panel is not
 * close enough to the outside.
 */
final class OutsideLoft {
    /** How near the outside a panel is half-way between sites [m]; our choice, far below any yard's accuracy. */
    private static final double CLOSE_ENOUGH = 1e-5;
    /** Halvings of a cell of the inside after which its sites are set no closer. */
    private static final int MOST_HALVINGS = 8;

    private final Hull inside;
    private final List<OutsideFace> faces;
    private final TreeMap<Double, OutsideSection> sections = new TreeMap<>();
    private final List<Sites> across = new ArrayList<>();
    private Sites along;

    private OutsideLoft(Hull inside, List<OutsideFace> faces, double[] places) {
        this.inside = inside;
        this.faces = faces;
        this.along = Sites.halving(places);
        for (OutsideFace face : faces) {
            across.add(Sites.halving(bounds(face.panel().knotsAcross())));
        }
    }

    /**
     * The outside, over the inside's length or, where it cannot be drawn at the very bow, a little less.
     *
     * @param thickness of each panel's skin [m]
     * @throws HullNotDrawn if there is no outside elsewhere
     */
    static Hull of(Hull inside, double[] thickness) {
        List<OutsideFace> faces = new ArrayList<>();
        for (int p = 0; p < thickness.length; p++) {
            faces.add(new OutsideFace(inside.panels().get(p), thickness[p]));
        }
        double[] places = OutsideRange.of(bounds(inside.panels().get(0).knotsAlong()), faces);
        OutsideLoft loft = new OutsideLoft(inside, faces, places);
        Hull hull = loft.hull();
        while (loft.refine(hull)) {
            hull = loft.hull();
        }
        return hull;
    }

    private static double[] bounds(KnotVector knots) {
        double[] bounds = new double[knots.cells() + 1];
        for (int i = 0; i < bounds.length; i++) {
            bounds[i] = knots.cellStart(i);
        }
        return bounds;
    }

    private OutsideSection section(double x) {
        OutsideSection section = sections.computeIfAbsent(x, at -> new OutsideSection(faces, at));
        section.trouble().ifPresent(reason -> {
            throw HullNotDrawn.outside(x, reason);
        });
        return section;
    }

    private Hull hull() {
        SplineSites sites = new SplineSites(along.toArray());
        List<HullLine> lines = new ArrayList<>();
        for (int l = 0; l <= faces.size(); l++) {
            HullLine line = inside.lines().get(l);
            lines.add(new HullLine(line.name(), line.kind(), line(sites, l, 0), line(sites, l, 1)));
        }
        List<Panel> panels = new ArrayList<>();
        for (int p = 0; p < faces.size(); p++) {
            panels.add(panel(sites, p, lines.get(p), lines.get(p + 1)));
        }
        return new Hull(lines, panels, inside.within());
    }

    private CubicSpline line(SplineSites sites, int line, int coordinate) {
        double[] values = new double[along.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = section(along.at(i)).line(line)[coordinate];
        }
        return sites.through(values);
    }

    private Panel panel(SplineSites sites, int p, HullLine lower, HullLine upper) {
        SplineSites sitesAcross = new SplineSites(across.get(p).toArray());
        int nv = across.get(p).size();
        double[][] polesY = new double[nv][along.size()];
        double[][] polesZ = new double[nv][along.size()];
        double[] y = new double[nv];
        double[] z = new double[nv];
        double[] point = new double[2];
        for (int i = 0; i < along.size(); i++) {
            OutsideSection section = section(along.at(i));
            for (int k = 0; k < nv; k++) {
                if (!section.at(p, across.get(p).at(k), point)) {
                    throw HullNotDrawn.outside(along.at(i), section.hollow(p));
                }
                y[k] = point[0];
                z[k] = point[1];
            }
            CubicSpline acrossY = sitesAcross.through(y);
            CubicSpline acrossZ = sitesAcross.through(z);
            for (int k = 0; k < nv; k++) {
                polesY[k][i] = acrossY.pole(k);
                polesZ[k][i] = acrossZ.pole(k);
            }
        }
        return new Panel(lower, upper, sites.knots(), sitesAcross.knots(), lofted(sites, polesY), lofted(sites, polesZ));
    }

    /** @param sections poles across, by pole and site along */
    private static double[] lofted(SplineSites sites, double[][] sections) {
        double[] poles = new double[sites.knots().size() * sections.length];
        for (int k = 0; k < sections.length; k++) {
            CubicSpline along = sites.through(sections[k]);
            for (int i = 0; i < sites.knots().size(); i++) {
                poles[i * sections.length + k] = along.pole(i);
            }
        }
        return poles;
    }

    /** Sets sites closer where the hull is not close enough; false where it is, or they are close already. */
    private boolean refine(Hull hull) {
        boolean[] farAlong = new boolean[along.intervals()];
        int before = along.size();
        for (int p = 0; p < faces.size(); p++) {
            before += across.get(p).size();
            boolean[] farAcross = new boolean[across.get(p).intervals()];
            for (int i = 0; i < along.size(); i++) {
                for (int k = 0; k < across.get(p).size(); k++) {
                    mark(hull, p, i, k, farAlong, farAcross);
                }
            }
            across.set(p, across.get(p).halved(farAcross));
        }
        along = along.halved(farAlong);
        return along.size() + across.stream().mapToInt(Sites::size).sum() > before;
    }

    /** Looks half-way along, half-way across and at the middle of the mesh that begins at a pair of sites. */
    private void mark(Hull hull, int p, int i, int k, boolean[] farAlong, boolean[] farAcross) {
        Sites v = across.get(p);
        boolean halfAlong = i < along.intervals() && along.halvings(i) < MOST_HALVINGS;
        boolean halfAcross = k < v.intervals() && v.halvings(k) < MOST_HALVINGS;
        if (halfAlong && isOff(hull, p, along.middle(i), v.at(k))) {
            farAlong[i] = true;
        }
        if (halfAcross && isOff(hull, p, along.at(i), v.middle(k))) {
            farAcross[k] = true;
        }
        if (halfAlong && halfAcross && !farAlong[i] && !farAcross[k] && isOff(hull, p, along.middle(i), v.middle(k))) {
            farAlong[i] = true;
            farAcross[k] = true;
        }
    }

    private boolean isOff(Hull hull, int p, double x, double share) {
        double[] outside = new double[2];
        double[] drawn = new double[Panel.POINT_SIZE];
        OutsideSection section = section(x);
        if (!section.at(p, share, outside)) {
            throw HullNotDrawn.outside(x, section.hollow(p));
        }
        hull.panels().get(p).evaluate(x, share, drawn, 0);
        return Math.hypot(outside[0] - drawn[Panel.Y], outside[1] - drawn[Panel.Z]) > CLOSE_ENOUGH;
    }
}
