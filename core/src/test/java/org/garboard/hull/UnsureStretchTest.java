package org.garboard.hull;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.garboard.offsets.LineKind;
import org.junit.jupiter.api.Test;

/** A box keel that fades too fast for its stations is drawn inside out between them; that is said, and where. */
class UnsureStretchTest {
    private static final double[] STATIONS = {0, 1, 2, 3, 4, 5, 6, 7};

    private static Hull hull(DoubleUnaryOperator keel, DoubleUnaryOperator siding) {
        return Hull.through(new Forms(0, STATIONS).keel(keel).halfSiding(siding)
            .named(LineKind.KEEL_TOP, "Top of keel", siding, x -> 0.3)
            .named(LineKind.CHINE, "Chine", x -> 1.1, x -> 0.5)
            .named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 1.5).table());
    }

    @Test
    void law_aKeelOfOneDepthIsSure() {
        assertEquals(List.of(), UnsureStretch.of(hull(x -> 0, x -> 0.1)));
    }

    /**
     * Deep as 0.3 up to x = 3 and nothing from 4 on: the cubic through the stations overshoots abaft of 4, by turns. Its
     * first overshoot is the largest, and stands between 4 and 5.
     */
    @Test
    void law_aKeelThatEndsAtOnceIsUnsureBehind() {
        List<UnsureStretch> stretches = UnsureStretch.of(hull(x -> x < 3.5 ? 0 : 0.3, x -> 0.1));
        assertTrue(stretches.stream().anyMatch(stretch -> stretch.covers(4.4)), stretches.toString());
        assertTrue(stretches.stream().noneMatch(stretch -> stretch.covers(3.5) || stretch.covers(2)), stretches.toString());
        double most = stretches.stream().mapToDouble(UnsureStretch::by).max().orElseThrow();
        assertTrue(most > 0.01 && most < 0.06, "by " + most);
        assertTrue(stretches.get(0).words().startsWith("THE KEEL IS UNSURE from x = "), stretches.get(0).words());
    }

    @Test
    void law_aHalfBreadthThatSwingsPastTheCentrelineIsUnsure() {
        List<UnsureStretch> stretches = UnsureStretch.of(hull(x -> 0, x -> x < 3.5 ? 0.3 : 0));
        assertTrue(stretches.stream().anyMatch(stretch -> stretch.what().equals("Half-siding is drawn past the centreline") && stretch.covers(4.4)),
            stretches.toString());
    }
}
