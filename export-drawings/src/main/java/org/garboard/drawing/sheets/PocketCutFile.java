package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.Pocket;
import org.garboard.drawing.Box;
import org.garboard.drawing.Point;
import org.garboard.drawing.dxf.CutDrawing;
import org.garboard.drawing.dxf.CutDrawing.Contour;
import org.garboard.drawing.dxf.CutDrawing.Stroke;
import org.garboard.drawing.dxf.CutLayer;

/**
 * The developed opening for the machine, outside up. All marks lie on the piece that is cut out:
 * centreline and middle, arrow to the bow, a corner notch to starboard, the pocket's own outline
 * where it is not the opening's, and a tick at each corner of the finished edge: the marks 1 to 4 of sheet 2,
 * between which the diagonals are taken.
 */
final class PocketCutFile {

    /** Marks keep clear of the outline [mm]: our choice, so that the tool does not cut them away. */
    private static final double CLEAR = 4;
    /** Arrow and notch as shares of the outline's length and width, so that both are seen from arm's length. */
    private static final double BARB = 0.05;
    private static final double NOTCH = 0.12;
    private static final double TICK = 5;
    /** Pocket and opening are the same line where they lie so close [mm]. */
    private static final double SAME_LINE = 0.1;

    private final CutOutline outline;
    private final List<Stroke> strokes = new ArrayList<>();

    private PocketCutFile(CutOutline outline) {
        this.outline = outline;
    }

    static CutDrawing of(Pocket pocket) {
        PocketCutFile file = new PocketCutFile(CutOutline.of(pocket));
        file.axes();
        file.notch();
        marks(pocket).forEach(file::tick);
        if (!pocket.details().hullCut().isEmpty()) {
            file.inner(CutOutline.flat(pocket.developedOpening()));
        }
        file.inner(CutOutline.flat(pocket.developedPocket()));
        return new CutDrawing(List.of(new Contour(CutLayer.CUT_OUTER, file.outline.corners())), List.of(), file.strokes);
    }

    /** The marks 1 to 4 of sheet 2: forward starboard, forward port, after starboard, after port. */
    static List<Point> marks(Pocket pocket) {
        CutOutline edge = CutOutline.finishedEdge(pocket);
        return List.of(edge.corner(1, 1), edge.corner(1, -1), edge.corner(-1, 1), edge.corner(-1, -1));
    }

    /** The centreline with an arrow head half way to the fore end, and the middle square to it. */
    private void axes() {
        Box box = outline.extents();
        mark(new Point(box.left() + CLEAR, 0), new Point(box.right() - CLEAR, 0));
        Point tip = new Point(box.right() / 2, 0);
        mark(tip, tip.towards(180 - 20, BARB * box.width()));
        mark(tip, tip.towards(180 + 20, BARB * box.width()));
        double half = Math.min(box.top(), -box.bottom()) - CLEAR;
        mark(new Point(0, -half), new Point(0, half));
    }

    /** A small right-angled triangle, its corner towards the forward starboard corner of the outline. */
    private void notch() {
        Point corner = outline.corner(1, 1);
        double leg = NOTCH * outline.extents().height();
        Point inside = corner.movedBy(-2.5 * leg, -1.25 * leg);
        Point aft = inside.movedBy(-leg, 0);
        Point down = inside.movedBy(0, -leg);
        mark(inside, aft);
        mark(aft, down);
        mark(down, inside);
    }

    private void tick(Point corner) {
        mark(corner, corner.towards(corner.directionTo(outline.extents().centre()), TICK));
    }

    private void inner(List<Point> pocket) {
        for (int i = 0; i < pocket.size(); i++) {
            Point from = pocket.get(i);
            Point to = pocket.get((i + 1) % pocket.size());
            if (outline.distance(from) > SAME_LINE || outline.distance(to) > SAME_LINE) {
                mark(from, to);
            }
        }
    }

    private void mark(Point from, Point to) {
        strokes.add(new Stroke(CutLayer.MARK, from, to));
    }
}
