package org.garboard.flow.doublebody;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.garboard.flow.panels.PanelFlow;
import org.garboard.flow.panels.PanelMesh;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.hull.SteppedForms;
import org.garboard.hydrostatics.Hydrostatics;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.offsets.EndPoint;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.StemLine;
import org.garboard.offsets.TransomLine;
import org.garboard.processors.SoMany;
import org.garboard.units.Angle;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DoubleBodyTest {
    private static HullFlow wigley;

    @BeforeAll
    static void flow() {
        wigley = past(WigleyHull.hull(), WaterSurface.level(WigleyHull.T), new MeshWish(80, 20, Stern.STRAIGHT_RUN));
    }

    static HullFlow past(Hull hull, WaterSurface water, MeshWish wish) {
        return assertInstanceOf(HullFlow.class, DoubleBody.past(hull, water, wish));
    }

    /** A V bottom of one deadrise with an upright side, its stem a knife raked from the keel at x = 2; a transom at 8. */
    private static Hull transomBoat() {
        return Hull.through(new Forms(0, Forms.even(0, 8, 17)).keel(x -> rise(x))
            .named(LineKind.CHINE, "Chine", x -> breadth(x), x -> rise(x) + 0.25 * breadth(x))
            .named(LineKind.SHEER, "Sheer", x -> 1.1 * breadth(x), x -> rise(x) + 1.2).table());
    }

    private static double breadth(double x) {
        double bow = Math.max(0, 1 - x / 5);
        return 1 - bow * bow;
    }

    private static double rise(double x) {
        double bow = Math.max(0, 1 - x / 3);
        return 0.6 * bow * bow;
    }

    /**
     * Independent computation of Wigley's hull, B/L = 0.1, T/L = 0.0625, over four meshes; its own uncertainty 0.001,
     * and near the ends twice that, as columns there do not stand at the very place.
     */
    @ParameterizedTest
    @CsvSource({"0, -0.02, 1.026, 0.001", "0, -0.5, 1.023, 0.001", "0, -0.9, 1.0175, 0.001",
        "-0.25, -0.5, 1.0223, 0.001", "-0.4, -0.5, 1.0113, 0.002"})
    void exact_wigleysSpeeds(double station, double depth, double expected, double within) {
        double x = (station + 0.5) * WigleyHull.L;
        assertEquals(expected, speed(x, depth * WigleyHull.T), within);
    }

    /** Between the panels' centres, first up the column and then along. */
    private static double speed(double x, double z) {
        HullMesh mesh = wigley.mesh();
        int column = 0;
        while (mesh.panels().centre(mesh.panel(column + 1, 10), 0) <= x) {
            column++;
        }
        double one = mesh.panels().centre(mesh.panel(column, 10), 0);
        double other = mesh.panels().centre(mesh.panel(column + 1, 10), 0);
        double share = (x - one) / (other - one);
        return (1 - share) * inColumn(column, z) + share * inColumn(column + 1, z);
    }

    private static double inColumn(int column, double z) {
        HullMesh mesh = wigley.mesh();
        int row = 0;
        while (row + 2 < mesh.rows() && mesh.panels().centre(mesh.panel(column, row + 1), 2) <= z) {
            row++;
        }
        double below = mesh.panels().centre(mesh.panel(column, row), 2);
        double above = mesh.panels().centre(mesh.panel(column, row + 1), 2);
        double share = Math.max(0, Math.min(1, (z - below) / (above - below)));
        return (1 - share) * wigley.flow().speed(mesh.panel(column, row)) + share * wigley.flow().speed(mesh.panel(column, row + 1));
    }

    /** Fore and aft alike, as the hull is. */
    @Test
    void law_wigleyIsSymmetric() {
        HullMesh mesh = wigley.mesh();
        for (int column = 0; column < 40; column++) {
            for (int row = 0; row < 20; row++) {
                assertEquals(wigley.flow().speed(mesh.panel(column, row)), wigley.flow().speed(mesh.panel(79 - column, row)), 1e-5);
            }
        }
        assertEquals(0, wigley.flow().netSource(), 1e-5);
    }

    /** By Gauss' theorem the panels hold the displacement, less what chords cut off; and are closed along x. */
    @Test
    void law_panelsHoldTheDisplacement() {
        assertEquals(1, volume(wigley.mesh().panels(), Integer.MAX_VALUE) / afloat(WigleyHull.hull(), WaterSurface.level(WigleyHull.T)).volume(), 1e-3);
        assertEquals(0, endwise(wigley.mesh().panels()), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"0.35, 0", "0.35, 2", "0.2, -1", "0.5, 3"})
    void law_panelsOfATransomBoatHoldHerDisplacement(double level, double trim) {
        WaterSurface water = new WaterSurface(level, 4, Angle.ofDegrees(trim));
        HullMesh mesh = assertInstanceOf(HullMesh.class, HullMesh.of(transomBoat(), water, new MeshWish(60, 16, Stern.CLOSED)));
        Hydrostatics afloat = afloat(transomBoat(), water);
        assertEquals(0, endwise(mesh.panels()), 1e-6, "closed");
        assertEquals(1, volume(mesh.panels(), mesh.columns() * mesh.rows()) / afloat.volume(), 3e-3);
        assertEquals(afloat.from(), mesh.station(0), 1e-12);
        assertEquals(afloat.to(), mesh.station(60), 1e-12);
        double skin = 0;
        for (int panel = 0; panel < mesh.columns() * mesh.rows(); panel++) {
            skin += 2 * mesh.panels().area(panel);
        }
        assertEquals(1, skin / afloat.wettedSkin(), 3e-3);
    }

    private static Hydrostatics afloat(Hull hull, WaterSurface water) {
        return assertInstanceOf(Hydrostatics.class, Hydrostatics.of(hull, water));
    }

    private static double volume(PanelMesh mesh, int most) {
        double volume = 0;
        for (int panel = 0; panel < Math.min(most, mesh.size()); panel++) {
            volume += 2 * mesh.centre(panel, 1) * mesh.normal(panel, 1) * mesh.area(panel);
        }
        return volume;
    }

    private static double endwise(PanelMesh mesh) {
        double sum = 0;
        for (int panel = 0; panel < mesh.size(); panel++) {
            sum += mesh.normal(panel, 0) * mesh.area(panel);
        }
        return sum;
    }

    /** Corners lie on the skin; rows follow the chine where it is well in the water. */
    @Test
    void law_cornersLieOnTheSkinAndOnItsChine() {
        Hull hull = transomBoat();
        WaterSurface water = new WaterSurface(0.45, 4, Angle.ofDegrees(1));
        HullMesh mesh = assertInstanceOf(HullMesh.class, HullMesh.of(hull, water, new MeshWish(40, 12, Stern.STRAIGHT_RUN)));
        int onChine = 0;
        for (int line = 0; line <= 40; line++) {
            double nearest = 1;
            for (int across = 0; across <= 12; across++) {
                double along = mesh.corner(line, across, 0);
                double up = mesh.corner(line, across, 2);
                assertEquals(mesh.station(line), mesh.frame().x(along, up), 1e-7);
                double z = mesh.frame().z(along, up);
                double y = mesh.corner(line, across, 1);
                nearest = Math.min(nearest, Math.abs(y - breadth(mesh.station(line))));
                double chine = rise(mesh.station(line)) + 0.25 * breadth(mesh.station(line));
                if (z < chine - 0.01 && line > 20) {
                    assertEquals(hull.height(mesh.station(line), y), z, 1e-6);
                }
            }
            onChine += nearest < 1e-3 ? 1 : 0;
        }
        assertTrue(onChine >= 25, "lines with a corner on the chine: " + onChine);
    }

    /**
     * Behind a transom the run goes on as the bottom does: speeds on the bottom next to it stay near the
     * stream's, where a closed transom sucks; twice as long a run would change them by little, as its open end is
     * far.
     */
    @Test
    void law_waterLeavesATransomStraight() {
        WaterSurface water = WaterSurface.level(0.4);
        HullFlow run = past(transomBoat(), water, new MeshWish(50, 14, Stern.STRAIGHT_RUN));
        HullFlow closed = past(transomBoat(), water, new MeshWish(50, 14, Stern.CLOSED));
        int keelAft = run.mesh().panel(49, 2);
        int keelAmidships = run.mesh().panel(25, 2);
        assertEquals(1, run.flow().speed(keelAft), 0.04);
        assertTrue(closed.flow().speed(keelAft) > run.flow().speed(keelAft) + 0.05, "closed sucks");
        assertEquals(run.flow().speed(keelAmidships), closed.flow().speed(keelAmidships), 0.02);
    }

    /** A finer mesh of the transom boat changes speeds by little. */
    @Test
    void law_speedsConverge() {
        WaterSurface water = WaterSurface.level(0.4);
        HullFlow coarse = past(transomBoat(), water, new MeshWish(30, 10, Stern.STRAIGHT_RUN));
        HullFlow fine = past(transomBoat(), water, new MeshWish(60, 20, Stern.STRAIGHT_RUN));
        double[] at = {0.3, 0.5, 0.7, 0.9};
        for (double part : at) {
            int c = (int) (part * 30);
            assertEquals(fine.flow().speed(fine.mesh().panel(2 * c, 3)), coarse.flow().speed(coarse.mesh().panel(c, 1)), 0.01, "at " + part);
        }
    }

    @ParameterizedTest
    @EnumSource(Stern.class)
    void aWaterlineThatMissesTheHullIsNamed(Stern stern) {
        MeshWish wish = new MeshWish(20, 8, stern);
        assertEquals("water at -0.200 m above base at x = 0.000 m, trim 0.00 degrees, does not cut the hull: her keel stays 0.200 m above it",
            reason(WigleyHull.hull(), WaterSurface.level(-0.2), wish));
        assertEquals("water at 1.000 m above base at x = 0.000 m, trim 0.00 degrees, comes 0.100 m over the sheer at x = 0.000 m, "
            + "where that is 0.900 m above base", reason(WigleyHull.hull(), WaterSurface.level(1), wish));
    }

    private static String reason(Hull hull, WaterSurface water, MeshWish wish) {
        return assertInstanceOf(DoubleBody.None.class, DoubleBody.past(hull, water, wish)).reason();
    }

    /** A reverse chine with air under it. */
    @Test
    void airUnderTheHullIsNamed() {
        Hull hull = Hull.through(new Forms(0, Forms.even(0, 8, 6)).keel(x -> 0)
            .named(LineKind.CHINE, "Chine", x -> 1, x -> 0.2)
            .named(LineKind.CHINE, "Chine flat", x -> 1.1, x -> 0.15)
            .named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 1.2).table());
        String reason = reason(hull, WaterSurface.level(0.18), new MeshWish(20, 8, Stern.CLOSED));
        assertTrue(reason.startsWith("the section at x = 0.000 m comes out of the water and dips into it again at y = 1.0"), reason);
    }

    @Test
    void aSteppedBottomIsNamed() {
        assertEquals("a bottom with 1 step(s), the first at x = 5.000 m on the centreline: no water runs along it as along a whole one, "
            + "and this method does not serve", reason(Hull.through(SteppedForms.prism()), WaterSurface.level(0.3), new MeshWish(20, 8, Stern.CLOSED)));
    }

    /** The wedge of a transom raked aft by 0.3: panels hold the displacement and what is drawn on behind the cut. */
    @Test
    void law_aRakedTransomIsMeshedToItsAftermostWetPlace() {
        double rake = 0.3;
        Hull hull = Hull.through(SteppedForms.with(new Forms(0, 0, 2, 4, 6, 8).keel(x -> 0)
            .named(LineKind.CHINE, "Chine", x -> 1, x -> 0.25).named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 1.5).table(),
            new TransomLine(List.of(new EndPoint("Keel", LineKind.KEEL, 0, 8), new EndPoint("Sheer", LineKind.SHEER, 0, 8 + rake * 1.5)), 0)));
        double h = 0.2;
        HullMesh mesh = assertInstanceOf(HullMesh.class, HullMesh.of(hull, WaterSurface.level(h), new MeshWish(20, 8, Stern.STRAIGHT_RUN)));
        double end = 8 + rake * h;
        assertEquals(end, mesh.station(20), 1e-9);
        assertEquals(h * h / 0.25 * end, volume(mesh.panels(), 160), 1e-6);
    }

    /** A wedge y = 0.2 (x + 0.3 + 0.3 z) over a flat bottom, her stem ahead of the first station at x = 0. */
    private static Hull wedge(double siding) {
        double rake = 0.3;
        Forms form = new Forms(0, 0, 1, 2, 4, 6, 8).keel(x -> 0);
        form = siding > 0 ? form.halfSiding(x -> siding) : form;
        return Hull.through(SteppedForms.with(form.named(LineKind.CHINE, "Chine", x -> siding + 0.2 * (x + 0.3), x -> 0)
                .named(LineKind.SHEER, "Sheer", x -> siding + 0.2 * (x + 0.3 + rake * 1.5), x -> 1.5).table(),
            new StemLine(List.of(new EndPoint("Keel", LineKind.KEEL, 0, -0.3),
                new EndPoint("Sheer", LineKind.SHEER, 0, -0.3 - rake * 1.5)), siding)));
    }

    @ParameterizedTest
    @CsvSource({"0, 0.6, 0", "0, 0.6, 1.5", "0.02, 0.6, 0"})
    void law_aRakedStemIsMeshedFromItsForemostWetPlace(double siding, double level, double trim) {
        WaterSurface water = new WaterSurface(level, 4, Angle.ofDegrees(trim));
        HullMesh mesh = assertInstanceOf(HullMesh.class, HullMesh.of(wedge(siding), water, new MeshWish(80, 20, Stern.CLOSED)));
        Hydrostatics afloat = afloat(wedge(siding), water);
        assertEquals(1, volume(mesh.panels(), mesh.columns() * mesh.rows()) / afloat.volume(), 3e-3);
    }

    /** A V bottom with a box keel that grows from x = 2 aft; ahead of there the spline through its top swings below its bottom. */
    private static Hull fadingKeel(double slope) {
        return Hull.through(new Forms(0, Forms.even(0, 8, 17)).keel(x -> rise(x)).halfSiding(x -> 0.06)
            .named(LineKind.KEEL_TOP, "Top of keel", x -> 0.06, x -> rise(x) + Math.min(0.35, slope * Math.max(0, x - 2)))
            .named(LineKind.CHINE, "Chine", x -> 0.06 + breadth(x), x -> rise(x) + Math.min(0.35, slope * Math.max(0, x - 2)) + 0.25 * breadth(x))
            .named(LineKind.SHEER, "Sheer", x -> 0.06 + 1.1 * breadth(x), x -> rise(x) + 1.2).table());
    }

    /** The forward end of the wet part then is at the keel's top. */
    @ParameterizedTest
    @CsvSource({"0.09, 0", "0.10, 0", "0.12, -0.5", "0.12, 0.5", "0.3, 0"})
    void law_aKeelDrawnAHairInsideOutIsMeshed(double level, double trim) {
        Hull hull = fadingKeel(0.03);
        WaterSurface water = new WaterSurface(level, 2, Angle.ofDegrees(trim));
        HullMesh mesh = assertInstanceOf(HullMesh.class, HullMesh.of(hull, water, new MeshWish(80, 16, Stern.CLOSED)));
        assertEquals(1, volume(mesh.panels(), mesh.columns() * mesh.rows()) / afloat(hull, water).volume(), 3e-3);
        assertEquals(0, endwise(mesh.panels()), 1e-6, "closed");
    }

    @Test
    void aKeelWellOutOfTheWaterBesideWetSkinIsNamed() {
        assertEquals("at x = 1.694 m the keel is 0.024 m out of the water, between places where the hull is in it",
            reason(fadingKeel(0.6), WaterSurface.level(0.09), new MeshWish(20, 8, Stern.CLOSED)));
    }

    @Test
    void law_processorsChangeNoBit() {
        MeshWish wish = MeshWish.atMost(600, Stern.STRAIGHT_RUN);
        PanelFlow one = on(1, wish);
        PanelFlow three = on(3, wish);
        assertTrue(one.mesh().size() <= 600, "panels " + one.mesh().size());
        for (int panel = 0; panel < one.mesh().size(); panel++) {
            assertEquals(Double.doubleToLongBits(one.speed(panel)), Double.doubleToLongBits(three.speed(panel)));
        }
    }

    private static PanelFlow on(int processors, MeshWish wish) {
        return assertInstanceOf(HullFlow.class, SoMany.processors(processors, () -> DoubleBody.past(transomBoat(), WaterSurface.level(0.4), wish))).flow();
    }
}
