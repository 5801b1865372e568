package org.garboard.craft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

class CraftTest {
    private static final Drive OUTBOARD = new Drive(Drive.Kind.OUTBOARD, 1, Optional.of(Drive.Hand.RIGHT), Optional.empty(), Optional.empty());

    @Test
    void aToldLineOfThrustGoesBeforeTheUsualOne() {
        ThrustLine told = new ThrustLine(-0.3, Angle.ofDegrees(4));
        assertEquals(told, new Drive(Drive.Kind.SHAFT, 2, Optional.empty(), Optional.empty(), Optional.of(told)).thrust());
        assertEquals(Drive.Kind.OUTBOARD.usualThrust(), OUTBOARD.thrust());
    }

    @Test
    void onlyAShaftPushesUpwardUnlessTold() {
        for (Drive.Kind kind : Drive.Kind.values()) {
            assertEquals(kind == Drive.Kind.SHAFT, kind.usualThrust().inclination().radians() > 0, kind.words());
        }
    }

    @Test
    void valuesThatNoBoatHasAreRefused() {
        assertEquals("a craft without speeds; at least one is needed", refusal(() ->
            new Craft(OUTBOARD, Optional.empty(), List.of(), HomeWater.SEA, TrimBand.USUAL, List.of())));
        assertEquals("speed \"cruise\" is 0.0 knots; it must be more than 0", refusal(() ->
            new RunningSpeed("cruise", 0, Optional.empty())));
        assertEquals("a boat of 2000.0 kg light and 1900.0 kg full; the first must be more than 0, the second not less than the first",
            refusal(() -> new Weights(2000, 1900, FeaturePlace.Datum.AFT_OF_ORIGIN, 5, 0.7)));
        assertEquals("a sea trial at 20.0 knots with trim Optional.empty and wetted keel Optional.empty; the speed must be more than 0,"
            + " and one of the others told", refusal(() -> new SeaTrial(20, Optional.empty(), Optional.empty())));
        assertEquals("0 engines; 1 is the least", refusal(() ->
            new Drive(Drive.Kind.JET, 0, Optional.empty(), Optional.empty(), Optional.empty())));
    }

    private static String refusal(org.junit.jupiter.api.function.Executable call) {
        return assertThrows(IllegalArgumentException.class, call).getMessage();
    }
}
