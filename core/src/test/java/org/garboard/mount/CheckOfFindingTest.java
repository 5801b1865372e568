package org.garboard.mount;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.garboard.finding.Bound;
import org.garboard.finding.Figure;
import org.garboard.finding.Finding;
import org.garboard.finding.NotKnown;
import org.garboard.finding.Ruling;
import org.junit.jupiter.api.Test;

class CheckOfFindingTest {
    private static final Bound BOUND = new Bound(6, "dB", "a book");

    @Test
    void exact_aFigureAtMost() {
        Check check = Check.of(Figure.atMost("loss", 7.5, BOUND, "good", "bad"));
        assertEquals(new Check("loss", Check.Sense.AT_MOST, 7.5, 6, "dB", 1.25, Verdict.NOT_MET, "a book", "bad"), check);
        assertEquals(Verdict.MET, Check.of(Figure.atMost("loss", 6, BOUND, "good", "bad")).verdict());
    }

    @Test
    void exact_aFigureAtLeast() {
        Check check = Check.of(Figure.atLeast("room", 12, BOUND, "good", "bad"));
        assertEquals(new Check("room", Check.Sense.AT_LEAST, 12, 6, "dB", 0.5, Verdict.MET, "a book", "good"), check);
        Check none = Check.of(Figure.atLeast("room", 0, BOUND, "good", "bad"));
        assertEquals(Double.POSITIVE_INFINITY, none.utilisation());
        assertEquals(Verdict.NOT_MET, none.verdict());
        Check free = Check.of(Figure.atLeast("room", Double.POSITIVE_INFINITY, BOUND, "good", "bad"));
        assertTrue(Double.isNaN(free.demand()));
        assertEquals(0, free.utilisation());
        assertEquals(Verdict.MET, free.verdict());
    }

    @Test
    void exact_yesNoAndNotKnown() {
        Check yes = Check.of(Ruling.allowed("housing", "practice", "may"));
        assertEquals(new Check("housing", Check.Sense.YES_NO, Double.NaN, Double.NaN, "", 0, Verdict.MET, "practice", "may"), yes);
        assertEquals(Double.POSITIVE_INFINITY, Check.of(Ruling.refused("housing", "practice", "may not")).utilisation());
        Check open = Check.of(new NotKnown("housing", "practice", "look"));
        assertEquals(new Check("housing", Check.Sense.KNOWN_ONLY, Double.NaN, Double.NaN, "", Double.NaN, Verdict.NOT_KNOWN, "practice", "look"), open);
    }

    @Test
    void refusesWhatIsNoAnswer() {
        assertThrows(IllegalArgumentException.class, () -> Figure.atMost("loss", Double.NaN, BOUND, "", ""));
        assertThrows(IllegalArgumentException.class, () -> new Ruling("a", Finding.Answer.NOT_KNOWN, "", ""));
        assertThrows(IllegalArgumentException.class, () -> new Bound(0, "mm", ""));
        assertEquals("from the job; the program's own would be 6.0 dB", BOUND.with(8).source());
    }
}
