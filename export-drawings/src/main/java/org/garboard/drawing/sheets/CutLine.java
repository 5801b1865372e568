package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;

/** Skin and cut of one section: the skin that stays, the skin cut away, the finished surface. */
final class CutLine {

    private CutLine() {
    }

    /**
     * Draws them.
     *
     * @param skin points along the skin
     * @param cut points of the finished surface, its ends on the skin; may be empty
     * @param from where the drawn skin begins at the left
     * @param to where it ends at the right
     */
    static List<Entity> of(List<Point> skin, List<Point> cut, double from, double to) {
        List<Entity> drawn = new ArrayList<>();
        List<Point> ordered = new ArrayList<>(skin);
        if (ordered.get(0).x() > ordered.get(ordered.size() - 1).x()) {
            Collections.reverse(ordered);
        }
        if (cut.size() < 2) {
            part(ordered, from, to, Layer.HULL, drawn);
            return drawn;
        }
        double low = Math.min(cut.get(0).x(), cut.get(cut.size() - 1).x());
        double high = Math.max(cut.get(0).x(), cut.get(cut.size() - 1).x());
        part(ordered, from, low, Layer.HULL, drawn);
        part(ordered, low, high, Layer.ADJACENT, drawn);
        part(ordered, high, to, Layer.HULL, drawn);
        drawn.add(Polyline.open(Layer.POCKET, cut));
        return drawn;
    }

    /** The piece of a line between two abscissae, cut where it crosses them. */
    private static void part(List<Point> line, double from, double to, Layer layer, List<Entity> drawn) {
        List<Point> piece = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            Point here = line.get(i);
            if (i > 0) {
                crossing(line.get(i - 1), here, from, piece);
                crossing(line.get(i - 1), here, to, piece);
            }
            if (here.x() >= from && here.x() <= to) {
                add(piece, here);
            }
        }
        if (piece.size() > 1) {
            drawn.add(Polyline.open(layer, piece));
        }
    }

    private static void crossing(Point before, Point after, double x, List<Point> piece) {
        if (before.x() < x && x < after.x()) {
            double share = (x - before.x()) / (after.x() - before.x());
            add(piece, new Point(x, before.y() + share * (after.y() - before.y())));
        }
    }

    private static void add(List<Point> piece, Point point) {
        if (piece.isEmpty() || piece.get(piece.size() - 1).distanceTo(point) > 1e-6) {
            piece.add(point);
        }
    }
}
