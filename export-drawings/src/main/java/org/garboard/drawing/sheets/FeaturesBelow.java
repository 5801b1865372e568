package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.geometry.Quad;

/** Strakes and fittings seen from below, and their names in a column ahead of the bow. */
final class FeaturesBelow {
    private final HullOnPaper paper;
    private final double lettering;
    private final List<Entity> shown = new ArrayList<>();
    private final List<NameColumn.Name> names = new ArrayList<>();

    private FeaturesBelow(HullOnPaper paper, double lettering) {
        this.paper = paper;
        this.lettering = lettering;
    }

    /** @param lettering height of the names [mm] */
    static List<Entity> of(List<LaidFeature> features, HullOnPaper paper, double lettering) {
        FeaturesBelow below = new FeaturesBelow(paper, lettering);
        features.forEach(below::draw);
        // the arrow forward and its word stand below the column
        below.shown.addAll(NameColumn.rightOf(paper.length() + 2, 1.8 * lettering, below.names, lettering));
        return below.shown;
    }

    private void draw(LaidFeature feature) {
        if (feature.sides().meets(Sides.PORT)) {
            shown.add(Polyline.closed(Layer.FORM, outline(feature, -1)));
        }
        if (feature.sides().meets(Sides.STARBOARD)) {
            shown.add(Polyline.closed(Layer.FORM, outline(feature, 1)));
        }
        Point end = outline(feature, feature.sides() == Sides.PORT ? -1 : 1).stream()
            .max(Comparator.comparingDouble(Point::x)).orElseThrow();
        names.add(new NameColumn.Name(feature.name() + " (" + feature.sides().words() + ")", end));
    }

    /** Along the inboard corners from end to end, and back along the outboard ones. */
    private List<Point> outline(LaidFeature feature, int side) {
        List<Point> out = new ArrayList<>();
        List<Point> back = new ArrayList<>();
        for (Quad quad : feature.cover()) {
            add(out, paper.below(quad.x(0), side * quad.y(0)));
            add(out, paper.below(quad.x(1), side * quad.y(1)));
            add(back, paper.below(quad.x(3), side * quad.y(3)));
            add(back, paper.below(quad.x(2), side * quad.y(2)));
        }
        for (int i = back.size() - 1; i >= 0; i--) {
            out.add(back.get(i));
        }
        return out;
    }

    private static void add(List<Point> points, Point point) {
        if (points.isEmpty() || points.get(points.size() - 1).distanceTo(point) > 1e-6) {
            points.add(point);
        }
    }
}
