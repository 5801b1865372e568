package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TableCommandTest {
    @TempDir
    private Path folder;
    private Path wedge;

    @BeforeEach
    void copyWedge() {
        wedge = Shell.copy("/cli/wedge.csv", folder);
    }

    /** Girth sqrt(1.04) + sqrt(1.01) = 2.024791 m; chord deadrise atan(0.2) = 11.30993 deg. */
    @Test
    void exact_stationsOfAWedge() {
        Shell shell = Shell.run("table", wedge, "--csv");
        assertEquals(List.of("station,x_m,points,girth_m,chord_deadrise_deg",
            "0,0.000000,5,2.024791,11.30993",
            "1,2.000000,5,2.024791,11.30993",
            "2,4.000000,5,2.024791,11.30993",
            "3,6.000000,5,2.024791,11.30993",
            "4,8.000000,5,2.024791,11.30993"), shell.outLines());
        assertEquals(0, shell.code());
    }

    @Test
    void printsLinesPanelsAndStationsForPeople() {
        Shell shell = Shell.run("table", wedge);
        assertEquals("""
            Wedge
            to the outside of the skin; least count 1.000 mm
            5 stations, from x = 0.000 m to 8.000 m aft of station 0
            not used: Note, made up for tests: straight sections of slope 1 in 5, the same at every station

            line         kind       gives          at [m]  stations
            Sheer        sheer      heights                       5
            Chine        chine      heights                       5
            Buttock 500  buttock    heights         0.500         5
            Keel         keel       heights                       5
            Sheer        sheer      half-breadths                 5
            Chine        chine      half-breadths                 5
            WL 700       waterline  half-breadths   0.700         5

            Panels of the skin, from the keel outward:
              1  Keel to Chine
              2  Chine to Sheer

            station  x [m]  points  girth keel to sheer [m]  chord deadrise keel to chine [deg]
            0        0.000       5                    2.025                               11.31
            1        2.000       5                    2.025                               11.31
            2        4.000       5                    2.025                               11.31
            3        6.000       5                    2.025                               11.31
            4        8.000       5                    2.025                               11.31

            Girths from the keel line along the skin:
            station  x [m]  to Chine [m]  to Sheer [m]
            0        0.000         1.020         2.025
            1        2.000         1.020         2.025
            2        4.000         1.020         2.025
            3        6.000         1.020         2.025
            4        8.000         1.020         2.025

            No row turns from bending one way to bending the other, but for its rounding.

            no likely slip found
            """, shell.out());
    }

    /** At station 2 the sheer stands 30 mm high. */
    @Test
    void tellsWhereARowTurns() throws Exception {
        Files.writeString(wedge, Files.readString(wedge).replace("Sheer,1200,1200,1200,", "Sheer,1200,1200,1230,"));
        assertTrue(Shell.run("table", wedge).out().contains("""
            Rows that turn from bending one way to bending the other, by more than their rounding explains:
            line   gives    turns  between stations
            Sheer  heights      2  1 and 2, 2 and 3
            """));
    }

    /** A likely slip is no fault: the table is printed as it stands, and the exit code is 0. */
    @Test
    void tellsLikelySlips() throws Exception {
        Files.writeString(wedge, Files.readString(wedge).replace("Sheer,1200,1200,1200,", "Sheer,1200,1200,12000,"));
        String slip = "likely slip: " + wedge + ":7, station 2, Sheer: column 4: height \"12000\" does not go with the cells"
            + " around it; 1200 would, with the point moved";
        Shell shell = Shell.run("table", wedge);
        assertEquals(slip, shell.outLines().get(shell.outLines().size() - 1));
        assertEquals(0, shell.code());
        Shell csv = Shell.run("table", wedge, "--csv");
        assertEquals(slip + "\n", csv.err());
        assertEquals(6, csv.outLines().size());
    }

    /** Here the slip makes the table faulty; it is told behind the faults. */
    @Test
    void tellsTheSlipBehindFaults() throws Exception {
        Files.writeString(wedge, Files.readString(wedge).replace("Sheer,1200,1200,1200,", "Sheer,1200,1200,120,"));
        Shell shell = Shell.run("table", wedge);
        List<String> messages = shell.err().lines().toList();
        assertEquals("likely slip: " + wedge + ":7, station 2, Sheer: column 4: height \"120\" does not go with the cells"
            + " around it; 1200 would, with the point moved", messages.get(messages.size() - 1));
        assertEquals(3, shell.code());
    }

    @Test
    void listsEveryFaultOfATable() throws Exception {
        String spoilt = Files.readString(wedge).replace("Keel,0,0", "Keel,x,0").replace("Chine,200,200", "Chine,200,2oo");
        Files.writeString(wedge, spoilt, StandardCharsets.UTF_8);
        Shell shell = Shell.run("table", wedge);
        List<String> faults = shell.err().lines().toList();
        assertEquals(2, faults.size(), shell.err());
        assertEquals(wedge + ":8, station 1, Chine: column 3: ", faults.get(0).substring(0, faults.get(0).indexOf("height")));
        assertEquals(wedge + ":10, station 0, Keel: column 2: ", faults.get(1).substring(0, faults.get(1).indexOf("height")));
        assertEquals("", shell.out());
        assertEquals(3, shell.code());
    }
}
