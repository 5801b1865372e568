package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A V bottom in closed form as it was measured with trim 1.4 deg bow up and heel 2.1 deg to port, to the millimetre:
 * deadrise 18 deg + 0.6 deg for each metre forward of x = 6, where x = 7 is the transom, and half-breadth of the
 * chine 1.2 m - 0.004 (x - 6)^2.
 */
class TakeOffCommandsTest {
    @TempDir
    private Path folder;
    private Path boat;

    @BeforeEach
    void copyBoat() {
        boat = Shell.copy("/cli/take-off.csv", folder);
    }

    @Test
    void exact_tableTellsTheStanceThatWasTakenOut() {
        Shell shell = Shell.run("table", boat);
        assertEquals(0, shell.code());
        assertEquals("AS BLOCKED WHEN MEASURED: trim 1.40 deg bow up, heel 2.10 deg to port. Both are taken out: angles here are to the skin and"
            + " to the boat's own level (that of the float marks, load waterline). Plumb bob and spirit level serve only after that"
            + " trim and heel are allowed for.", shell.outLines().get(3));
    }

    /** Three metres ahead of the transom, x = 4: deadrise 18 + 0.6 * 2. */
    @Test
    void exact_probeTellsTheSkinAndRefusesWhatWasNotMeasured() {
        Shell shell = Shell.run("probe", boat, "--at", "-3,0.4", "0.5,0.1");
        String[] row = shell.outLines().get(1).split(",");
        double tan = Math.tan(Math.toRadians(19.2));
        assertEquals(0.004 + 0.4 * tan, Double.parseDouble(row[2]), 1.5e-3);
        assertEquals(19.2, Double.parseDouble(row[3]), 0.15);
        assertEquals("0.500000,0.100000,,,,,,,,,", shell.outLines().get(2));
        assertEquals("x 0.500 m, y 0.100 m is not measured there: it is off the skin, which runs from x = -5.500 m to -0.069 m\n", shell.err());
        assertEquals(3, shell.code());
    }

    @Test
    void hydroRefusesWhereTheBoatGoesOn() throws IOException {
        Shell shell = Shell.run("hydro", boat, "--waterline", "0.3");
        assertEquals("waterline 0.300 m: the take-off does not cover the hull: forward of x = -5.500 m, where she is in the water, nothing was"
            + " measured; if she ends there, say so in a row Covers, with \"to the stem\" in its next cell\n", shell.err());
        assertEquals(4, shell.code());
        Files.writeString(boat, Files.readString(boat).replace("Covers,to the transom", "Covers,to the transom,to the stem"));
        Shell covered = Shell.run("hydro", boat, "--waterline", "0.3", "1.2");
        assertTrue(covered.err().startsWith("waterline 1.200 m: the water comes over the edge of what was measured, where the skin ends"), covered.err());
        assertTrue(covered.outLines().stream().anyMatch(line -> line.startsWith("volume of displacement")));
    }

    @Test
    void worksheetIsWrittenAndReplacedButNoStranger() throws IOException {
        Path sheet = folder.resolve("sheet.pdf");
        assertEquals(0, Shell.run("table", "--worksheet", sheet).code());
        assertTrue(new String(Files.readAllBytes(sheet), 0, 5, StandardCharsets.US_ASCII).startsWith("%PDF-"));
        assertEquals(0, Shell.run("table", "--worksheet", sheet).code());
        Files.writeString(sheet, "%PDF-1.4 somebody's");
        Shell stranger = Shell.run("table", "--worksheet", sheet);
        assertEquals(2, stranger.code());
        assertEquals("%PDF-1.4 somebody's", Files.readString(sheet));
        assertTrue(Shell.run("table", boat, "--worksheet", sheet).err().contains("--worksheet is blank and takes no table; give it alone"));
        assertTrue(Shell.run("table", "--worksheet", "x.txt").err().contains("--worksheet is \"x.txt\"; the name must end in .pdf"));
    }
}
