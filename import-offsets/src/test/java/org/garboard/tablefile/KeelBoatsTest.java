package org.garboard.tablefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.garboard.appendage.Keel;
import org.garboard.geometry.GaussRule;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.KeelAfloat;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.offsets.OffsetTable;
import org.junit.jupiter.api.Test;

/** Boats with a box keel and with a keel below the rabbet: from their files to the hull, against their formulas. */
class KeelBoatsTest {
    private static final int PIECES = 400;

    private static OffsetTable read(String csv) {
        return assertInstanceOf(TableReading.Read.class, TableFile.read("offsets.csv", csv.getBytes(StandardCharsets.UTF_8))).table();
    }

    /** Where stations are a tenth of the length apart and no line bends hard, within the rounding and a little more. */
    @Test
    void exact_inboard58() {
        Hull hull = Hull.faired(read(DemoTables.inboard58()));
        assertEquals(List.of("Keel", "Half-siding", "Top of keel", "Chine inner", "Chine outer", "Sheer"),
            hull.lines().stream().map(line -> line.name()).toList());
        for (double x = 8; x <= 11.9; x += 0.35) {
            for (double y : new double[] {0, 0.07, 0.2, 0.6, 1.3, 1.9, 2.2}) {
                assertEquals(InboardBoat.height(x, y), hull.height(x, y), 0.002, "x " + x + ", y " + y);
            }
            assertEquals(0.14 + InboardBoat.keelDepth(x) + (0.8 - 0.14) / Math.cos(InboardBoat.deadrise(x)), hull.girth(x, 0.8), 0.004);
        }
    }

    /** Where the keel fades its top and its bottom come to lie in one: the lines may swing past each other by no more than this. */
    @Test
    void law_aFadingKeelTurnsInsideOutByMillimetresOnly() {
        Hull hull = Hull.faired(read(DemoTables.inboard58()));
        double most = 0;
        for (double x = 0; x <= InboardBoat.LENGTH; x += 0.02) {
            most = Math.max(most, hull.keel().z(x) - hull.lines().get(2).z(x));
        }
        assertTrue(most < 0.004, "keel above its top by " + most);
    }

    @Test
    void exact_displacement30() {
        OffsetTable table = read(DemoTables.displacement30());
        Hull hull = Hull.faired(table);
        assertEquals(1, hull.skinLine());
        for (double x = 2.5; x <= 7.5; x += 0.25) {
            assertEquals(DisplacementBoat.rabbet(x), hull.keel().z(x), 0.002, "rabbet at " + x);
            assertEquals(DisplacementBoat.halfBreadth(x, 1.1), hull.halfBreadth(x, 1.1).orElseThrow(), 0.006, "WL 1.1 at " + x);
        }
    }

    /** Volume and profile area of keel and deadwood by sums over the formulas; its bottom is straight from station to station. */
    @Test
    void exact_keelAndDeadwoodOfDisplacement30() {
        OffsetTable table = read(DemoTables.displacement30());
        Keel keel = Keel.of(table, Hull.faired(table)).orElseThrow();
        assertEquals(DisplacementBoat.KEEL_FROM, keel.from(), 0);
        assertEquals(DisplacementBoat.STERNPOST, keel.to(), 0);
        assertEquals(new Keel.Knee(DisplacementBoat.STERNPOST, 0, 0.06), keel.lowest());
        GaussRule rule = GaussRule.of(5);
        double volume = 0;
        double moment = 0;
        double step = (keel.to() - keel.from()) / PIECES;
        for (int i = 0; i < PIECES; i++) {
            for (int k = 0; k < rule.size(); k++) {
                double x = keel.from() + step * (i + rule.at(k));
                double depth = DisplacementBoat.rabbet(x) - DisplacementBoat.keelBottom(x);
                double area = Math.max(0, depth) * (DisplacementBoat.siding(x) + DisplacementBoat.keelBottomSiding(x));
                volume += step * rule.weight(k) * area;
                moment += step * rule.weight(k) * area * x;
            }
        }
        KeelAfloat afloat = KeelAfloat.of(keel, WaterSurface.level(3));
        assertEquals(volume, afloat.volume(), 0.005 * volume);
        assertEquals(moment / volume, afloat.lcb(), 0.005);
    }
}
