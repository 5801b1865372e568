package org.garboard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;

/** Any bytes are a job, or faulty with at least one message that is one line. */
public class JobFileFuzzTest {

    @FuzzTest
    void reads(byte[] bytes) {
        fuzzerTestOneInput(bytes);
    }

    /** Schema and binding are set up before anything is timed. */
    public static void fuzzerInitialize() {
        fuzzerTestOneInput(new byte[0]);
        fuzzerTestOneInput("<job xmlns=\"urn:garboard:job\" version=\"1\"/>".getBytes(StandardCharsets.UTF_8));
    }

    /** For a run without JUnit, of as many inputs as one likes. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        if (JobFile.read("any.xml", bytes, TablePlace.BELOW_JOB) instanceof JobReading.Faulty faulty) {
            assertFalse(faulty.faults().isEmpty());
            for (FileFault fault : faulty.faults()) {
                assertEquals(1, fault.message().lines().count(), fault.message());
            }
        }
    }
}
