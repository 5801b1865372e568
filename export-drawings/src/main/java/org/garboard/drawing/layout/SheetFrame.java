package org.garboard.drawing.layout;

import java.util.List;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;

/** Paper edge, frame and centring marks (ISO 5457). */
final class SheetFrame {

    /** Centring marks run this far into the frame [mm]. */
    static final double MARK = 5;

    private SheetFrame() {
    }

    static List<Entity> of(Paper paper) {
        Box frame = paper.frame();
        Box edge = paper.edge();
        Point centre = edge.centre();
        // on the smallest sheets the title block stands there
        double fromBelow = centre.x() < frame.right() - TitleBlockDrawing.WIDTH ? MARK : 0;
        return List.of(
                rectangle(Layer.TRIM, edge),
                rectangle(Layer.BORDER, frame),
                new Line(Layer.BORDER, new Point(centre.x(), edge.bottom()), new Point(centre.x(), frame.bottom() + fromBelow)),
                new Line(Layer.BORDER, new Point(centre.x(), edge.top()), new Point(centre.x(), frame.top() - MARK)),
                new Line(Layer.BORDER, new Point(edge.left(), centre.y()), new Point(frame.left() + MARK, centre.y())),
                new Line(Layer.BORDER, new Point(edge.right(), centre.y()), new Point(frame.right() - MARK, centre.y())));
    }

    static Polyline rectangle(Layer layer, Box box) {
        return Polyline.closed(layer, List.of(new Point(box.left(), box.bottom()), new Point(box.right(), box.bottom()),
                new Point(box.right(), box.top()), new Point(box.left(), box.top())));
    }
}
