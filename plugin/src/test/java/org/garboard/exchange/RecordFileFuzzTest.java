package org.garboard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import org.garboard.nonsense.OneInput;

/** Any bytes are a record, or faulty with at least one message that is one line. */
public class RecordFileFuzzTest {

    @FuzzTest
    void reads(byte[] bytes) {
        holds(bytes);
    }

    /** Schema and binding are set up before anything is timed. */
    public static void fuzzerInitialize() {
        holds(new byte[0]);
        holds("<record xmlns=\"urn:garboard:record\" version=\"1\"/>".getBytes(StandardCharsets.UTF_8));
    }

    /** For a run without JUnit, of as many inputs as one likes. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        OneInput.read(() -> holds(bytes));
    }

    private static void holds(byte[] bytes) {
        if (RecordFile.read("any.xml", bytes) instanceof RecordReading.Faulty faulty) {
            assertFalse(faulty.faults().isEmpty());
            for (FileFault fault : faulty.faults()) {
                assertEquals(1, fault.message().lines().count(), fault.message());
            }
        }
    }
}
