package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.garboard.geometry.CubicSpline;
import org.garboard.geometry.KnotVector;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.PanelOffsets;
import org.garboard.offsets.SectionPoint;
import org.garboard.offsets.Station;

/** From a table to a hull: its named lines first, then each panel between two of them. */
final class Loft {
    private final HullOffsets table;
    private final double[] x;
    private final List<PanelOffsets> offsets;
    private final List<LineKind> kinds;
    /** {y, z} of each named line at each station. */
    private final List<double[][]> lines = new ArrayList<>();

    private Loft(HullOffsets table) {
        this.table = table;
        this.x = table.stations().stream().mapToDouble(Station::x).toArray();
        this.offsets = table.panels();
        this.kinds = table.kinds();
        takeLine(offsets.get(0), 0);
        for (PanelOffsets strip : offsets) {
            takeLine(strip, 1);
        }
    }

    static Hull through(HullOffsets table) {
        Loft loft = new Loft(table);
        return loft.hull(loft.lines, PanelKnots.GAP_TO_PASS, ExactStrip::through, 0);
    }

    static Hull within(HullOffsets table) {
        Loft loft = new Loft(table);
        return loft.hull(new FairLines(table.leastCount(), loft.lines).with(loft::strips),
                PanelKnots.GAP_TO_FAIR,
                (strip, across) -> new FairStrip(strip, across, table.leastCount()).within(), table.leastCount() / 2);
    }

    /** Draws the sections of a strip: poles of w across at each station. */
    private interface Sections {
        double[][] of(Strip strip, KnotVector across);
    }

    /** @param end 0 for the strip's lower line, 1 for its upper */
    private void takeLine(PanelOffsets strip, int end) {
        double[][] line = new double[x.length][];
        for (int j = 0; j < x.length; j++) {
            SectionPoint point = end(strip.stations().get(j), end);
            line[j] = new double[] {point.y(), point.z()};
        }
        lines.add(line);
    }

    private static SectionPoint end(List<SectionPoint> points, int end) {
        return points.get(end * (points.size() - 1));
    }

    private List<Strip> strips(List<double[][]> between) {
        List<Strip> strips = new ArrayList<>();
        for (int p = 0; p < offsets.size(); p++) {
            strips.add(new Strip(between.get(p), between.get(p + 1), offsets.get(p).stations(), table));
        }
        return strips;
    }

    private Hull hull(List<double[][]> between, double leastGap, Sections sections, double within) {
        List<HullLine> drawn = new ArrayList<>();
        for (int l = 0; l < between.size(); l++) {
            String name = l == 0 ? offsets.get(0).lower() : offsets.get(l - 1).upper();
            drawn.add(new HullLine(name, kinds.get(l), spline(between.get(l), 0), spline(between.get(l), 1)));
        }
        List<Strip> strips = strips(between);
        List<Panel> panels = IntStream.range(0, strips.size()).parallel().mapToObj(p -> {
            KnotVector across = PanelKnots.across(strips.get(p), leastGap);
            return panel(strips.get(p), across, sections.of(strips.get(p), across), drawn.get(p), drawn.get(p + 1));
        }).toList();
        return new KeptReadings(table, within).checked(new Hull(drawn, panels, within));
    }

    private CubicSpline spline(double[][] line, int coordinate) {
        double[] values = new double[x.length];
        for (int j = 0; j < x.length; j++) {
            values[j] = line[j][coordinate];
        }
        return CubicSpline.through(x, values);
    }

    /** Sections' poles lofted along the length, each as a spline through the stations. */
    private Panel panel(Strip strip, KnotVector across, double[][] w, HullLine lower, HullLine upper) {
        KnotVector along = lower.height().knots();
        int nv = across.size();
        double[] polesY = new double[along.size() * nv];
        double[] polesZ = new double[along.size() * nv];
        double[] y = new double[x.length];
        double[] z = new double[x.length];
        for (int k = 0; k < nv; k++) {
            for (int j = 0; j < x.length; j++) {
                y[j] = strip.y(j, across.greville(k), w[j][k]);
                z[j] = strip.z(j, across.greville(k), w[j][k]);
            }
            CubicSpline alongY = CubicSpline.through(x, y);
            CubicSpline alongZ = CubicSpline.through(x, z);
            for (int i = 0; i < along.size(); i++) {
                polesY[i * nv + k] = alongY.pole(i);
                polesZ[i * nv + k] = alongZ.pole(i);
            }
        }
        return new Panel(lower, upper, along, across, polesY, polesZ);
    }
}
