package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import org.garboard.geometry.CubicSpline;
import org.garboard.geometry.KnotVector;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.PanelOffsets;
import org.garboard.offsets.SectionPoint;
import org.garboard.offsets.Station;

/** From a table to a hull: its named lines first, then each panel between two of them. */
final class Loft {

    private Loft() {
    }

    static Hull through(OffsetTable table) {
        double[] x = table.stations().stream().mapToDouble(Station::x).toArray();
        List<PanelOffsets> strips = PanelOffsets.of(table);
        List<HullLine> lines = new ArrayList<>();
        List<Panel> panels = new ArrayList<>();
        lines.add(line(table, x, strips.get(0).lower(), strips.get(0).stations(), End.LOWER));
        for (PanelOffsets strip : strips) {
            HullLine lower = lines.get(lines.size() - 1);
            HullLine upper = line(table, x, strip.upper(), strip.stations(), End.UPPER);
            panels.add(panel(x, strip, lower, upper));
            lines.add(upper);
        }
        return new Hull(lines, panels);
    }

    private enum End {
        LOWER, UPPER;

        SectionPoint of(List<SectionPoint> points) {
            return points.get(this == LOWER ? 0 : points.size() - 1);
        }
    }

    private static HullLine line(OffsetTable table, double[] x, String name,
                                 List<List<SectionPoint>> stations, End end) {
        double[] y = stations.stream().mapToDouble(points -> end.of(points).y()).toArray();
        double[] z = stations.stream().mapToDouble(points -> end.of(points).z()).toArray();
        LineKind kind = table.lines().get(end.of(stations.get(0)).line()).kind();
        return new HullLine(name, kind, CubicSpline.through(x, y), CubicSpline.through(x, z));
    }

    private static Panel panel(double[] x, PanelOffsets strip, HullLine lower, HullLine upper) {
        List<double[]> v = new ArrayList<>();
        List<double[]> y = new ArrayList<>();
        List<double[]> z = new ArrayList<>();
        for (List<SectionPoint> points : strip.stations()) {
            double[] stationY = points.stream().mapToDouble(SectionPoint::y).toArray();
            double[] stationZ = points.stream().mapToDouble(SectionPoint::z).toArray();
            y.add(stationY);
            z.add(stationZ);
            v.add(PanelKnots.chordLength(stationY, stationZ));
        }
        KnotVector along = lower.height().knots();
        KnotVector across = PanelKnots.across(v);
        double[] polesY = PanelFit.through(along, across, x, v, y,
                poles(lower.halfBreadth()), poles(upper.halfBreadth()));
        double[] polesZ = PanelFit.through(along, across, x, v, z,
                poles(lower.height()), poles(upper.height()));
        return new Panel(lower, upper, along, across, polesY, polesZ);
    }

    private static double[] poles(CubicSpline spline) {
        double[] poles = new double[spline.knots().size()];
        for (int i = 0; i < poles.length; i++) {
            poles[i] = spline.pole(i);
        }
        return poles;
    }
}
