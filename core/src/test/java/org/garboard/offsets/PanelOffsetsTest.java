package org.garboard.offsets;

import static org.garboard.offsets.TableSketch.BLANK;
import static org.garboard.offsets.TableSketch.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class PanelOffsetsTest {
    private static final double MILLIMETRE = 0.001;

    /** Straight-sided V bottom: bottom points go to the bottom, side points to the side, each in order. */
    @Test
    void exact_vBottomWithWaterlinesAndButtocks() {
        OffsetTable table = new TableSketch(MILLIMETRE, 0, 1)
            .sheer(of(1.2, 1.2), of(1.5, 1.5))
            .buttock(1.1, 1.1, 1.1)
            .buttock(0.5, 0.15, 0.15)
            .chine("Chine", of(0.9, 0.9), of(0.3, 0.3))
            .keel(0, 0)
            .waterline(0.9, 1.05, 1.05)
            .waterline(0.6, 1.0, BLANK)
            .waterline(0.1, 0.3, 0.3)
            .table();
        List<PanelOffsets> panels = PanelOffsets.of(table);
        assertEquals(List.of("Keel-Chine", "Chine-Sheer"), names(panels));
        assertEquals(List.of(point(0, 0, 6), point(0.3, 0.1, 9), point(0.5, 0.15, 3), point(0.9, 0.3, 4)),
            panels.get(0).stations().get(0));
        assertEquals(
            List.of(point(0.9, 0.3, 4), point(1.0, 0.6, 8), point(1.05, 0.9, 7), point(1.1, 1.1, 2), point(1.2, 1.5, 0)),
            panels.get(1).stations().get(0));
        assertEquals(4, panels.get(1).stations().get(1).size());
    }

    @Test
    void exact_flatBottomIsAPanelOfItsOwnHeight() {
        OffsetTable table = new TableSketch(MILLIMETRE, 0, 1)
            .keel(0.2, 0.2)
            .chine("Chine", of(0.8, 0.8), of(0.2, 0.2))
            .sheer(of(1, 1), of(0.9, 0.9))
            .buttock(0.4, 0.2, 0.2)
            .waterline(0.5, 0.9, 0.9)
            .table();
        List<PanelOffsets> panels = PanelOffsets.of(table);
        assertEquals(List.of(point(0, 0.2, 0), point(0.4, 0.2, 5), point(0.8, 0.2, 1)), panels.get(0).stations().get(1));
        assertEquals(List.of(point(0.8, 0.2, 1), point(0.9, 0.5, 6), point(1, 0.9, 3)), panels.get(1).stations().get(1));
    }

    /** Between buttocks of a tumblehome side and a bottom below it only the nearer chord can tell. */
    @Test
    void exact_buttockUnderTumblehomeGoesToTheNearerPanel() {
        OffsetTable table = new TableSketch(MILLIMETRE, 0, 1)
            .keel(0, 0)
            .chine("Chine", of(1.0, 1.0), of(0.3, 0.3))
            .sheer(of(0.8, 0.8), of(1.4, 1.4))
            .buttock(0.9, 0.27, 0.85)
            .table();
        List<PanelOffsets> panels = PanelOffsets.of(table);
        assertEquals(3, panels.get(0).stations().get(0).size());
        assertEquals(2, panels.get(1).stations().get(0).size());
        assertEquals(2, panels.get(0).stations().get(1).size());
        assertEquals(point(0.9, 0.85, 5), panels.get(1).stations().get(1).get(1));
    }

    /** A round bilge with heavy tumblehome turns by more than a right angle; the order still follows the skin. */
    @Test
    void exact_roundBilgeIsOnePanelFromKeelToSheer() {
        TableSketch sketch = new TableSketch(MILLIMETRE, 0, 1).keel(0, 0).sheer(of(0.9, 0.9), of(1.8, 1.8));
        double radius = 1.0;
        double[] levels = {1.6, 1.2, 1.0, 0.5, 0.1};
        for (double z : levels) {
            double y = Math.sqrt(radius * radius - (z - 1) * (z - 1));
            sketch.waterline(z, y, y);
        }
        for (double y : new double[] {0.95, 0.6, 0.2}) {
            double z = 1 - Math.sqrt(radius * radius - y * y);
            sketch.buttock(y, z, z);
        }
        List<PanelOffsets> panels = PanelOffsets.of(sketch.table());
        List<SectionPoint> points = panels.get(0).stations().get(0);
        assertEquals(1, panels.size());
        assertEquals(2 + levels.length + 3, points.size());
        for (int i = 1; i < points.size(); i++) {
            assertEquals(1, Double.compare(points.get(i).z(), points.get(i - 1).z()), "at " + points.get(i));
        }
    }

    @Test
    void exact_stemWhereEveryHalfBreadthIsZero() {
        OffsetTable table = new TableSketch(MILLIMETRE, 0, 1)
            .keel(1.0, 0.1)
            .chine("Chine", of(0, 0.5), of(1.4, 0.6))
            .sheer(of(0, 0.9), of(2.2, 2.0))
            .waterline(1.2, 0, 0.6)
            .waterline(2.0, 0, 0.9)
            .waterline(1.6, 0, 0.7)
            .waterline(0.4, BLANK, 0.3)
            .table();
        List<PanelOffsets> panels = PanelOffsets.of(table);
        assertEquals(List.of(point(0, 1.0, 0), point(0, 1.2, 5), point(0, 1.4, 1)), panels.get(0).stations().get(0));
        assertEquals(List.of(point(0, 1.4, 1), point(0, 1.6, 7), point(0, 2.0, 6), point(0, 2.2, 3)),
            panels.get(1).stations().get(0));
    }

    /** A stem drawn to a sixteenth: half-breadths that tremble by one count do not upset the order. */
    @Test
    void exact_roundedStemKeepsItsOrder() {
        double eighth = 0.003175;
        OffsetTable table = new TableSketch(eighth, 0, 1)
            .keel(1.0, 0.1)
            .sheer(of(3 * eighth, 0.9), of(2.2, 2.0))
            .waterline(1.4, eighth, 0.6)
            .waterline(1.5, 0, 0.7)
            .waterline(1.6, eighth, 0.8)
            .table();
        assertEquals(List.of(0, 3, 4, 5, 1),
            PanelOffsets.of(table).get(0).stations().get(0).stream().map(SectionPoint::line).toList());
    }

    @Test
    void exact_flatKeelIsTheFirstPanel() {
        OffsetTable table = new TableSketch(MILLIMETRE, 0, 1)
            .keel(0.1, 0.0)
            .halfSiding(0.05, 0.06)
            .sheer(of(1, 1), of(1, 1))
            .waterline(0.1, 0.05, 0.3)
            .table();
        List<PanelOffsets> panels = PanelOffsets.of(table);
        assertEquals(List.of("Keel-Half-siding", "Half-siding-Sheer"), names(panels));
        assertEquals(List.of(point(0, 0.1, 0), point(0.05, 0.1, 1)), panels.get(0).stations().get(0));
        assertEquals(List.of(point(0.06, 0, 1), point(0.3, 0.1, 4), point(1, 1, 2)), panels.get(1).stations().get(1));
    }

    /** One height of the lower chine is ten times too large. */
    @Test
    void exact_aSlipInOneCellDoesNotChangeTheOrderOfChines() {
        OffsetTable table = new TableSketch(MILLIMETRE, 0, 1, 2)
            .keel(0, 0, 0)
            .chine("Upper", of(1.0, 1.0, 1.0), of(0.32, 0.32, 0.32))
            .chine("Lower", of(0.9, 0.9, 0.9), of(0.3, 3.0, 0.3))
            .sheer(of(1.1, 1.1, 1.1), of(1.4, 1.4, 1.4))
            .table();
        assertEquals(List.of("Keel", "Lower", "Upper", "Sheer"),
            NamedLine.fromKeelOutward(table).stream().map(NamedLine::name).toList());
    }

    @Test
    void exact_chinesAreOrderedFromTheKeelOutwardWhateverTheirNames() {
        OffsetTable table = new TableSketch(MILLIMETRE, 0, 1)
            .keel(0, 0)
            .chine("Chine 1", of(1.0, 1.0), of(0.9, 0.9))
            .chine("Lower chine", of(0.9, 0.9), of(0.3, 0.3))
            .sheer(of(1.1, 1.1), of(1.4, 1.4))
            .table();
        assertEquals(List.of("Keel-Lower chine", "Lower chine-Chine 1", "Chine 1-Sheer"), names(PanelOffsets.of(table)));
    }

    /** Half a least count from the chine is the chine; a little more is a point of its own. */
    @Test
    void exact_pointAtALineIsNotRepeated() {
        double eighth = 0.003175;
        OffsetTable table = new TableSketch(eighth, 0, 1)
            .keel(0, 0)
            .chine("Chine", of(0.9, 0.9), of(0.3, 0.3))
            .sheer(of(1.2, 1.2), of(1.5, 1.5))
            .waterline(0.3, 0.9 + eighth / 2, 0.9)
            .buttock(0.9 - 1.1 * eighth / 2, 0.3, 0.3)
            .table();
        List<PanelOffsets> panels = PanelOffsets.of(table);
        assertEquals(3, panels.get(0).stations().get(0).size());
        assertEquals(2, panels.get(1).stations().get(0).size());
    }

    @Test
    void exact_waterlineAndButtockThroughOnePointGiveItOnce() {
        OffsetTable table = new TableSketch(MILLIMETRE, 0, 1)
            .keel(0, 0).sheer(of(1, 1), of(1, 1)).waterline(0.25, 0.5, 0.5).buttock(0.5, 0.25, 0.2499).table();
        assertEquals(List.of(point(0, 0, 0), point(0.5, 0.25, 3), point(1, 1, 1)),
            PanelOffsets.of(table).get(0).stations().get(1));
    }

    @Test
    void badInput_tableWithFaults() {
        OffsetTable table = new TableSketch(MILLIMETRE, 0, 1).keel(0, 0).table();
        assertEquals("table \"sketch\" has 1 fault(s); the first: no row gives the sheer; add \"Sheer\" to the heights"
            + " and to the half-breadths",
            assertThrows(IllegalArgumentException.class, () -> PanelOffsets.of(table)).getMessage());
    }

    private static List<String> names(List<PanelOffsets> panels) {
        return panels.stream().map(panel -> panel.lower() + "-" + panel.upper()).toList();
    }

    private static SectionPoint point(double y, double z, int line) {
        return new SectionPoint(y, z, line);
    }
}
