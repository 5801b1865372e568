package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A V bottom of slope 1 in 5, 8 m long: at a depth h of water 5 h wide on each side. */
class HydroCommandTest {
    private static final String HEADING = "waterline_m,about_x_m,trim_deg,density_kg_per_m3,volume_m3,mass_kg,lcb_x_m,vcb_z_m,"
        + "wet_from_x_m,wet_to_x_m,wetted_skin_m2,forward_end_m2,after_end_m2,step_faces_m2,waterplane_m2,lcf_x_m,"
        + "transverse_second_moment_m4,longitudinal_second_moment_m4,transverse_bm_m,longitudinal_bm_m";

    @TempDir
    private Path folder;
    private Path wedge;

    @BeforeEach
    void copyWedge() {
        wedge = Shell.copy("/cli/wedge.csv", folder);
    }

    /** Depth 0.1: volume 0.1 * 0.5 * 8, skin 2 * 8 * sqrt(0.26), IT 8 * 1 / 12, IL 8^3 / 12. */
    @Test
    void exact_rowOfAnUprightWedge() {
        Shell shell = Shell.run("hydro", wedge, "--exact", "--waterline", "0.1", "--csv");
        assertEquals(List.of(HEADING,
            "0.100000,4.000000,0.000000,1025.000,0.400000,410.000,4.000000,0.066667,0.000000,8.000000,8.158431,0.050000,0.050000,0.000000,"
                + "8.000000,4.000000,0.666667,42.666667,1.666667,106.666667"), shell.outLines());
        assertEquals("", shell.err());
        assertEquals(0, shell.code());
    }

    /**
     * With the bow up by atan(1/40) about x = 4 the water is 0.1 + (x - 4) / 40 deep: nothing at the bow, 0.2 at the
     * transom. The integral of 5 h^2 is 5 * 40 * 0.2^3 / 3, and the centroid of h^2 at 3/4 of the length.
     */
    @Test
    void exact_trimmedWedge() {
        Shell shell = Shell.run("hydro", wedge, "--exact", "--waterline", "100mm", "--trim", "1.432096184", "--density", "1000", "--csv");
        String[] row = shell.outLines().get(1).split(",");
        assertEquals(5 * 40 * 0.008 / 3, Double.parseDouble(row[4]), 1e-6);
        assertEquals(1000 * 5 * 40 * 0.008 / 3, Double.parseDouble(row[5]), 1e-3);
        assertEquals(6, Double.parseDouble(row[6]), 1e-6);
        assertEquals(0, Double.parseDouble(row[8]), 1e-5);
        assertEquals(0.2, Double.parseDouble(row[12]), 1e-6);
    }

    /** The height holds where --about says: at the transom, 4 m farther aft, the same water stands 0.1 higher. */
    @Test
    void law_aboutMovesWhereTheHeightIsTaken() {
        String[] middle = Shell.run("hydro", wedge, "--waterline", "0.1", "--trim", "1.432096184", "--csv").outLines().get(1).split(",");
        String[] aft = Shell.run("hydro", wedge, "--waterline", "0.2", "--about", "8", "--trim", "1.432096184", "--csv").outLines().get(1).split(",");
        for (int column = 4; column < middle.length; column++) {
            assertEquals(Double.parseDouble(middle[column]), Double.parseDouble(aft[column]), 2e-6, HEADING.split(",")[column]);
        }
    }

    @Test
    void printsAColumnForEachWaterline() {
        Shell shell = Shell.run("hydro", wedge, "--exact", "--waterline", "0.1", "0.2");
        assertEquals("""
            Wedge
            to the outside of the skin, from x = 0.000 m to 8.000 m aft of station 0, closed by flat ends; no appendages
            water of 1025.0 kg/m3; trim 0.00 deg bow-up, the waterline's height taken at x = 4.000 m

            waterline above base                 0.100    0.200
            volume of displacement         m3   0.4000   1.6000
            mass of displacement           kg    410.0   1640.0
            centre of buoyancy, x          m     4.000    4.000
            centre of buoyancy above base  m     0.067    0.133
            wet from x                     m     0.000    0.000
            wet to x                       m     8.000    8.000
            wetted skin, without the ends  m2    8.158   16.317
            wet part of the forward end    m2    0.050    0.200
            wet part of the after end      m2    0.050    0.200
            waterplane                     m2    8.000   16.000
            centre of flotation, x         m     4.000    4.000
            second moment, transverse      m4   0.6667   5.3333
            second moment, longitudinal    m4  42.6667  85.3333
            BM, transverse                 m     1.667    3.333
            BM, longitudinal               m   106.667   53.333
            """, shell.out());
    }

    @Test
    void tellsWaterlinesThatHaveNoFigures() {
        Shell shell = Shell.run("hydro", wedge, "--exact", "--waterline", "0.1", "1.5", "-0.3", "--csv");
        assertEquals(2, shell.outLines().size());
        assertEquals("waterline 1.500 m: the water comes over the sheer, where the skin ends, most at x = 0.000 m, by 0.300 m; a waterline"
            + " lower by that much or more has figures\n"
            + "waterline -0.300 m: the hull is clear of the water: its lowest place stands 0.300 m above it; a waterline higher by more"
            + " than that has figures\n", shell.err());
        assertEquals(4, shell.code());
        assertEquals("", Shell.run("hydro", wedge, "--waterline", "2").out());
    }

    @Test
    void refusesWhatNoBoatFloatsIn() {
        assertEquals("garboard hydro: --density is 1.025 kg/m3; water has from 900 to 1300, fresh 1000, salt 1025\n"
            + "Try 'garboard hydro --help'.\n", Shell.run("hydro", wedge, "--waterline", "1", "--density", "1.025").err());
        assertEquals("garboard hydro: --trim is 45.00 deg; it must be from -30 to 30, positive with the bow up\n"
            + "Try 'garboard hydro --help'.\n", Shell.run("hydro", wedge, "--waterline", "1", "--trim", "45").err());
        assertEquals("garboard hydro: Invalid value for option '--trim': \"1,5\" is not a number; write it with digits and a decimal"
            + " point, such as 1.5\nTry 'garboard hydro --help'.\n", Shell.run("hydro", wedge, "--waterline", "1", "--trim", "1,5").err());
        assertTrue(Shell.run("hydro", wedge).err().startsWith("garboard hydro: Missing required option: '--waterline=Z'"),
            Shell.run("hydro", wedge).err());
        assertEquals(2, Shell.run("hydro", wedge, "--waterline", "NaN").code());
    }

    /** A V of 1 in 5 from a rabbet 0.1 m out, and below it a box 4 m long, 0.2 m broad, 0.5 m deep. */
    @Test
    void exact_keelBelowTheRabbet() throws Exception {
        Path table = folder.resolve("keel.csv");
        Files.writeString(table, """
            TABLE OF OFFSETS,Deep keel
            Units,mm,to outside of skin
            Station,0,1,2,3,4,5,6
            Distance from 0,0,1000,2000,3000,4000,5000,6000
            HEIGHTS ABOVE BASE
            Sheer,1700,1700,1700,1700,1700,1700,1700
            Chine,700,700,700,700,700,700,700
            Rabbet,500,500,500,500,500,500,500
            Keel bottom,-,0,0,0,0,0,-
            HALF-BREADTHS FROM CENTRELINE
            Sheer,1300,1300,1300,1300,1300,1300,1300
            Chine,1100,1100,1100,1100,1100,1100,1100
            Half-siding at rabbet,100,100,100,100,100,100,100
            """);
        Shell shell = Shell.run("hydro", table, "--exact", "--waterline", "0.6", "--csv");
        assertEquals(0, shell.code(), shell.err());
        String[] heading = shell.outLines().get(0).split(",");
        String[] row = shell.outLines().get(1).split(",");
        String[] names = {"volume_m3", "keel_volume_m3", "keel_lcb_x_m", "keel_vcb_z_m", "keel_wetted_m2", "keel_covers_m2", "total_volume_m3",
            "total_mass_kg", "total_wetted_m2"};
        double[] exact = {6 * 0.07, 0.4, 3, 0.25, 4 + 0.8 + 0.2, 0.8, 0.82, 1025 * 0.82, 12 * (0.1 + Math.hypot(0.5, 0.1)) - 0.8 + 5};
        for (int i = 0; i < names.length; i++) {
            int column = List.of(heading).indexOf(names[i]);
            assertEquals(exact[i], Double.parseDouble(row[column]), names[i].endsWith("kg") ? 1e-3 : 1e-6, names[i]);
        }
        Shell words = Shell.run("hydro", table, "--exact", "--waterline", "0.6");
        assertTrue(words.out().contains("a keel of flat sides below the rabbet from x = 1.000 m to 5.000 m, lowest at x = 1.000 m, z = 0.000 m"), words.out());
        assertTrue(words.out().matches("(?s).*together: mass +kg +840.5\\n.*"), words.out());
        Shell probe = Shell.run("probe", table, "--at", "3,0.05", "3,0.5");
        assertEquals("x 3.000 m, y 0.050 m lies above the keel, which hangs 0.500 m below the rabbet there: no skin is to be seen\n", probe.err());
        assertEquals(0, probe.code());
    }
}
