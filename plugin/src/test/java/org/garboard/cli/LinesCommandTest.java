package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LinesCommandTest {
    private static final String HEADING = "curve,branch,position_m,angle_deg,x_m,y_m,z_m";

    @TempDir
    private Path folder;
    private Path wedge;

    @BeforeEach
    void copyWedge() {
        wedge = Shell.copy("/cli/wedge.csv", folder);
    }

    /** From (0, 0) to the chine (1, 0.2), then to the sheer (1.1, 1.2). */
    @Test
    void exact_sectionOfAWedge() {
        Shell shell = Shell.run("lines", wedge, "--section", "3", "--step", "0.6");
        assertEquals(List.of(HEADING,
            "section,1,3.000000,,3.000000,0.000000,0.000000",
            "section,1,3.000000,,3.000000,0.500000,0.100000",
            "section,1,3.000000,,3.000000,1.000000,0.200000",
            "section,2,3.000000,,3.000000,1.000000,0.200000",
            "section,2,3.000000,,3.000000,1.050000,0.700000",
            "section,2,3.000000,,3.000000,1.100000,1.200000"), shell.outLines());
        assertEquals(0, shell.code());
    }

    @Test
    void exact_buttockAndWaterlineOfAWedge() {
        Shell shell = Shell.run("lines", wedge, "--waterline", "0.1", "--buttock", "0.5", "--step", "5");
        assertEquals(List.of(HEADING,
            "buttock,1,0.500000,,0.000000,0.500000,0.100000",
            "buttock,1,0.500000,,4.000000,0.500000,0.100000",
            "buttock,1,0.500000,,8.000000,0.500000,0.100000",
            "waterline,1,0.100000,,0.000000,0.500000,0.100000",
            "waterline,1,0.100000,,4.000000,0.500000,0.100000",
            "waterline,1,0.100000,,8.000000,0.500000,0.100000"), shell.outLines());
    }

    @Test
    void law_aButtockToPortMirrorsTheOneToStarboard() {
        String starboard = Shell.run("lines", wedge, "--buttock", "0.4").out();
        String port = Shell.run("lines", wedge, "--buttock", "-0.4").out();
        assertEquals(starboard, port.replace(",-0.400000,", ",0.400000,"));
    }

    @Test
    void takesSeveralPositionsBeforeTheTable() {
        Shell shell = Shell.run("lines", "--section", "1", "2", wedge);
        assertEquals(List.of("1.000000", "2.000000"),
            shell.outLines().stream().skip(1).map(row -> row.split(",")[2]).distinct().toList());
    }

    @Test
    void tellsACurveThatMissesTheHull() {
        Shell shell = Shell.run("lines", wedge, "--section", "9", "--waterline", "1.3");
        assertEquals(List.of(HEADING), shell.outLines());
        assertEquals("the section at 9.000000 m misses the hull of " + wedge + "\nthe waterline at 1.300000 m misses the hull of " + wedge + "\n",
            shell.err());
        assertEquals(3, shell.code());
    }

    @Test
    void wantsACurveAndASensibleStep() {
        assertEquals("garboard lines: no curve is asked for; give --section, --buttock, --waterline, --diagonal or --expanded,"
            + " --out for a drawing, or --surface for the whole\n"
            + "Try 'garboard lines --help'.\n", Shell.run("lines", wedge).err());
        assertEquals("garboard lines: --step is 0.000000 m; it must be at least 0.0001 m\nTry 'garboard lines --help'.\n",
            Shell.run("lines", wedge, "--section", "1", "--step", "0").err());
        assertEquals(2, Shell.run("lines", wedge, "--section", "1,5").code());
    }
}
