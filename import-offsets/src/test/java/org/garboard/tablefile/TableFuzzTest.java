package org.garboard.tablefile;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import org.garboard.nonsense.OneInput;

/** The reader of tables and take-offs under nonsense, begun from a table. */
public class TableFuzzTest {

    @FuzzTest
    void reads(byte[] content) {
        AnyBytes.read("any.csv", content);
    }

    /** Classes are loaded before anything is timed. */
    public static void fuzzerInitialize() {
        AnyBytes.read("any.csv", "TABLE OF OFFSETS\nStation,0,1\nTAKE-OFF\n".getBytes(StandardCharsets.UTF_8));
    }

    /** For a run without JUnit, of as many inputs as one likes. */
    public static void fuzzerTestOneInput(byte[] content) {
        OneInput.read(() -> AnyBytes.read("any.csv", content));
    }
}
