package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.garboard.exchange.FileHash;
import org.garboard.exchange.SurfaceFile;
import org.garboard.hull.Hull;
import org.garboard.offsets.OffsetTable;
import org.garboard.tablefile.TableFile;
import org.garboard.tablefile.TableReading;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code garboard lines TABLE --surface FILE}. */
class SurfaceOptionTest {
    @TempDir
    private Path folder;
    private Path wedge;
    private Path surface;

    @BeforeEach
    void copyWedge() {
        wedge = Shell.copy("/cli/wedge.csv", folder);
        surface = folder.resolve("wedge.xml");
    }

    @Test
    void writesTheSurfaceOfTheTableAndPrintsNothing() throws IOException {
        OffsetTable table = ((TableReading.Read) TableFile.read(wedge)).table();
        assertEquals(new Shell(0, "", ""), Shell.run("lines", wedge, "--surface", surface));
        assertArrayEquals(file(Hull.faired(table)), Files.readAllBytes(surface));
        assertEquals(new Shell(0, "", ""), Shell.run("lines", wedge, "--exact", "--surface", surface));
        assertArrayEquals(file(Hull.through(table)), Files.readAllBytes(surface));
    }

    private byte[] file(Hull hull) throws IOException {
        return SurfaceFile.write(hull, Version.number(), FileHash.of("wedge.csv", Files.readAllBytes(wedge)));
    }

    @Test
    void printsTheCurvesBesidesWhereSomeAreAskedFor() {
        Shell curves = Shell.run("lines", wedge, "--section", "3");
        assertEquals(curves, Shell.run("lines", wedge, "--section", "3", "--surface", surface));
        assertTrue(Files.exists(surface));
    }

    @Test
    void law_theFolderDoesNotShowInTheFile() throws IOException {
        Shell.run("lines", wedge, "--surface", surface);
        Path elsewhere = Files.createDirectories(folder.resolve("a/b"));
        Path copy = Files.copy(wedge, elsewhere.resolve("wedge.csv"));
        Shell.run("lines", copy, "--surface", elsewhere.resolve("other.xml"));
        assertArrayEquals(Files.readAllBytes(surface), Files.readAllBytes(elsewhere.resolve("other.xml")));
    }

    @Test
    void replacesAnEarlierSurface() throws IOException {
        Shell.run("lines", wedge, "--surface", surface);
        byte[] first = Files.readAllBytes(surface);
        Files.writeString(surface, Files.readString(surface).substring(0, 300));
        assertEquals(0, Shell.run("lines", wedge, "--surface", surface).code());
        assertArrayEquals(first, Files.readAllBytes(surface));
        assertOnlyThere("wedge.csv", "wedge.xml");
    }

    @Test
    void leavesWhatItDidNotWrite() throws IOException {
        byte[] table = Files.readAllBytes(wedge);
        assertEquals(new Shell(2, "", wedge + ": is there already and was not written by this command; nothing was written."
            + " Give another name, or move it away, or give --replace\n"), Shell.run("lines", wedge, "--section", "3", "--surface", wedge));
        assertArrayEquals(table, Files.readAllBytes(wedge));
        assertEquals(2, Shell.run("lines", wedge, "--surface", "/dev/null").code());
        assertOnlyThere("wedge.csv");
    }

    @Test
    void saysWhereItCannotWrite() throws IOException {
        Path nowhere = folder.resolve("no such folder").resolve("wedge.xml");
        assertEquals(new Shell(2, "", nowhere + ": cannot be written: there is no folder " + nowhere.getParent() + "\n"),
            Shell.run("lines", wedge, "--surface", nowhere));
        assertEquals(new Shell(2, "", folder + ": this is a folder; name a file in it\n"),
            Shell.run("lines", wedge, "--surface", folder));
        Path underAFile = wedge.resolve("wedge.xml");
        assertEquals(new Shell(2, "", underAFile + ": cannot be written: " + wedge + " is no folder\n"),
            Shell.run("lines", wedge, "--surface", underAFile));
        assertEquals("garboard lines: --surface is empty; name a file\nTry 'garboard lines --help'.\n",
            Shell.run("lines", wedge, "--surface", "").err());
        assertOnlyThere("wedge.csv");
    }

    /** A table at fault leaves an earlier surface as it was. */
    @Test
    void writesNothingWhereTheTableIsAtFault() throws IOException {
        Files.writeString(wedge, Files.readString(wedge).replace("Keel,0,", "Keel,O,"));
        assertEquals(3, Shell.run("lines", wedge, "--surface", surface).code());
        assertOnlyThere("wedge.csv");
    }

    private void assertOnlyThere(String... names) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of(names), files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }
}
