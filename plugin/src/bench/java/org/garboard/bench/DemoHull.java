package org.garboard.bench;

import java.nio.file.Path;
import org.garboard.offsets.OffsetTable;
import org.garboard.tablefile.TableFile;
import org.garboard.tablefile.TableReading;

/** The table of a demo boat. */
final class DemoHull {

    private DemoHull() {
    }

    /** Read from the sources, so run from the top of the checkout or from {@code plugin}. */
    static OffsetTable table(String boat) {
        Path file = Path.of("src", "main", "demo", boat, "offsets.csv");
        Path fromTop = Path.of("plugin").resolve(file);
        TableReading reading = TableFile.read(fromTop.toFile().exists() ? fromTop : file);
        return ((TableReading.Read) reading).table();
    }
}
