package org.garboard.drawing.dxf;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Box;
import org.garboard.drawing.Point;

/**
 * What a cut file holds: true millimetres, x right and y up as the stock lies. Each outline once.
 *
 * @param contours closed outlines
 * @param holes round holes
 * @param strokes straight lines to scribe
 */
public record CutDrawing(List<Contour> contours, List<Hole> holes, List<Stroke> strokes) {
    public CutDrawing {
        contours = List.copyOf(contours);
        holes = List.copyOf(holes);
        strokes = List.copyOf(strokes);
    }

    /** The least box round everything. */
    public Box extents() {
        List<Point> extremes = new ArrayList<>();
        contours.forEach(contour -> extremes.addAll(contour.corners()));
        for (Hole hole : holes) {
            double radius = hole.diameter() / 2;
            extremes.add(hole.centre().movedBy(-radius, -radius));
            extremes.add(hole.centre().movedBy(radius, radius));
        }
        for (Stroke stroke : strokes) {
            extremes.add(stroke.from());
            extremes.add(stroke.to());
        }
        return Box.around(extremes);
    }

    /**
     * A closed outline of straight chords.
     *
     * @param corners in order; the last is not the first again
     */
    public record Contour(CutLayer layer, List<Point> corners) {

        /** No machine follows a shorter step [mm]. */
        private static final double SHORTEST = 0.001;

        public Contour {
            corners = List.copyOf(corners);
            if (corners.size() < 3) {
                throw new IllegalArgumentException("an outline to cut has three corners or more, not " + corners.size());
            }
            for (int i = 0; i < corners.size(); i++) {
                if (corners.get(i).distanceTo(corners.get((i + 1) % corners.size())) < SHORTEST) {
                    throw new IllegalArgumentException("the outline to cut stands still at corner " + i
                            + ", " + corners.get(i) + " mm");
                }
            }
        }
    }

    /** A round hole [mm]. */
    public record Hole(CutLayer layer, Point centre, double diameter) {
    }

    /** A straight line. */
    public record Stroke(CutLayer layer, Point from, Point to) {
    }
}
