package org.garboard.findingsfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import org.garboard.nonsense.OneInput;

/** Any bytes are findings, or faulty with at least one message that is one line. */
public class FindingsFuzzTest {

    @FuzzTest
    void reads(byte[] content) {
        holds(content);
    }

    /** Classes are loaded before anything is timed. */
    public static void fuzzerInitialize() {
        holds("No,Station,Girth,Side,Finding\n1,3,1-2-0,port,Crack\n".getBytes(StandardCharsets.UTF_8));
    }

    /** For a run without JUnit, of as many inputs as one likes. */
    public static void fuzzerTestOneInput(byte[] content) {
        OneInput.read(() -> holds(content));
    }

    private static void holds(byte[] content) {
        if (FindingsFile.read("any.csv", content) instanceof FindingsReading.Faulty faulty) {
            assertFalse(faulty.faults().isEmpty());
            for (FindingsFault fault : faulty.faults()) {
                assertEquals(1, fault.message().lines().count(), fault.message());
            }
        }
    }
}
