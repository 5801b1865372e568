package org.garboard.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The proof must be able to fail. */
class SheetClearanceTest {

    private static Text text(String words, double x, double y, double turn) {
        return new Text(Layer.TEXT, words, new Point(x, y), 3.5, Anchor.LEFT, turn);
    }

    private static List<String> faults(Entity... entities) {
        Sheet sheet = new Sheet("", "", 200, 100, new Scale(1), 3.5, List.of(), List.of(entities));
        return SheetClearance.faults(sheet, new Box(10, 10, 190, 90));
    }

    @Test
    void exact_textsThatTouchAndThatDoNot() {
        assertEquals(List.of("\"ab\" overlaps \"cd\""), faults(text("ab", 50, 50, 0), text("cd", 52, 51, 0)));
        assertEquals(List.of(), faults(text("ab", 50, 50, 0), text("cd", 60, 50, 0)));
    }

    /** A slanting text clears another whose upright box it would cross. */
    @Test
    void exact_slantingTexts() {
        assertEquals(List.of(), faults(text("a long slanting text", 50, 30, 45), text("cd", 70, 32, 0)));
        assertEquals(List.of("\"a long slanting text\" overlaps \"cd\""),
                faults(text("a long slanting text", 50, 30, 45), text("cd", 60, 42, 0)));
    }

    /** Letters of 3.5 mm from x = 50 up from y = 50; outlines also keep clear of what brackets need below. */
    @Test
    void exact_lineThroughAText() {
        for (double y : new double[] {49.5, 51, 53}) {
            assertEquals(List.of("\"ab\" is crossed by a line of HULL"),
                    faults(text("ab", 50, 50, 0), new Line(Layer.HULL, new Point(20, y), new Point(90, y))));
        }
        assertEquals(List.of(), faults(text("ab", 50, 50, 0), new Line(Layer.HULL, new Point(20, 48.9), new Point(90, 48.9))));
        assertEquals(List.of(), faults(text("ab", 50, 50, 0), new Line(Layer.DIM, new Point(20, 49.5), new Point(90, 49.5))));
        assertEquals(List.of("\"ab\" is crossed by a line of DIM"),
                faults(text("ab", 50, 50, 0), new Line(Layer.DIM, new Point(51, 30), new Point(51, 80))));
    }

    /** A slanting skin that passes below the words on one side and above them on the other. */
    @Test
    void exact_outlinesOfEveryKind() {
        Text words = text("ab", 50, 50, 0);
        String fault = "\"ab\" is crossed by a line of POCKET";
        assertEquals(List.of(fault), faults(words, Polyline.open(Layer.POCKET, List.of(new Point(40, 45), new Point(65, 60)))));
        assertEquals(List.of(fault), faults(words, new Circle(Layer.POCKET, new Point(50, 60), 8.5)));
        assertEquals(List.of(fault), faults(words, new Arc(Layer.POCKET, new Point(50, 60), 8.5, 200, 340)));
        assertEquals(List.of(), faults(words, new Arc(Layer.POCKET, new Point(50, 60), 8.5, 20, 160)));
        assertEquals(List.of(fault), faults(words, new Polyline(Layer.POCKET, Polyline.Run.OPEN,
                List.of(new Vertex(new Point(42, 60), 1), Vertex.corner(new Point(58, 60))))));
        assertEquals(List.of(), faults(words, new Line(Layer.HATCH, new Point(40, 51), new Point(70, 51))));
    }

    @Test
    void exact_textBeyondTheFrame() {
        assertEquals(List.of("\"far out\" leaves the frame"), faults(text("far out", 185, 50, 0)));
    }

    @Test
    void exact_viewsThatOverlap() {
        View one = View.around("A", List.of(new Line(Layer.HULL, new Point(20, 20), new Point(60, 60))));
        View other = View.around("B", List.of(new Line(Layer.HULL, new Point(50, 50), new Point(80, 95))));
        Sheet sheet = new Sheet("", "", 200, 100, new Scale(1), 3.5, List.of(one, other), List.of());
        assertEquals(List.of("view A overlaps view B", "view B leaves the frame"),
                SheetClearance.faults(sheet, new Box(10, 10, 190, 90)));
    }
}
