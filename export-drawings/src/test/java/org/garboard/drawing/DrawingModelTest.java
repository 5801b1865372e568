package org.garboard.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.garboard.drawing.LinearDimension.Direction;
import org.junit.jupiter.api.Test;

class DrawingModelTest {

    /** A bulge of 1 is half a turn to the left: the chord is the diameter, the arc bellies to the right of it. */
    @Test
    void exact_bulgeOfOneIsAHalfCircle() {
        Polyline line = new Polyline(Layer.HULL, Polyline.Run.OPEN,
                List.of(new Vertex(new Point(0, 0), 1), Vertex.corner(new Point(10, 0))));
        Arc arc = line.arc(0);
        assertEquals(5, arc.radius(), 1e-12);
        assertEquals(5, arc.centre().x(), 1e-12);
        assertEquals(0, arc.centre().y(), 1e-12);
        assertEquals(-5, line.bounds().bottom(), 1e-12);
        assertEquals(0, line.bounds().top(), 1e-12);
    }

    /** A quarter turn to the right, bulge -tan(90/4 deg), from (0,0) to (10,10): centre (10,0), radius 10. */
    @Test
    void exact_bulgeOfAQuarterTurn() {
        Arc arc = new Polyline(Layer.HULL, Polyline.Run.OPEN,
                List.of(new Vertex(new Point(0, 0), -Math.tan(Math.PI / 8)), Vertex.corner(new Point(10, 10)))).arc(0);
        assertEquals(10, arc.radius(), 1e-9);
        assertEquals(10, arc.centre().x(), 1e-9);
        assertEquals(0, arc.centre().y(), 1e-9);
        assertEquals(90, arc.sweepDeg(), 1e-9);
    }

    /** Strokes 1 mm apart over 20 x 20 mm with a hole of 10 x 10 mm: together 300 mm long. */
    @Test
    void exact_hatchLeavesHolesClear() {
        Hatch hatch = new Hatch(Layer.HATCH, List.of(
                List.of(new Point(0, 0.5), new Point(20, 0.5), new Point(20, 20.5), new Point(0, 20.5)),
                List.of(new Point(5, 5.5), new Point(15, 5.5), new Point(15, 15.5), new Point(5, 15.5))), 0, 1);
        List<Line> strokes = HatchStrokes.of(hatch);
        assertEquals(300, strokes.stream().mapToDouble(line -> line.from().distanceTo(line.to())).sum(), 1e-9);
        assertTrue(strokes.stream().map(Line::bounds).allMatch(hatch.bounds()::contains));
    }

    @Test
    void law_hatchStrokesTurnWithTheRegion() {
        List<Point> square = List.of(new Point(0, 0), new Point(14.1, 14.1), new Point(0, 28.2), new Point(-14.1, 14.1));
        List<Line> strokes = HatchStrokes.of(new Hatch(Layer.HATCH, List.of(square), 45, 3));
        double side = Math.hypot(14.1, 14.1);
        assertTrue(strokes.size() >= 6);
        strokes.forEach(line -> assertEquals(side, line.from().distanceTo(line.to()), 1e-9));
    }

    /** "Deadrise 21.5" by hand from the printed widths: 722+556+556+556+333+222+500+556, our own word space 480, 556+556+278+556. */
    @Test
    void published_helveticaAdvanceWidths() {
        double thousandths = 722 + 556 + 556 + 556 + 333 + 222 + 500 + 556 + 480 + 556 + 556 + 278 + 556;
        assertEquals(thousandths / 1000 * 3.5 / 0.716 * 1.15, LetterWidths.extent("Deadrise 21.5", 3.5), 1e-9);
    }

    @Test
    void law_wrappedLinesFitAndLoseNothing() {
        String words = "Hauled out and chocked, neverInSlingsWhichIsOneVeryLongWordIndeed at any time";
        List<String> lines = Wrap.lines(words, 40, 2.5);
        lines.forEach(line -> assertTrue(LetterWidths.extent(line, 2.5) <= 40, line));
        assertEquals(words.replace(" ", ""), String.join("", lines).replace(" ", ""));
    }

    @Test
    void exact_dimensionLetteringReadsFromBelowOrRight() {
        for (double turn = 0; turn < 360; turn += 15) {
            Point from = new Point(100, 100);
            Point to = from.towards(turn, 50);
            double reading = new LinearDimension(Direction.ALIGNED, from, to, from.towards(turn + 90, 10), "50", 3.5)
                    .lettering().rotationDeg();
            assertTrue(reading > -90 + 1e-9 || Math.abs(reading - 90) < 1e-9, turn + " reads at " + reading);
            assertTrue(reading <= 90 + 1e-9);
        }
    }

    @Test
    void exact_lettersThatDoNotFitStandOutside() {
        LinearDimension narrow = new LinearDimension(Direction.HORIZONTAL, new Point(0, 0), new Point(4, 0),
                new Point(0, 10), "400 (1'-3 3/4\")", 3.5);
        assertTrue(narrow.lettering().bounds().left() >= 4);
        LinearDimension wide = new LinearDimension(Direction.HORIZONTAL, new Point(0, 0), new Point(90, 0),
                new Point(0, 10), "90", 3.5);
        assertEquals(45, wide.lettering().bounds().centre().x(), 1e-9);
    }

    @Test
    void badInput_dimensionThatSaysOtherThanItMeasures() {
        LinearDimension wrong = new LinearDimension(Direction.HORIZONTAL, new Point(0, 0), new Point(40, 0),
                new Point(0, 10), "410", 3.5);
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> new Sheet("S", "", 297, 210,
                new Scale(10), 3.5, List.of(View.around("V", List.of(wrong))), List.of()));
        assertEquals("dimension says \"410\" but measures 400.0", refusal.getMessage());
    }

    @Test
    void exact_tableIsAsDeepAsItsLines() {
        Table table = Table.wrapped(new Point(10, 100), List.of(20.0, 30.0),
                List.of(List.of("A", "B"), List.of("1", "two lines of words here")), 2.5);
        int lines = Wrap.lines("two lines of words here", 30 - 2.5, 2.5).size();
        assertTrue(lines > 1);
        assertEquals((1.6 + 0.6) * 2.5 + (1.6 * lines + 0.6) * 2.5, table.bounds().height(), 1e-9);
        Flattened flattened = Flattened.of(View.around("T", List.of(table)));
        flattened.texts().forEach(text -> assertTrue(table.bounds().contains(text.bounds()), text.words()));
    }
}
