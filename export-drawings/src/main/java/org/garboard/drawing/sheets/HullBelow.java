package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Leader;
import org.garboard.drawing.LetterWidths;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;
import org.garboard.hull.Curve;
import org.garboard.hull.Hull;
import org.garboard.hull.HullCurves;
import org.garboard.hull.HullLine;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.Station;

/** The hull seen from below, both sides: her lines, steps and ends on one layer, stations and centreline thin. */
public final class HullBelow {
    private final Hull hull;
    private final HullOnPaper own;
    private final HullOnPaper paper;
    private final Layer layer;
    private final List<Entity> shown = new ArrayList<>();

    private HullBelow(Hull hull, HullOnPaper own, HullOnPaper paper, Layer layer) {
        this.hull = hull;
        this.own = own;
        this.paper = paper;
        this.layer = layer;
    }

    /** With stations and centreline, which stands out so far at either end [mm]. */
    public static List<Entity> of(Hull hull, HullOffsets table, HullOnPaper paper, double over) {
        HullBelow below = new HullBelow(hull, paper, paper, Layer.HULL);
        below.outline();
        for (Station station : table.skinStations()) {
            double beam = outermost(hull, station.x());
            below.shown.add(new Line(Layer.GRID, paper.below(station.x(), -beam), paper.below(station.x(), beam)));
        }
        below.shown.add(new Line(Layer.CENTRE, new Point(-over, 0), new Point(paper.length() + over, 0)));
        return below.shown;
    }

    /**
     * Lines, steps and ends alone, over another hull.
     *
     * @param own the hull's own paper
     * @param paper the other's, on which it is drawn
     */
    public static List<Entity> outline(Hull hull, HullOnPaper own, HullOnPaper paper, Layer layer) {
        HullBelow below = new HullBelow(hull, own, paper, layer);
        below.outline();
        return below.shown;
    }

    /**
     * Which way is forward, which side is up.
     *
     * @param aft how far what is drawn reaches beyond the after end, to the left [mm], 0 or less
     * @param halfBeam of the hull on paper [mm]
     * @param height of the words [mm]
     */
    public static List<Entity> directions(HullOnPaper paper, double aft, double halfBeam, double height) {
        double middle = Math.max(halfBeam / 2, LetterWidths.extent("STBD", height) / 2 + 2);
        Point bow = new Point(paper.length() + 1.7 * height, 0);
        return List.of(Text.centred(Layer.TEXT, "STBD", new Point(aft - 1.5 * height, middle), height, 90),
                Text.centred(Layer.TEXT, "PORT", new Point(aft - 1.5 * height, -middle), height, 90),
                new Leader(Layer.DIM, Leader.End.ARROW, List.of(bow.movedBy(3.5 * height, 0), bow)),
                Text.level(Layer.TEXT, "FWD", bow.movedBy(0, 0.7 * height), height, Anchor.LEFT),
                Text.level(Layer.TEXT, "CL", bow.movedBy(0, -1.7 * height), height, Anchor.LEFT));
    }

    /** Largest half-breadth of any line at x [m]. */
    public static double outermost(Hull hull, double x) {
        return hull.lines().stream().mapToDouble(line -> line.y(x)).max().orElse(0);
    }

    private void outline() {
        for (HullLine line : hull.lines().subList(1, hull.lines().size())) {
            both(new HullCurves(hull).line(line, paper.chord()));
        }
        for (int side : new int[] {1, -1}) {
            shown.addAll(own.stepsInPlan(layer, point -> below(point, side)));
        }
        if (hull.endsSquare()) {
            ending(hull.afterEnd());
        } else {
            both(new HullCurves(hull).afterEdge());
        }
        if (hull.stem().isEmpty()) {
            ending(hull.forwardEnd());
        } else {
            both(new HullCurves(hull).stemEdge());
        }
    }

    private void both(List<Curve> curves) {
        for (int side : new int[] {1, -1}) {
            shown.addAll(paper.drawn(layer, curves, point -> below(point, side)));
        }
    }

    private Point below(Vector3D point, int side) {
        return paper.below(point.getX(), side * point.getY());
    }

    private void ending(double x) {
        double beam = outermost(hull, x);
        Point starboard = paper.below(x, beam);
        if (starboard.y() > 0.01) {
            shown.add(new Line(layer, paper.below(x, -beam), starboard));
        }
    }
}
