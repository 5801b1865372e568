package org.garboard.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Where something drawn leaves ink, as small convex figures: two points of a stroke, three or four
 * of a fill, chords of a curve. Hatches leave none: words may stand on them.
 */
public final class Ink {

    /** Chords of a full circle: our choice; at a radius of 100 mm they stray 0.1 mm. */
    private static final int CHORDS = 72;

    private Ink() {
    }

    /** The figures of a plain stroke or fill; a text's extent with its reserve. */
    public static List<List<Point>> of(Entity plain) {
        List<List<Point>> figures = new ArrayList<>();
        if (plain instanceof Line line) {
            figures.add(List.of(line.from(), line.to()));
        } else if (plain instanceof Text text) {
            figures.add(text.corners());
        } else if (plain instanceof Solid solid) {
            figures.add(solid.corners());
        } else if (plain instanceof Circle circle) {
            round(new Arc(circle.layer(), circle.centre(), circle.radius(), 0, 360), figures);
        } else if (plain instanceof Arc arc) {
            round(arc, figures);
        } else if (plain instanceof Polyline polyline) {
            runs(polyline, figures);
        }
        return figures;
    }

    private static void runs(Polyline polyline, List<List<Point>> figures) {
        for (int run = 0; run < polyline.runs(); run++) {
            if (polyline.vertices().get(run).straight()) {
                figures.add(List.of(polyline.vertices().get(run).at(), polyline.end(run)));
            } else {
                round(polyline.arc(run), figures);
            }
        }
    }

    private static void round(Arc arc, List<List<Point>> figures) {
        int chords = (int) Math.ceil(arc.sweepDeg() / 360 * CHORDS);
        for (int i = 0; i < chords; i++) {
            figures.add(List.of(arc.centre().towards(arc.startDeg() + arc.sweepDeg() * i / chords, arc.radius()),
                    arc.centre().towards(arc.startDeg() + arc.sweepDeg() * (i + 1) / chords, arc.radius())));
        }
    }

    /** Whether two convex figures share more than an edge: they do unless the direction of some edge parts them. */
    public static boolean meets(List<Point> one, List<Point> other) {
        return !parted(one, other) && !parted(other, one);
    }

    private static boolean parted(List<Point> figure, List<Point> other) {
        for (int i = 0; i < figure.size(); i++) {
            Point a = figure.get(i);
            Point b = figure.get((i + 1) % figure.size());
            double nx = b.y() - a.y();
            double ny = a.x() - b.x();
            if (most(figure, nx, ny) <= -most(other, -nx, -ny) + 1e-9) {
                return true;
            }
        }
        return false;
    }

    private static double most(List<Point> figure, double nx, double ny) {
        double most = Double.NEGATIVE_INFINITY;
        for (Point point : figure) {
            most = Math.max(most, point.x() * nx + point.y() * ny);
        }
        return most;
    }
}
