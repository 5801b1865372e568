package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProbeCommandTest {
    private static final String HEADING = "x_m,y_m,z_m,deadrise_deg,buttock_slope_deg,girth_m,k1_per_m,k2_per_m,nx,ny,nz\r\n";

    @TempDir
    private Path folder;
    private Path wedge;

    @BeforeEach
    void copyWedge() {
        wedge = Shell.copy("/cli/wedge.csv", folder);
    }

    /** Slope 1 in 5: z = y/5, deadrise atan(0.2), girth y sqrt(1.04), normal (0, 0.2, -1)/sqrt(1.04). */
    @Test
    void exact_wedge() {
        Shell shell = Shell.run("probe", wedge, "--at", "3,0.5", "3,-0.5");
        assertEquals(HEADING
            + row(3, 0.5) + row(3, -0.5), shell.out());
        assertEquals("", shell.err());
        assertEquals(0, shell.code());
    }

    private static String row(double x, double y) {
        double root = Math.sqrt(1.04);
        return String.format(Locale.ROOT, "%.6f,%.6f,%.6f,%.5f,%.5f,%.6f,%.6f,%.6f,%.9f,%.9f,%.9f\r\n", x, y, Math.abs(y) / 5,
            Math.toDegrees(Math.atan(0.2)), 0.0, Math.abs(y) * root, 0.0, 0.0, 0.0, Math.signum(y) * 0.2 / root, -1 / root);
    }

    @Test
    void aPlaceOffTheSkinGetsEmptyFieldsAMessageAndThree() {
        Shell shell = Shell.run("probe", wedge, "--at", "9,0.5", "3,0.5", "3,1.5");
        assertEquals("9.000000,0.500000,,,,,,,,,", shell.outLines().get(1));
        assertEquals("3.000000,1.500000,,,,,,,,,", shell.outLines().get(3));
        assertEquals("x 9.000 m, y 0.500 m is off the skin, which runs from x = 0.000 m to 8.000 m\n"
            + "x 3.000 m, y 1.500 m is off the skin, which runs from x = 0.000 m to 8.000 m and there reaches 1.100 m from the centreline\n",
            shell.err());
        assertEquals(3, shell.code());
    }

    @Test
    void readsPlacesFromAFile() throws Exception {
        Path points = folder.resolve("points.csv");
        Files.writeString(points, "name,y_m,x_m\r\n\"port, aft\",-0.5,3\r\n\r\nb,0.5,3\r\n", StandardCharsets.UTF_8);
        assertEquals(HEADING + row(3, -0.5) + row(3, 0.5), Shell.run("probe", wedge, "--points", points).out());
    }

    @Test
    void tellsEveryFaultOfAFileOfPlaces() throws Exception {
        Path points = folder.resolve("points.csv");
        Files.writeString(points, "x_m,y_m\n1,two\n\n3\n,4\n", StandardCharsets.UTF_8);
        Shell shell = Shell.run("probe", wedge, "--points", points);
        assertEquals(points + ":2: column 2, y_m: \"two\" is not a number; write metres with a decimal point, such as 5.2\n"
            + points + ":4: column 2, y_m: nothing stands there; write metres with a decimal point, such as 5.2\n"
            + points + ":5: column 1, x_m: nothing stands there; write metres with a decimal point, such as 5.2\n", shell.err());
        assertEquals("", shell.out());
        assertEquals(3, shell.code());
    }

    @Test
    void wantsTheHeadingOfAFileOfPlaces() throws Exception {
        Path points = folder.resolve("points.csv");
        Files.writeString(points, "x;y\n1;2\n", StandardCharsets.UTF_8);
        assertEquals(points + ":1: the heading is \"x;y\"; the columns x_m and y_m are expected, parted by a comma: x_m,y_m\n",
            Shell.run("probe", wedge, "--points", points).err());
        Files.writeString(points, "", StandardCharsets.UTF_8);
        assertEquals(points + ": the file is empty; the heading x_m,y_m and a row for each place are expected\n",
            Shell.run("probe", wedge, "--points", points).err());
        Files.writeString(points, "x_m,y_m\n\"1,2\n", StandardCharsets.UTF_8);
        assertEquals(3, Shell.run("probe", wedge, "--points", points).code());
    }

    /** Decimal commas would make two places of one number. */
    @Test
    void dropsNoCellOfAFileOfPlaces() throws Exception {
        Path points = folder.resolve("points.csv");
        Files.writeString(points, "x_m,y_m\n5,2,0,3\n3,0.5,\n1e999,0\n", StandardCharsets.UTF_8);
        Shell shell = Shell.run("probe", wedge, "--points", points);
        assertEquals(points + ":2: column 3: \"0\" stands beyond the last heading; write decimals with a point, and head every column\n"
            + points + ":4: column 1, x_m: \"1e999\" is no place on a boat; write metres, such as 5.2\n", shell.err());
        assertEquals(3, shell.code());
    }

    @Test
    void wantsTextInAFileOfPlaces() throws Exception {
        Path points = folder.resolve("points.csv");
        for (byte[] bytes : List.of(new byte[] {'x', '_', 'm', 0, '\n'}, new byte[] {'x', (byte) 0xE4, '\n'})) {
            Files.write(points, bytes);
            assertEquals(new Shell(3, "", points + ": the file is not text in UTF-8; save it as CSV in UTF-8\n"),
                Shell.run("probe", wedge, "--points", points));
        }
    }

    @Test
    void readsPlacesInOtherUnits() {
        assertEquals(HEADING + row(3, 0.5), Shell.run("probe", wedge, "--at", "3000mm,50cm").out());
    }

    @Test
    void refusesPlacesThatCanBeReadTwoWays() {
        Shell shell = Shell.run("probe", wedge, "--at", "3,0,5");
        assertEquals("garboard probe: Invalid value for option '--at' at index 0 (X,Y): \"3,0,5\" is not a place; "
            + "write X,Y in metres with decimal points, such as 5.2,-0.3\nTry 'garboard probe --help'.\n", shell.err());
        assertEquals(2, shell.code());
    }
}
