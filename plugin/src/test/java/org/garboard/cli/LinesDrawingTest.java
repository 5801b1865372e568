package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code garboard lines TABLE --out FILE} and {@code --comb LINE}, diagonals and expanded sections. */
class LinesDrawingTest {
    private static final String HEADING = "curve,branch,position_m,angle_deg,x_m,y_m,z_m";

    @TempDir
    private Path folder;
    private Path wedge;

    @BeforeEach
    void copyWedge() {
        wedge = Shell.copy("/cli/wedge.csv", folder);
    }

    /** From 0.7 down 45 degrees: y + z = 0.7 meets the bottom z = y / 5 at y = 0.7 / 1.2. */
    @Test
    void exact_diagonalOfAWedge() {
        Shell shell = Shell.run("lines", wedge, "--exact", "--diagonal", "0.6:45", "0.9:80", "--step", "8");
        assertEquals(List.of(HEADING,
            "diagonal,1,0.600000,45.00000,0.000000,0.500000,0.100000",
            "diagonal,1,0.600000,45.00000,8.000000,0.500000,0.100000"), shell.outLines().subList(0, 3));
        double y = 0.9 / (0.2 + Math.tan(Math.toRadians(80)));
        String[] steep = shell.outLines().get(3).split(",");
        assertEquals("80.00000", steep[3]);
        assertEquals(y, Double.parseDouble(steep[5]), 1e-6);
        assertEquals(y / 5, Double.parseDouble(steep[6]), 1e-6);
        assertEquals(0, shell.code());
    }

    /** Girth sqrt(1.04) to the chine, sqrt(1.01) more to the sheer. */
    @Test
    void exact_expandedSectionOfAWedge() {
        Shell shell = Shell.run("lines", wedge, "--exact", "--expanded", "3", "--step", "0.6");
        assertEquals(List.of(HEADING,
            "expanded,1,3.000000,,3.000000,0.000000,0.000000",
            "expanded,1,3.000000,,3.000000,0.509902,0.100000",
            "expanded,1,3.000000,,3.000000,1.019804,0.200000",
            "expanded,2,3.000000,,3.000000,1.019804,0.200000",
            "expanded,2,3.000000,,3.000000,1.522298,0.700000",
            "expanded,2,3.000000,,3.000000,2.024791,1.200000"), shell.outLines());
        assertEquals("the expanded at 9.000000 m misses the hull of " + wedge + "\n",
            Shell.run("lines", wedge, "--expanded", "9").err());
    }

    @Test
    void refusesWhatIsNoDiagonal() {
        String hint = "\nTry 'garboard lines --help'.\n";
        assertEquals("garboard lines: Invalid value for option '--diagonal' at index 0 (Z:DEG): \"0.6\" is not a diagonal; write Z:DEG, such as"
            + " 0.6:35 for one that starts on the centreline 0.6 m above base and runs 35 degrees below the horizontal" + hint,
            Shell.run("lines", wedge, "--diagonal", "0.6").err());
        assertEquals("garboard lines: Invalid value for option '--diagonal' at index 0 (Z:DEG): \"0.6:-10\" has an angle of -10 degrees; a diagonal"
            + " runs outward and down, more than 0 and less than 90 degrees below the horizontal" + hint,
            Shell.run("lines", wedge, "--diagonal", "0.6:-10").err());
        assertEquals("the diagonal at 9.000000 m, 35.00000 deg misses the hull of " + wedge + "\n",
            Shell.run("lines", wedge, "--diagonal", "9:35").err());
    }

    @Test
    void drawsInEitherFormatAndPrintsNothing() throws IOException {
        for (String name : List.of("a.svg", "b.DXF", "c.dxf")) {
            Path out = folder.resolve(name);
            assertEquals(new Shell(0, "", ""), Shell.run("lines", wedge, "--out", out, "--diagonal", "0.6:45"));
            assertTrue(Files.readString(out).contains(": Lines"));
            assertEquals(name.endsWith("svg"), Files.readString(out).startsWith("<?xml"));
        }
        assertArrayEquals(Files.readAllBytes(folder.resolve("b.DXF")), Files.readAllBytes(folder.resolve("c.dxf")));
    }

    @Test
    void positionsTakeThePlaceOfTheTables() throws IOException {
        Path out = folder.resolve("lines.svg");
        Shell.run("lines", wedge, "--out", out);
        assertTrue(Files.readString(out).contains(">WL 700<") && Files.readString(out).contains(">B 500<"));
        Shell.run("lines", wedge, "--out", out, "--waterline", "0.1", "--buttock", "-0.25", "--section", "1");
        String drawn = Files.readString(out);
        assertTrue(drawn.contains(">WL 100<") && drawn.contains(">B 250<") && drawn.contains(">x 1000<"), drawn);
        assertFalse(drawn.contains(">WL 700<") || drawn.contains(">B 500<"));
    }

    @Test
    void drawsTheCurvatureOfAnyLine() throws IOException {
        Path out = folder.resolve("comb.svg");
        for (String line : List.of("keel", "CHINE", " Sheer ", "buttock 0.5", "section 3", "waterline 0.1", "diagonal 0.6:45")) {
            assertEquals(new Shell(0, "", ""), Shell.run("lines", wedge, "--comb", line, "--out", out), line);
            assertTrue(Files.readString(out).contains("SCALE OF THE COMB"), line);
        }
    }

    @Test
    void saysWhichLinesThereAre() {
        String hint = "\nTry 'garboard lines --help'.\n";
        assertEquals(new Shell(2, "", "garboard lines: Invalid value for option '--comb': \"strake\" is no line of this hull; it has Keel,"
            + " Chine, Sheer; or write section X, buttock Y, waterline Z or diagonal Z:DEG, in quotes" + hint),
            Shell.run("lines", wedge, "--comb", "strake", "--out", folder.resolve("a.svg")));
        assertEquals(new Shell(3, "", "Section at x 9.000 m misses the hull of " + wedge + "\n"),
            Shell.run("lines", wedge, "--comb", "section 9", "--out", folder.resolve("a.svg")));
        assertEquals(new Shell(2, "", "garboard lines: --comb draws; name the file with --out, such as --out comb.svg" + hint),
            Shell.run("lines", wedge, "--comb", "keel"));
        assertEquals(2, Shell.run("lines", wedge, "--comb", "keel", "--section", "1", "--out", folder.resolve("a.svg")).code());
        assertEquals("garboard lines: --units, --paper and --projection are of a drawing; name its file with --out" + hint,
            Shell.run("lines", wedge, "--section", "1", "--paper", "A3").err());
        assertEquals("garboard lines: --step is of the points that are printed as CSV; give it without --out" + hint,
            Shell.run("lines", wedge, "--out", folder.resolve("a.svg"), "--step", "1").err());
        assertEquals(2, Shell.run("lines", wedge, "--expanded", "1", "--out", folder.resolve("a.svg")).code());
        assertEquals(2, Shell.run("lines", wedge, "--comb", "section", "--out", folder.resolve("a.svg")).code());
    }

    @Test
    void refusesFilesPapersAndUnitsItDoesNotKnow() throws IOException {
        String hint = "\nTry 'garboard lines --help'.\n";
        assertEquals("garboard lines: --out is lines.pdf; the name must end in .dxf or .svg, which says what is written" + hint,
            Shell.run("lines", wedge, "--out", "lines.pdf").err());
        assertEquals("garboard lines: --out is empty; name a file that ends in .dxf or .svg" + hint,
            Shell.run("lines", wedge, "--out", "").err());
        assertEquals("garboard lines: --paper is \"B4\"; choose one of A4, A3, A2, A1, ANSI-A, ANSI-B, ANSI-C, ANSI-D" + hint,
            Shell.run("lines", wedge, "--out", "a.svg", "--paper", "B4").err());
        assertEquals("garboard lines: --units is \"feet\"; choose one of millimetres, feet-inches-eighths" + hint,
            Shell.run("lines", wedge, "--out", "a.svg", "--units", "feet").err());
        assertEquals(new Shell(3, "", "the section at 99.000000 m misses the hull of " + wedge + "\n"),
            Shell.run("lines", wedge, "--section", "99", "--out", folder.resolve("a.svg")));
        Path stranger = Files.writeString(folder.resolve("mine.svg"), "<svg/>");
        assertEquals(new Shell(2, "", stranger + ": is there already and was not written by this command; nothing was written."
            + " Give another name, or move it away, or give --replace\n"), Shell.run("lines", wedge, "--out", stranger));
        assertEquals("<svg/>", Files.readString(stranger));
        assertEquals(0, Shell.run("lines", wedge, "--out", stranger, "--replace").code());
        assertTrue(Files.readString(stranger).length() > 1000);
        Path other = Files.createDirectory(folder.resolve("other.svg"));
        assertEquals(new Shell(2, "", other + ": this is a folder; name a file in it\n"), Shell.run("lines", wedge, "--out", other, "--replace"));
        Files.delete(other);
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(2, files.count());
        }
    }

    @Test
    void saysThatThePaperIsTooSmall() throws IOException {
        Path out = folder.resolve("a.svg");
        List<Object> arguments = new ArrayList<>(List.of("lines", wedge, "--out", out, "--paper", "A4", "--waterline"));
        IntStream.range(1, 40).forEach(i -> arguments.add("0.0" + (100 + i)));
        Shell shell = Shell.run(arguments.toArray());
        assertEquals("not drawn: lines: A4 does not hold the views, tables and notes even at 1:100, the smallest scale at which they can"
            + " be read; choose the paper A2, which holds them\n", shell.err());
        assertEquals(4, shell.code());
        assertFalse(Files.exists(out));
    }
}
