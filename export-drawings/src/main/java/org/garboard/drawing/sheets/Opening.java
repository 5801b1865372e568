package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.drawing.Circle;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Vertex;

/**
 * What is cut out along a hole's axis.
 *
 * @param use what it is for
 * @param aft of the axis [m], along the block where there is one outside
 * @param outline square to the axis
 */
record Opening(String use, double aft, BodyOutline outline) {
    /** A quarter round's bulge in a polyline, tan(90 deg / 4). */
    private static final double QUARTER = Math.tan(Math.PI / 8);
    private static final double NOTHING = 1e-6;

    static Opening round(String use, double aft, double diameter) {
        return new Opening(use, aft, new BodyOutline(diameter, diameter, diameter / 2));
    }

    /** Whether a hole saw or a drill makes it. */
    boolean isRound() {
        return outline.length() - 2 * outline.radius() < NOTHING && outline.width() - 2 * outline.radius() < NOTHING;
    }

    /** Whether its corners make two half rounds. */
    boolean hasRoundEnds() {
        return !isRound() && (cornersAcross() < NOTHING || cornersAlong() < NOTHING);
    }

    /** How far its corners' centres lie from its middle, along and across [m]. */
    double cornersAlong() {
        return outline.length() / 2 - outline.radius();
    }

    double cornersAcross() {
        return outline.width() / 2 - outline.radius();
    }

    /** Seen from below: bow to the right, starboard up. */
    Entity below(Scale scale, Layer layer) {
        Point middle = BlockTask.below(scale, aft, 0);
        double radius = scale.paper(outline.radius());
        if (isRound()) {
            return new Circle(layer, middle, radius);
        }
        double half = scale.paper(outline.length() / 2);
        double wide = scale.paper(outline.width() / 2);
        List<Vertex> corners = new ArrayList<>();
        for (int quarter = 0; quarter < 4; quarter++) {
            int right = quarter == 0 || quarter == 3 ? 1 : -1;
            int up = quarter < 2 ? 1 : -1;
            Point onSide = middle.movedBy(right * half, up * (wide - radius));
            Point onEnd = middle.movedBy(right * (half - radius), up * wide);
            boolean sideFirst = quarter % 2 == 0;
            corners.add(new Vertex(sideFirst ? onSide : onEnd, QUARTER));
            corners.add(Vertex.corner(sideFirst ? onEnd : onSide));
        }
        return new Polyline(layer, Polyline.Run.CLOSED, apart(corners));
    }

    /** Where straight sides have no length, or corners no radius, their ends fall together. */
    private static List<Vertex> apart(List<Vertex> corners) {
        List<Vertex> kept = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point next = corners.get((i + 1) % corners.size()).at();
            if (corners.get(i).at().distanceTo(next) > NOTHING) {
                kept.add(corners.get(i));
            }
        }
        return kept;
    }
}
