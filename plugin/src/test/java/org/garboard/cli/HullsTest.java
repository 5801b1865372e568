package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.nio.file.Files;
import java.nio.file.Path;
import org.garboard.cli.files.TableSource;
import org.garboard.hull.Fit;
import org.garboard.hull.Hull;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HullsTest {
    @TempDir
    private Path folder;

    @Test
    void oneTableIsDrawnOnceForEachFitAndAgainWhereItChanged() throws Exception {
        Path file = Shell.copy("/cli/wedge.csv", folder);
        Hulls hulls = new Hulls();
        Hull first = hulls.of(TableSource.read(file, "wedge.csv"), Fit.EXACT);
        assertSame(first, hulls.of(TableSource.read(file, "another name"), Fit.EXACT));
        assertNotSame(first, hulls.of(TableSource.read(file, "wedge.csv"), Fit.WITHIN_ROUNDING));
        Files.writeString(file, Files.readString(file) + "\n");
        assertNotSame(first, hulls.of(TableSource.read(file, "wedge.csv"), Fit.EXACT));
    }
}
