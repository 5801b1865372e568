package org.garboard.lines;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class EvenStepsTest {
    private static final List<Vector3D> CORNER = List.of(Vector3D.of(0, 0, 0), Vector3D.of(3, 0, 0), Vector3D.of(3, 1, 0));

    @Test
    void exact_stepsRunRoundCorners() {
        assertEquals(List.of(Vector3D.of(0, 0, 0), Vector3D.of(1, 0, 0), Vector3D.of(2, 0, 0), Vector3D.of(3, 0, 0), Vector3D.of(3, 1, 0)),
            EvenSteps.along(CORNER, 1));
    }

    @Test
    void exact_stepsAreEvenAndNoLongerThanAsked() {
        assertEquals(List.of(Vector3D.of(0, 0, 0), Vector3D.of(2, 0, 0), Vector3D.of(3, 1, 0)), EvenSteps.along(CORNER, 3.9));
        assertEquals(List.of(Vector3D.of(0, 0, 0), Vector3D.of(3, 1, 0)), EvenSteps.along(CORNER, 100));
    }
}
