package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Hatch;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Text;
import org.garboard.drawing.layout.Cluster;

/** Parts of a through-hull where a section cuts them: outlines, and strokes that tell one from another. */
final class CutParts {
    private static final String BODY = "transducer-body";
    private static final double SPACING = 2.5;
    /** Strokes of neighbours cross. */
    private static final Map<String, Double> ANGLES = angles();

    private CutParts() {
    }

    private static Map<String, Double> angles() {
        Map<String, Double> angles = new LinkedHashMap<>();
        angles.put("fairing-block", 45.0);
        angles.put("hull-skin", 135.0);
        angles.put("inner-block", 30.0);
        angles.put("backing-block", 45.0);
        angles.put("sleeve", 0.0);
        return angles;
    }

    /** What the strokes stand for. */
    static Cluster legend(SheetTask task) {
        double h = task.lettering().tables();
        List<Entity> drawn = new ArrayList<>();
        drawn.add(Text.level(Layer.TEXT, "PARTS IN THE SECTIONS", new Point(0, 2 * h), task.lettering().headings(), Anchor.LEFT));
        double y = -h;
        for (NamedSolid part : task.made().solids()) {
            List<Point> swatch = List.of(new Point(0, y), new Point(5 * h, y), new Point(5 * h, y + 2 * h), new Point(0, y + 2 * h));
            if (ANGLES.containsKey(part.name())) {
                drawn.add(new Hatch(Layer.HATCH, List.of(swatch), ANGLES.get(part.name()), SPACING));
            }
            drawn.add(Polyline.closed(part.name().equals(BODY) ? Layer.ADJACENT : Layer.MARK, swatch));
            drawn.add(Text.level(Layer.TEXT, part.name().replace('-', ' '), new Point(6 * h, y + h / 2), h, Anchor.LEFT));
            y -= 2.8 * h;
        }
        return Cluster.of(drawn);
    }

    /** A part by the loops in which a plane meets it; the body's outline alone. */
    static List<Entity> of(NamedSolid part, List<List<Point>> loops) {
        List<Entity> shown = new ArrayList<>();
        boolean body = part.name().equals(BODY);
        for (List<Point> loop : loops) {
            List<Point> corners = withoutStraightOnes(loop);
            if (corners.size() > 2) {
                shown.add(Polyline.closed(body ? Layer.ADJACENT : Layer.HULL, corners));
                if (!body) {
                    shown.add(new Hatch(Layer.HATCH, List.of(corners), ANGLES.getOrDefault(part.name(), 60.0), SPACING));
                }
            }
        }
        return shown;
    }

    /** Leaves out corners of the mesh at which nothing turns. */
    private static List<Point> withoutStraightOnes(List<Point> loop) {
        List<Point> kept = new ArrayList<>();
        for (Point point : loop) {
            while (kept.size() > 1 && straight(kept.get(kept.size() - 2), kept.get(kept.size() - 1), point)) {
                kept.remove(kept.size() - 1);
            }
            if (kept.isEmpty() || kept.get(kept.size() - 1).distanceTo(point) > 1e-3) {
                kept.add(point);
            }
        }
        while (kept.size() > 3 && (straight(kept.get(kept.size() - 2), kept.get(kept.size() - 1), kept.get(0))
                || kept.get(kept.size() - 1).distanceTo(kept.get(0)) < 1e-3)) {
            kept.remove(kept.size() - 1);
        }
        return kept;
    }

    private static boolean straight(Point a, Point b, Point c) {
        double across = (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
        return Math.abs(across) < 2e-3 * a.distanceTo(c);
    }
}
