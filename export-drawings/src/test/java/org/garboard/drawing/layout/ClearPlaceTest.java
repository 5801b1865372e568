package org.garboard.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.LinearDimension;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;
import org.junit.jupiter.api.Test;

class ClearPlaceTest {

    private static LinearDimension height(double at) {
        return new LinearDimension(LinearDimension.Direction.VERTICAL, new Point(0, 0), new Point(0, 20), new Point(at, 0),
                "20", 3.5);
    }

    private static double chosen(List<Double> places, Entity... drawn) {
        List<Entity> chosen = ClearPlace.among(places.stream().map(at -> List.<Entity>of(height(at))).toList(), List.of(drawn));
        return ((LinearDimension) chosen.get(0)).through().x();
    }

    /** A skin that rises 1 : 1 from (10, 0) runs through the middle of a figure 20 off, not through one 40 off. */
    @Test
    void exact_firstPlaceClearOfLines() {
        Entity skin = new Line(Layer.HULL, new Point(10, 0), new Point(60, 50));
        assertEquals(40, chosen(List.of(22.0, 40.0, 60.0), skin));
        assertEquals(22, chosen(List.of(22.0, 40.0), new Line(Layer.HULL, new Point(0, -30), new Point(60, -30))));
    }

    /** Nor do the new lines run through words drawn before. */
    @Test
    void exact_olderWordsStayClear() {
        assertEquals(60, chosen(List.of(40.0, 60.0), Text.level(Layer.TEXT, "words", new Point(40, 5), 3.5, Anchor.MIDDLE)));
    }

    @Test
    void exact_firstOfAllWhereNoneIsClear() {
        Entity through = new Line(Layer.HULL, new Point(0, 10), new Point(100, 10));
        assertEquals(22, chosen(List.of(22.0, 40.0, 60.0), through));
    }
}
