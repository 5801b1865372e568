package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.garboard.geometry.CubicSpline;
import org.garboard.geometry.KnotVector;
import org.garboard.geometry.SplineSites;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.PanelOffsets;
import org.garboard.offsets.SectionPoint;
import org.garboard.offsets.Station;

/** From the stations of one length of a hull to its skin: its named lines first, then each panel between two of them. */
final class LengthLoft {
    private final HullOffsets table;
    private final double within;
    private final double[] x;
    private final List<PanelOffsets> offsets;
    private final List<LineKind> kinds;
    /** {y, z} of each named line at each station. */
    private final List<double[][]> lines = new ArrayList<>();
    /** The same as they are drawn, faired or not. */
    private List<double[][]> drawnLines;
    private final List<HullLine> drawn = new ArrayList<>();
    private Sections sections;
    private double leastGap;

    private LengthLoft(HullOffsets table, double within) {
        this.within = within;
        this.table = table;
        this.x = table.stations().stream().mapToDouble(Station::x).toArray();
        this.offsets = table.panels();
        this.kinds = table.kinds();
        takeLine(offsets.get(0), 0);
        for (PanelOffsets strip : offsets) {
            takeLine(strip, 1);
        }
    }

    static LengthLoft through(HullOffsets table) {
        LengthLoft loft = new LengthLoft(table, 0);
        loft.draw(loft.lines, PanelKnots.GAP_TO_PASS, ExactStrip::through);
        return loft;
    }

    static LengthLoft within(HullOffsets table) {
        LengthLoft loft = new LengthLoft(table, table.leastCount() / 2);
        loft.draw(new FairLines(table.leastCount(), loft.lines).with(loft::strips),
                PanelKnots.GAP_TO_FAIR, (strip, across) -> new FairStrip(strip, across, table.leastCount()).within());
        return loft;
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

    private void draw(List<double[][]> between, double gap, Sections how) {
        leastGap = gap;
        SplineSites stations = new SplineSites(x);
        drawnLines = between;
        for (int l = 0; l < between.size(); l++) {
            String name = l == 0 ? offsets.get(0).lower() : offsets.get(l - 1).upper();
            drawn.add(new HullLine(name, kinds.get(l), spline(stations, between.get(l), 0), spline(stations, between.get(l), 1)));
        }
        sections = how;
    }

    /** x of the first station [m]. */
    double start() {
        return x[0];
    }

    /** x of the last station [m]. */
    double end() {
        return x[x.length - 1];
    }

    /** Its lines, from station to station; asked beyond those they go on. */
    List<HullLine> lines() {
        return drawn;
    }

    HullLine line(String name) {
        return drawn.stream().filter(line -> line.name().equals(name)).findFirst().orElseThrow(() ->
            new IllegalArgumentException("an end is given at \"" + name + "\", which is no line of the table"));
    }

    /** Half-breadth of the last chine, or of the sheer where there is none, at a face [m]. */
    double bottomEdge(PlanFace face) {
        HullLine edge = drawn.get(drawn.size() - 1);
        for (HullLine line : drawn) {
            edge = line.kind() == LineKind.CHINE ? line : edge;
        }
        HullLine cut = edge.between(edge.halfBreadth(0), edge.height(0), PlanFace.square(start()), face);
        return cut.y(cut.to(0));
    }

    private SplineSites reaching(EndFace fore, EndFace aft) {
        return SplineSites.over(Math.min(start(), fore.least()), Math.max(end(), aft.most()), x);
    }

    /** Its lines between the faces at its ends. */
    List<HullLine> lines(EndFace fore, EndFace aft) {
        SplineSites sites = isCut(fore, aft) ? reaching(fore, aft) : new SplineSites(x);
        return IntStream.range(0, drawn.size()).mapToObj(l -> isCut(fore, aft)
            ? between(l, spline(sites, drawnLines.get(l), 0), spline(sites, drawnLines.get(l), 1), fore, aft)
            : drawn.get(l)).toList();
    }

    private HullLine between(int line, CubicSpline y, CubicSpline z, EndFace fore, EndFace aft) {
        if (fore instanceof StemFace stem) {
            StemSkin skin = new StemSkin(stem, start());
            return drawn.get(line).between(skin.closed(kinds.get(line), y, z), z.withKnot(start()), fore, aft);
        }
        return drawn.get(line).between(y, z, fore, aft);
    }

    private boolean isCut(EndFace fore, EndFace aft) {
        return !(fore.isSquare() && aft.isSquare() && aft.least() == end()
            && (fore.least() == start() || fore.least() == Math.nextDown(start())));
    }

    /** Its panels between the faces at its ends, lofted on past its stations as far as the faces reach. */
    List<Panel> panels(List<HullLine> between, EndFace fore, EndFace aft) {
        List<Strip> strips = strips(drawnLines);
        SplineSites sites = isCut(fore, aft) ? reaching(fore, aft) : new SplineSites(x);
        List<Panel> panels = IntStream.range(0, strips.size()).parallel().mapToObj(p -> {
            KnotVector across = PanelKnots.across(strips.get(p), leastGap);
            double[][] w = sections.of(strips.get(p), across);
            double[][] poles = poles(strips.get(p), across, w, sites);
            Panel panel = new Panel(between.get(p), between.get(p + 1), sites.knots(), across, poles[0], poles[1], fore, aft);
            return fore instanceof StemFace stem ? new StemSkin(stem, start()).closed(panel) : panel;
        }).toList();
        new KeptReadings(table, within).check(panels);
        return panels;
    }

    private CubicSpline spline(SplineSites sites, double[][] line, int coordinate) {
        double[] values = new double[x.length];
        for (int j = 0; j < x.length; j++) {
            values[j] = line[j][coordinate];
        }
        return sites.through(values);
    }

    /** Sections' poles lofted along the length, each as a spline through the stations: of y, then of z. */
    private double[][] poles(Strip strip, KnotVector across, double[][] w, SplineSites sites) {
        int nu = sites.knots().size();
        int nv = across.size();
        double[][] poles = new double[2][nu * nv];
        double[] y = new double[x.length];
        double[] z = new double[x.length];
        for (int k = 0; k < nv; k++) {
            for (int j = 0; j < x.length; j++) {
                y[j] = strip.y(j, across.greville(k), w[j][k]);
                z[j] = strip.z(j, across.greville(k), w[j][k]);
            }
            CubicSpline alongY = sites.through(y);
            CubicSpline alongZ = sites.through(z);
            for (int i = 0; i < nu; i++) {
                poles[0][i * nv + k] = alongY.pole(i);
                poles[1][i * nv + k] = alongZ.pole(i);
            }
        }
        return poles;
    }
}
