package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ProgressBarsTest {
    private final ByteArrayOutputStream seen = new ByteArrayOutputStream();
    private final PrintStream terminal = new PrintStream(seen, true, StandardCharsets.UTF_8);

    private String seen() {
        return seen.toString(StandardCharsets.UTF_8);
    }

    @Test
    void whatIsSoonDoneShowsNothing() {
        try (ProgressBars bars = new ProgressBars(terminal)) {
            bars.stage("drawing the hull");
        }
        assertEquals("", seen());
    }

    @Test
    void longWorkShowsWhatItIsAtInOneLine() throws InterruptedException {
        try (ProgressBars bars = new ProgressBars(terminal)) {
            bars.stage("drawing the hull");
            bars.stage("searching the bottom");
            Thread.sleep(1500);
        }
        assertTrue(seen().contains("searching the bottom"), seen());
        assertFalse(seen().contains("\n"), seen());
    }

    @Test
    void resultsStandInLinesOfTheirOwn() throws InterruptedException {
        try (ProgressBars bars = new ProgressBars(terminal)) {
            bars.done(1, 200);
            Thread.sleep(1500);
            bars.aside(() -> terminal.println("a: site"));
            bars.done(2, 200);
        }
        assertTrue(seen().contains("1/200"), seen());
        assertTrue(seen().contains("\r" + " ".repeat(79) + "\ra: site\n"), seen());
    }

    /** Nobody watches a file. */
    @Test
    void aTestIsNoTerminal() {
        assertFalse(ProgressBars.areWanted());
    }
}
