package org.garboard.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.garboard.hull.Hull;
import org.garboard.offsets.OffsetTable;
import org.garboard.tablefile.TableFile;
import org.garboard.tablefile.TableReading;

/** Hulls from tables at hand, through every point unless faired. */
final class SampleHull {

    private SampleHull() {
    }

    /** Straight sections of slope 1 in 5 over 8 m. */
    static Hull wedge() {
        try (InputStream in = SampleHull.class.getResourceAsStream("/cli/wedge.csv")) {
            return Hull.through(table(in.readAllBytes()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Path demoTable(String boat) {
        return Path.of("src/main/demo").resolve(boat).resolve("offsets.csv");
    }

    static Hull demo(String boat) {
        return Hull.through(table(boat));
    }

    static Hull fairedDemo(String boat) {
        return Hull.faired(table(boat));
    }

    private static OffsetTable table(String boat) {
        try {
            return table(Files.readAllBytes(demoTable(boat)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static OffsetTable table(byte[] file) {
        return ((TableReading.Read) TableFile.read("offsets.csv", file)).table();
    }
}
