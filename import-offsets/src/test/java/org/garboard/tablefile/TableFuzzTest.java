package org.garboard.tablefile;

import com.code_intelligence.jazzer.junit.FuzzTest;

/** The reader of tables and take-offs under nonsense, begun from a table. */
public class TableFuzzTest {

    @FuzzTest
    void reads(byte[] content) {
        AnyBytes.read("any.csv", content);
    }

    /** For a run without JUnit, of as many inputs as one likes. */
    public static void fuzzerTestOneInput(byte[] content) {
        AnyBytes.read("any.csv", content);
    }
}
