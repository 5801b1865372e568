package org.garboard.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.junit.jupiter.api.Test;

class ClearPlaceTest {
    private static final List<Entity> FIRST = List.of(new Line(Layer.HULL, new Point(0, 0), new Point(10, 0)));
    private static final List<Entity> SECOND = List.of(new Line(Layer.HULL, new Point(0, 5), new Point(10, 5)));

    @Test
    void onAnEmptyViewTheFirstPlaceIsClear() {
        assertEquals(Optional.of(FIRST), ClearPlace.clearAmong(List.of(FIRST, SECOND), List.of()));
        assertEquals(FIRST, ClearPlace.among(List.of(FIRST, SECOND), List.of()));
    }
}
