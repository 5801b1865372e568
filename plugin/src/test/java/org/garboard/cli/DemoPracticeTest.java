package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Each demo boat against the practice of the trade (common practice, no source), as she is and drawn longer and shorter by a
 * twentieth, which must not change the answer. The program judges by layer, speed and geometry; lengths in feet stand here alone.
 */
class DemoPracticeTest {
    private static final double FOOT = 0.3048;
    @TempDir
    private Path folder;

    /** One row of a check, by the columns of the CSV. */
    private record Row(String rank, String mount, double x, double y, String check, String verdict) {
    }

    private static List<Row> rows(Shell shell) {
        return shell.outLines().stream().skip(1).map(line -> line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1))
            .map(cells -> new Row(cells[0], cells[1], Double.parseDouble(cells[3]), Double.parseDouble(cells[4]), cells[7].replace("\"", ""), cells[12])).toList();
    }

    private static List<Row> search(ScaledDemo demo) {
        return rows(Shell.run("site", demo.job(), "--csv"));
    }

    /** The advised site is the first of the list. */
    private static Row advised(List<Row> rows) {
        Row first = rows.get(0);
        assertEquals("1", first.rank(), "no site: " + rows);
        return first;
    }

    private static Row best(List<Row> rows, String mount) {
        return rows.stream().filter(row -> row.mount().equals(mount) && !row.rank().isEmpty()).findFirst()
            .orElseThrow(() -> new AssertionError("no site for " + mount));
    }

    private static void assertNowhere(List<Row> rows, String mount) {
        assertTrue(rows.stream().noneMatch(row -> row.mount().equals(mount) && !row.rank().isEmpty()), mount + " has a site");
    }

    /** Whether a check whose name begins so rules a place out for a mount. */
    private static void assertRuledOut(ScaledDemo demo, double x, double y, String mount, String check) {
        List<Row> rows = rows(Shell.run("site", demo.job(), "--csv", "--at",
            String.format(Locale.ROOT, "%.3f,%.3f", x, y)));
        assertTrue(rows.stream().anyMatch(row -> row.mount().equals(mount) && row.check().startsWith(check) && row.verdict().equals("not met")),
            () -> check + " does not rule out a " + mount + " at " + x + ", " + y + ": " + rows);
    }

    private ScaledDemo demo(String boat, double factor) throws Exception {
        return ScaledDemo.of(boat, factor, folder);
    }

    /** Outboard under 35 ft, no step: a flush element low, aft and near the centreline; the pocket does not take a leaning element. */
    @ParameterizedTest
    @ValueSource(doubles = {0.95, 1, 1.05})
    void outboard22_aFlushElementGoesLowAftAndNearTheCentreline(double factor) throws Exception {
        List<Row> rows = search(demo("outboard-22", factor));
        Row site = advised(rows);
        assertEquals("flush through-hull", site.mount());
        assertTrue(site.x() > 0.6 * 22 * FOOT * factor, "at x = " + site.x());
        assertTrue(site.y() > 0 && site.y() < 0.35, "at y = " + site.y());
        for (String level : List.of("transom mount", "in-hull", "through-hull with fairing block", "keel pocket")) {
            assertNowhere(rows, level);
        }
    }

    private static final String LEANS = "<element-inclination unit=\"deg\">20</element-inclination>";
    private static final String UPRIGHT = "<element-inclination unit=\"deg\">0</element-inclination>";

    /**
     * A transom mount serves, to starboard for a right-hand single screw, to port for a left-hand one: on a bare bottom. With her
     * strakes the program finds no place for it: between the wake of the inner strake's end and that of the outer one, which it
     * takes to widen beside the strake from its forward end on, no room is left. Practice fears a strake's end alone; which is
     * right is not known here, for no source gives wakes of strakes an angle.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.95, 1, 1.05})
    void outboard22_aTransomMountServesWhereTheBladesGoDown(double factor) throws Exception {
        ScaledDemo demo = demo("outboard-22", factor).bare().with(LEANS, UPRIGHT).sounding(50, 30).only("transom-mount");
        Row site = advised(search(demo));
        assertTrue(site.y() > 0.38, "at y = " + site.y());
        assertTrue(advised(search(demo.with("hand=\"right\"", "hand=\"left\""))).y() < -0.38);
    }

    /** In-hull at a low frequency: low, aft and near the centreline. It sends through solid skin only: cored skin is refused wherever it is put. */
    @ParameterizedTest
    @ValueSource(doubles = {0.95, 1, 1.05})
    void outboard22_inHullThroughSolidSkinAlone(double factor) throws Exception {
        ScaledDemo demo = demo("outboard-22", factor).with(LEANS, UPRIGHT).sounding(50, 30).only("in-hull");
        Row site = advised(search(demo));
        assertTrue(site.x() > 0.6 * 22 * FOOT * factor && site.y() < 0.35, "at " + site.x() + ", " + site.y());
        demo.with("<skin material=\"solid-glass\">", "<skin material=\"cored-glass\">").with("<whole unit=\"mm\">11</whole>",
            "<outer-skin unit=\"mm\">5</outer-skin><core unit=\"mm\" kind=\"balsa\">20</core><inner-skin unit=\"mm\">4</inner-skin>");
        Shell cored = Shell.run("site", demo.job());
        assertEquals(4, cored.code(), cored.err());
        assertTrue(cored.out().contains("NOT MET: ") && cored.out().contains("core"), cored.out());
    }

    /** A bunk of the trailer over the whole stretch where she would have it rules it out there. */
    @Test
    void outboard22_nothingGoesUnderATrailerBunk() throws Exception {
        ScaledDemo demo = demo("outboard-22", 1);
        Row site = advised(search(demo));
        demo.with("  <supports>", "  <supports><support name=\"Bunk\" kind=\"bunk\" side=\"both\"><ahead-from unit=\"m\">0</ahead-from><ahead-to unit=\"m\">3</ahead-to>"
            + "<out-from unit=\"m\">0.1</out-from><out-to unit=\"m\">0.25</out-to></support>");
        assertRuledOut(demo, site.x(), site.y(), "flush through-hull", "slings, blocking and trailer");
    }

    /** A stepped bottom: ahead of the first step, at 6.86 m; abaft of it nothing. */
    @ParameterizedTest
    @ValueSource(doubles = {0.95, 1, 1.05})
    void stepped38_aheadOfTheFirstStep(double factor) throws Exception {
        ScaledDemo demo = demo("stepped-38", factor);
        List<Row> rows = search(demo);
        assertEquals("flush through-hull", advised(rows).mount());
        assertTrue(rows.stream().filter(row -> !row.rank().isEmpty()).allMatch(row -> row.x() < 6.86 * factor - 0.3), "a site abaft of the first step");
        assertRuledOut(demo, 8 * factor, 0.25, "flush through-hull", "clear of the air behind steps");
    }

    /** A wide low body on a fast 39 ft boat, signal before ease: a recess on the keel line, aft of the middle; it is too wide for the V beside it. */
    @ParameterizedTest
    @ValueSource(doubles = {0.95, 1, 1.05})
    void outboard39_aLargeFaceGoesIntoTheKeel(double factor) throws Exception {
        List<Row> rows = search(demo("outboard-39", factor));
        Row site = advised(rows);
        assertEquals("keel pocket", site.mount());
        assertTrue(site.y() == 0 && site.x() > 0.5 * 39 * FOOT * factor, "at " + site.x() + ", " + site.y());
        assertNowhere(rows, "flush through-hull");
    }

    /**
     * Over 50 ft: a fairing block and not a flush element, ahead of the propellers by a diameter and a half; never behind an intake or abaft of a
     * propeller. Close to the centreline, says practice too; here the place lies well outboard, for the bow thrusters' mouths stand half a metre
     * off the centreline and their wakes afloat, which are taken to widen without an end, reach all that is nearer.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.95, 1, 1.05})
    void inboard58_aFairingBlockAheadOfThePropellers(double factor) throws Exception {
        ScaledDemo demo = demo("inboard-58", factor);
        List<Row> rows = search(demo);
        Row site = advised(rows);
        assertEquals("through-hull with fairing block", site.mount());
        assertTrue(site.x() < 15.75 * factor - 1.5 * 0.71, "at x = " + site.x());
        assertNowhere(rows, "flush through-hull");
        assertRuledOut(demo, 12 * factor, 0.9, "through-hull with fairing block", "wake shadow at cruise");
        assertRuledOut(demo, 16.5 * factor, 0.5, "through-hull with fairing block", "ahead of the propellers");
    }

    /** Propellers under the bottom fill the water at the transom with air; a core stops the sound from inside. */
    @Test
    void inboard58_noTransomMountAndNothingThroughACore() throws Exception {
        ScaledDemo demo = demo("inboard-58", 1);
        List<Row> rows = search(demo);
        assertNowhere(rows, "transom mount");
        assertTrue(rows.stream().anyMatch(row -> row.mount().equals("transom mount") && row.check().equals("water at the transom") && row.verdict().equals("not met")));
        assertNowhere(rows, "in-hull");
        assertTrue(rows.stream().anyMatch(row -> row.mount().equals("in-hull") && row.check().equals("loss through the skin") && row.verdict().equals("not met")));
    }

    /** A long keel and a single screw: on the garboards, clear of the intake's side of the boat behind it, well ahead of the propeller. */
    @ParameterizedTest
    @ValueSource(doubles = {0.95, 1, 1.05})
    void displacement30_onTheGarboardsAheadOfThePropeller(double factor) throws Exception {
        Row site = advised(search(demo("displacement-30", factor)));
        assertEquals("flush through-hull", site.mount());
        assertTrue(Math.abs(site.y()) < 0.6 && site.x() < -1, "at " + site.x() + ", " + site.y());
    }
}
