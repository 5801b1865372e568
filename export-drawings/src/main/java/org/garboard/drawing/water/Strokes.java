package org.garboard.drawing.water;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Hatch;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;

/**
 * How an area is told from others: its outline, and the hatch that fills it.
 *
 * @param edge layer of the outline
 * @param angle of the hatch, degrees
 * @param spacing of its strokes [mm]; 0 for none
 */
record Strokes(Layer edge, double angle, double spacing) {

    static Strokes hatched(Layer edge, double angle, double spacing) {
        return new Strokes(edge, angle, spacing);
    }

    static Strokes outline(Layer edge) {
        return new Strokes(edge, 0, 0);
    }

    List<Entity> over(List<List<Point>> rings) {
        List<Entity> drawn = new ArrayList<>();
        rings.forEach(ring -> drawn.add(Polyline.closed(edge, ring)));
        if (spacing > 0) {
            drawn.add(new Hatch(Layer.HATCH, rings, angle, spacing));
        }
        return drawn;
    }
}
