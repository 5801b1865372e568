package org.garboard.flow.steps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.garboard.flow.steps.StepWake.After;
import org.garboard.flow.steps.StepWake.Place;
import org.garboard.flow.steps.StepWake.Unknown;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StepWakeTest {

    private static double meets(StepWake wake, Place place, double step, double rise) {
        return assertInstanceOf(After.class, wake.meets(place, step, rise)).beams();
    }

    /** Independent computation: deadrise 10, trim 4, two beams wetted, a step of 0.04 beams. */
    @ParameterizedTest
    @CsvSource({"4, CENTRELINE, .8532", "4, QUARTER_BEAM, 1.1749", "6, CENTRELINE, 1.1180", "6, QUARTER_BEAM, 1.5395"})
    void independent_reattachment(double speed, Place place, double beams) {
        assertEquals(beams, meets(new StepWake(speed, 4, 10, 2), place, .04, 0), 6e-5);
    }

    /** Faster, higher, less wet ahead, or a bottom that rises aft: the water comes back later. */
    @Test
    void law_order() {
        double base = meets(new StepWake(5, 4, 15, 1.5), Place.CENTRELINE, .03, 0);
        assertTrue(meets(new StepWake(6, 4, 15, 1.5), Place.CENTRELINE, .03, 0) > base);
        assertTrue(meets(new StepWake(5, 4, 15, 1.5), Place.CENTRELINE, .04, 0) > base);
        assertTrue(meets(new StepWake(5, 4, 15, 0), Place.CENTRELINE, .03, 0) > base);
        assertTrue(meets(new StepWake(5, 4, 15, 1.5), Place.CENTRELINE, .03, .02) > base);
    }

    @Test
    void outsideTheContoursThereIsNoNumber() {
        assertEquals("speed coefficient 3.90 is outside the contours' 4 to 8", reason(new StepWake(3.9, 4, 10, 2), .04));
        assertEquals("trim of the keel ahead 2.90 is outside the contours' 3 to 5 deg", reason(new StepWake(4, 2.9, 10, 2), .04));
        assertEquals("deadrise 31.00 is outside the contours' 10 to 30 deg", reason(new StepWake(4, 4, 31, 2), .04));
        assertEquals("the water does not meet the bottom again within 3 beams, as far as the contours reach", reason(new StepWake(8, 3, 10, 0), .4));
    }

    private static String reason(StepWake wake, double step) {
        return assertInstanceOf(Unknown.class, wake.meets(Place.CENTRELINE, step, 0)).reason();
    }
}
