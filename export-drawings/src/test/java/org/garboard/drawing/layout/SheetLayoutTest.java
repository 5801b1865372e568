package org.garboard.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.Piece.Corner;
import org.garboard.drawing.layout.TitleBlock.Projection;
import org.junit.jupiter.api.Test;

class SheetLayoutTest {

    private static final Lettering LETTERING = new Lettering(3.5, 3.5, 5);

    private static Entity diagonal(double width, double height) {
        return new Line(Layer.HULL, new Point(0, 0), new Point(width, height));
    }

    private static View view(String name, double width, double height) {
        return View.around(name, List.of(diagonal(width, height)));
    }

    private static Piece piece(Corner corner, View... shapes) {
        return new Piece(List.of(shapes).stream().map(Cluster::of).toList(), List.of(corner));
    }

    private static Sheet set(double width, double height, Piece... pieces) {
        TitleBlock block = new TitleBlock("", "", "", "", "", "", "", "", "", "", "", "", "", Projection.FIRST_ANGLE, "Table", "", "", "", List.of());
        return new SheetLayout(new Paper("test", width, height), LETTERING, block)
                .set("", "", new Scale(1), List.of(pieces)).orElseThrow();
    }

    /** Where there is room, neighbours stand up to four gaps apart; where there is none, one. */
    @Test
    void exact_piecesStandApartAsRoomAllows() {
        Sheet wide = set(594, 420, piece(Corner.TOP_LEFT, view("A", 100, 50)), piece(Corner.TOP_LEFT, view("B", 100, 50)));
        assertEquals(4 * LETTERING.gap(), wide.views().get(0).frame().bottom() - wide.views().get(1).frame().top(), 1e-9);
        double inside = 420 - 20 - 12;
        double height = (inside - LETTERING.gap()) / 2;
        Sheet tight = set(594, 420, piece(Corner.TOP_LEFT, view("A", 300, height)), piece(Corner.TOP_LEFT, view("B", 300, height)));
        assertEquals(LETTERING.gap(), tight.views().get(0).frame().bottom() - tight.views().get(1).frame().top(), 1e-6);
    }

    /** A wider gap is not bought with a lesser shape of a view. */
    @Test
    void exact_viewsKeepTheirShape() {
        double inside = 420 - 20 - 12;
        double height = (inside - LETTERING.gap()) / 2;
        Sheet sheet = set(594, 420, piece(Corner.TOP_LEFT, view("A", 300, height), view("lesser", 300, height / 2)),
                piece(Corner.TOP_LEFT, view("B", 300, height)));
        assertEquals(List.of("A", "B"), sheet.views().stream().map(View::name).toList());
    }

    @Test
    void exact_rowKeepsLevelsAndStackKeepsLeftSides() {
        List<View> views = List.of(view("A", 40, 10), view("B", 30, 20).movedBy(7, 0));
        List<View> row = Cluster.row(views, 5).views();
        assertEquals(row.get(0).frame().right() + 5, row.get(1).frame().left(), 1e-12);
        assertEquals(0, row.get(1).frame().bottom(), 1e-12);
        List<View> stack = Cluster.stack(views, 5).views();
        assertEquals(stack.get(0).frame().bottom() - 5, stack.get(1).frame().top(), 1e-12);
        assertEquals(stack.get(0).frame().left(), stack.get(1).frame().left(), 1e-12);
    }
}
