package org.garboard.drawing.flow;

import java.util.ArrayList;
import java.util.List;
import org.garboard.craft.Sides;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.sheets.HullOnPaper;
import org.garboard.drawing.sheets.NameColumn;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.flow.shadow.Shadow;
import org.garboard.geometry.Quad;

/** Shadows seen from below, both sides, and their names in a column abaft the stern. */
final class ShadowsBelow {
    static final Strokes WAKE = Strokes.hatched(Layer.MARK, 45, 2);
    static final Strokes AHEAD = Strokes.hatched(Layer.MARK, 135, 1.5);
    static final Layer ADVISORY_LINE = Layer.HIDDEN;
    private final HullOnPaper paper;
    private final List<Entity> shown = new ArrayList<>();
    private final List<NameColumn.Name> names = new ArrayList<>();

    private ShadowsBelow(HullOnPaper paper) {
        this.paper = paper;
    }

    /**
     * @param labels of what else stands in the view
     * @param column x of the names' ends [mm]
     */
    static List<Entity> of(List<Shadow> shadows, List<NameColumn.Name> labels, HullOnPaper paper, double lettering, double column) {
        ShadowsBelow below = new ShadowsBelow(paper);
        below.names.addAll(labels);
        shadows.forEach(below::draw);
        below.shown.addAll(NameColumn.leftOf(column, NameColumn.NO_FLOOR, below.names, lettering));
        return below.shown;
    }

    private void draw(Shadow shadow) {
        for (PlanRegion region : shadow.advisory()) {
            RegionBelow.rings(region, paper).forEach(ring -> shown.add(Polyline.closed(ADVISORY_LINE, ring)));
        }
        shadow.wake().forEach(region -> shown.addAll(WAKE.over(RegionBelow.rings(region, paper))));
        shadow.ahead().forEach(region -> shown.addAll(AHEAD.over(RegionBelow.rings(region, paper))));
        cover(shadow);
        RegionBelow.aftermost(shadow.wake(), paper)
            .ifPresent(end -> names.add(new NameColumn.Name(shadow.feature().name(), end)));
    }

    private void cover(Shadow shadow) {
        for (int side : new int[] {1, -1}) {
            if (shadow.feature().sides().meets(side > 0 ? Sides.STARBOARD : Sides.PORT)) {
                for (Quad quad : shadow.feature().cover()) {
                    List<Point> corners = new ArrayList<>();
                    for (int k = 0; k < Quad.CORNERS; k++) {
                        corners.add(paper.below(quad.x(k), side * quad.y(k)));
                    }
                    shown.add(Polyline.closed(Layer.HULL, corners));
                }
            }
        }
    }
}
