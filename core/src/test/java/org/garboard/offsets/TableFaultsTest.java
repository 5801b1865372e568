package org.garboard.offsets;

import static org.garboard.offsets.TableSketch.BLANK;
import static org.garboard.offsets.TableSketch.of;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class TableFaultsTest {
    private static final double MILLIMETRE = 0.001;
    private static final double EIGHTH = 0.003175;

    private static TableSketch vBottom() {
        return new TableSketch(MILLIMETRE, 0, 1)
            .keel(0, 0)
            .chine("Chine", of(0.9, 0.9), of(0.3, 0.3))
            .sheer(of(1.2, 1.2), of(1.5, 1.5));
    }

    private static void assertFaults(TableSketch sketch, String... faults) {
        assertEquals(List.of(faults), TableFaults.of(sketch.table()).stream()
            .map(fault -> (fault.line().isPresent() ? "line " + fault.line().getAsInt() + " " : "")
                + (fault.station().isPresent() ? "station " + fault.station().getAsInt() + " " : "") + fault.reason())
            .toList());
    }

    @Test
    void exact_soundTableHasNone() {
        assertFaults(vBottom().waterline(0.2, 0.6, BLANK).buttock(1.0, 0.7, BLANK).halfSiding(0.05, 0));
    }

    @Test
    void badInput_stations() {
        assertFaults(new TableSketch(MILLIMETRE, 0).keel(0).sheer(of(1), of(1)),
            "the table has 1 station(s); three are the least");
        assertFaults(new TableSketch(MILLIMETRE, 0, 1).station("1", 2).station("3", 1.5)
                .keel(0, 0, 0, 0).sheer(of(1, 1, 1, 1), of(1, 1, 1, 1)),
            "station 2 station 1 is given twice; give each station its own name",
            "station 3 station 3 stands 1500 mm from 0, which is not aft of station 1 at 2000 mm;"
                + " order the stations from forward aft, each at its own place");
    }

    @Test
    void badInput_sizesThatNoBoatHas() {
        assertFaults(new TableSketch(MILLIMETRE, -50, 50).keel(-20, 0).sheer(of(10, 10), of(20, 20)));
        assertFaults(new TableSketch(MILLIMETRE, -50, 50.001).keel(0, 0).sheer(of(1000, 1000), of(1500, 1500)),
            "station 1 the table is 100001 mm long, and 100000 mm is the most; see whether its unit is right");
        assertFaults(new TableSketch(EIGHTH, 0, 1).keel(0, 0).sheer(of(1, 12), of(1, 25.4)),
            "line 1 station 1 height 83-4-0 is beyond 65-7-3, the most; see whether its unit and its decimal mark are right",
            "line 2 station 1 half-breadth 39-4-4 is beyond 32-9-6, the most; see whether its unit and its decimal mark are right");
    }

    @Test
    void badInput_namedLinesMissing() {
        assertFaults(new TableSketch(MILLIMETRE, 0, 1).waterline(0.2, 1, 1),
            "no row gives the keel; add \"Keel\" to the heights",
            "no row gives the sheer; add \"Sheer\" to the heights and to the half-breadths");
        assertFaults(vBottom().row(LineKind.CHINE, "Chine 2", 0, Measure.HEIGHT, 0.5, 0.5),
            "line 5 Chine 2 has heights but no half-breadths; add a row \"Chine 2\" to the half-breadths");
        assertFaults(vBottom().row(LineKind.CHINE, "Chine 2", 0, Measure.HALF_BREADTH, 0.5, 0.5),
            "line 5 Chine 2 has half-breadths but no heights; add a row \"Chine 2\" to the heights");
    }

    @Test
    void badInput_rowsInTheWrongBlockOrTwice() {
        assertFaults(vBottom().row(LineKind.KEEL, "Keel", 0, Measure.HALF_BREADTH, 0, 0),
            "line 5 Keel stands among the half-breadths; its place is among the heights"
                + " (half the width of a flat keel is called Half-siding)");
        assertFaults(vBottom().row(LineKind.WATERLINE, "WL 0.2", 0.2, Measure.HEIGHT, 0, 0),
            "line 5 WL 0.2 stands among the heights; its place is among the half-breadths");
        assertFaults(vBottom().waterline(0.2, 0.6, 0.6).row(LineKind.WATERLINE, "WL 200 mm", 0.2, Measure.HALF_BREADTH, 0.6, 0.6),
            "line 6 WL 200 mm is given twice among the half-breadths; leave one of the rows out");
        assertFaults(vBottom().row(LineKind.SHEER, "Sheer line", 0, Measure.HEIGHT, 1.5, 1.5),
            "line 5 Sheer line is given twice among the heights; leave one of the rows out");
        assertFaults(vBottom().buttock(0, 0, 0),
            "line 5 Buttock 0.0 stands 0 mm from the centreline; a buttock stands off it by more than 0");
    }

    @Test
    void badInput_cells() {
        assertFaults(new TableSketch(EIGHTH, 0, 1).keel(0, BLANK).sheer(of(1, 1), of(1, 1)).waterline(0.5, -0.3048, 0.5),
            "line 0 station 1 blank; Keel must be given at every station",
            "line 3 station 0 half-breadth -1-0-0 is negative; half-breadths are 0 or more",
            "line 3 station 0 half-breadth -1-0-0, height 1-7-5 lies on the wrong side of Keel (half-breadth 0-0-0, height 0-0-0)");
    }

    @Test
    void badInput_namedLinesOutOfOrder() {
        assertFaults(new TableSketch(MILLIMETRE, 0, 1).keel(0, 0.8).sheer(of(1, 1), of(0.7, 0.7)),
            "line 1 station 1 height 700 mm is not above the keel's 800 mm");
        assertFaults(new TableSketch(MILLIMETRE, 0, 1).keel(0.2, 0.3).sheer(of(1, 1), of(1, 1))
                .chine("Chine", of(0.9, 0.9), of(1.1, 0.1)),
            "line 3 station 0 height 1100 mm is above the sheer's 1000 mm",
            "line 3 station 1 height 100 mm is below the keel's 300 mm; a bottom that falls outboard cannot be lofted yet");
        assertFaults(vBottom().chine("Upper chine", of(1.0, 0.8), of(0.6, 0.2)),
            "line 5 station 1 (half-breadth 800 mm, height 200 mm) lies inboard of or below Chine"
                + " (half-breadth 900 mm, height 300 mm); the two lines cross here");
    }

    @Test
    void badInput_pointsOutsideTheHull() {
        assertFaults(vBottom().waterline(-0.1, 0.1, BLANK).waterline(1.6, BLANK, 1.2).buttock(1.4, 1.0, 1.6),
            "line 5 station 0 half-breadth 100 mm, height -100 mm lies below the keel at 0 mm;"
                + " leave the cell blank where the line does not cross",
            "line 6 station 1 half-breadth 1200 mm, height 1600 mm lies above the sheer at 1500 mm;"
                + " leave the cell blank where the line does not cross",
            "line 7 station 1 half-breadth 1400 mm, height 1600 mm lies above the sheer at 1500 mm;"
                + " leave the cell blank where the line does not cross");
    }

    @Test
    void badInput_pointsOnTheWrongSideOfTheirChine() {
        assertFaults(vBottom().waterline(0.2, 0.95, 0.6).waterline(0.4, 0.93, 0.6).buttock(0.6, 0.8, 0.2),
            "line 5 station 0 half-breadth 950 mm, height 200 mm lies on the wrong side of Chine (half-breadth 900 mm, height 300 mm)",
            "line 7 station 0 half-breadth 600 mm, height 800 mm lies on the wrong side of Chine (half-breadth 900 mm, height 300 mm)",
            "line 6 station 1 half-breadth 600 mm, height 400 mm lies on the wrong side of Chine (half-breadth 900 mm, height 300 mm)");
    }

    @Test
    void badInput_linesThatRunBackwards() {
        assertFaults(vBottom().waterline(0.1, 0.6, 0.3).waterline(0.2, 0.4, 0.6),
            "line 5 station 0 half-breadth 600 mm, height 100 mm runs backwards past WL 0.2 (half-breadth 400 mm, height 200 mm);"
                + " one of the two is wrong");
    }

    /** From the buttock's point to the waterline's the skin would turn back by more than a right angle to the straight line. */
    @Test
    void badInput_waterlineAndButtockThatContradictEachOther() {
        assertFaults(new TableSketch(MILLIMETRE, 0, 1).keel(0, 0).sheer(of(1, 1), of(1, 1)).waterline(0.7, 0.5, BLANK)
                .buttock(0.6, 0.605, BLANK),
            "line 3 station 0 half-breadth 500 mm, height 700 mm runs backwards past Buttock 0.6 (half-breadth 600 mm, height 605 mm);"
                + " one of the two is wrong");
    }

    /** Half-breadths that shrink upward in the side are tumblehome and no fault, even past the sheer's. */
    @Test
    void exact_tumblehomeIsNoFault() {
        assertFaults(new TableSketch(MILLIMETRE, 0, 1)
            .keel(0, 0).chine("Chine", of(1, 1), of(0.3, 0.3)).sheer(of(0.7, 0.7), of(1.5, 1.5))
            .waterline(0.6, 1.1, 1.05).waterline(0.9, 1.05, 1.0).waterline(1.2, 0.9, 0.9).buttock(1.02, 0.95, BLANK));
    }

    @Test
    void exact_aFaultInOneCellHidesNoneAtOtherStations() {
        List<TableFault> faults = TableFaults.of(vBottom().halfSiding(0.05, BLANK).waterline(1.6, 1, 1).table());
        assertEquals(List.of(OptionalInt.of(1), OptionalInt.of(0)), faults.stream().map(TableFault::station).toList());
    }

    private static TableSketch withKeel(LineKind siding) {
        return new TableSketch(0.001, 0, 1, 2).row(LineKind.KEEL, "Rabbet", 0, Measure.HEIGHT, 0, 0, 0)
            .row(siding, "Siding", 0, Measure.HALF_BREADTH, 0.1, 0.1, 0.1)
            .sheer(TableSketch.of(1, 1, 1), TableSketch.of(1, 1, 1));
    }

    @Test
    void badInput_rowsOfAKeelThatDoNotGoTogether() {
        assertFaults(withKeel(LineKind.RABBET).row(LineKind.KEEL_BOTTOM, "Keel bottom", 0, Measure.HEIGHT, BLANK, -0.5, -0.4));
        assertFaults(withKeel(LineKind.RABBET).row(LineKind.KEEL_BOTTOM, "Keel bottom", 0, Measure.HEIGHT, -0.5, BLANK, 0.4),
            "line 4 station 1 blank; Keel bottom must be given from where the keel begins to where it ends",
            "line 4 station 2 height 400 mm is above Rabbet's 0 mm");
        assertFaults(withKeel(LineKind.HALF_SIDING).row(LineKind.KEEL_BOTTOM, "Keel bottom", 0, Measure.HEIGHT, -0.5, -0.5, -0.4),
            "line 4 Keel bottom is given, but not how wide the keel is where the skin meets it; add \"Half-siding at rabbet\" to the half-breadths");
    }
}
