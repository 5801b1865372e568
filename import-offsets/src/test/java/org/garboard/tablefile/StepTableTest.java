package org.garboard.tablefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.garboard.offsets.EndPoint;
import org.garboard.offsets.Ends;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.StationRun;
import org.garboard.offsets.StemLine;
import org.junit.jupiter.api.Test;

/** Steps and transoms as a yard writes them, and every message about them in full. */
class StepTableTest {
    private static final String IN_COLUMNS = """
        TABLE OF OFFSETS,Stepped
        Units,mm,to outside of skin
        Station,0,1,2,3,3 aft,4,5
        Distance from 0,0,2000,4000,5000,5000,6000,7500
        HEIGHTS ABOVE BASE
        Sheer,1500,1500,1500,1500,1500,1500,1500
        Chine,250,250,250,250,300,300,300
        Keel,0,0,0,0,50,50,50
        HALF-BREADTHS FROM CENTRELINE
        Sheer,1200,1200,1200,1200,1200,1200,1200
        Chine,1000,1000,1000,1000,1000,1000,1000
        """;
    private static final String IN_ROWS = """
        TABLE OF OFFSETS,Stepped
        Units,mm,to outside of skin
        HEIGHTS ABOVE BASE
        Station,Distance from 0,Sheer,Chine,Keel
        0,0,1500,250,0
        1,2000,1500,250,0
        2,4000,1500,250,0
        3,5000,1500,250,0
        3 aft,5000,1500,300,50
        4,6000,1500,300,50
        5,7500,1500,300,50
        HALF-BREADTHS FROM CENTRELINE
        Station,Sheer,Chine
        0,1200,1000
        1,1200,1000
        2,1200,1000
        3,1200,1000
        3 aft,1200,1000
        4,1200,1000
        5,1200,1000
        """;

    private static String with(String row) {
        return IN_COLUMNS.replace("HEIGHTS", row + "\nHEIGHTS");
    }

    private static void assertProblems(String file, String... messages) {
        assertEquals(String.join("\n", messages), Tables.problems(file));
    }

    private static EndPoint end(String line, LineKind kind, double level, double x) {
        return new EndPoint(line, kind, level, x);
    }

    @Test
    void exact_twoStationsAtOneDistanceAreAStep() {
        OffsetTable table = Tables.read(IN_COLUMNS);
        assertEquals(List.of(new StationRun(0, 4), new StationRun(4, 7)), table.lengths());
        assertEquals(Ends.SQUARE, table.ends());
        assertTrue(table.isAfterFace(4));
        assertEquals(Math.nextUp(5.0), table.skinAt(4));
        assertEquals(table, Tables.read(IN_ROWS));
    }

    /** 3 aft has the number 3: a spacing places both faces. */
    @Test
    void exact_spacingPlacesBothFaces() {
        OffsetTable table = Tables.read(IN_COLUMNS.replace("Distance from 0,0,2000,4000,5000,5000,6000,7500", "Spacing,1500"));
        assertEquals(4.5, table.stations().get(3).x());
        assertEquals(4.5, table.stations().get(4).x());
        assertEquals("3 aft", table.stations().get(4).name());
    }

    /** Measured from aft, and written from aft forward: first the after face, then the forward one. */
    @Test
    void exact_fromAft() {
        OffsetTable table = Tables.read("""
            TABLE OF OFFSETS,Stepped
            Units,mm,to outside of skin
            Step at,B,Keel,2600,Chine,2300
            Station,0,A,B,B fore,2,3,4
            Distance from aft,0,1500,2500,2500,3500,5500,7500
            HEIGHTS ABOVE BASE
            Sheer,1500,1500,1500,1500,1500,1500,1500
            Chine,300,300,300,250,250,250,250
            Keel,50,50,50,0,0,0,0
            HALF-BREADTHS FROM CENTRELINE
            Sheer,1200,1200,1200,1200,1200,1200,1200
            Chine,1000,1000,1000,1000,1000,1000,1000
            """);
        assertEquals(List.of("4", "3", "2", "B fore", "B", "A", "0"), table.stations().stream().map(s -> s.name()).toList());
        assertEquals(5, table.stations().get(3).x());
        assertEquals(List.of(end("Keel", LineKind.KEEL, 0, 4.9), end("Chine", LineKind.CHINE, 0, 5.2)),
            table.ends().step(4).orElseThrow().points());
    }

    @Test
    void exact_linesOfStepAndTransom() {
        OffsetTable table = Tables.read(with("Step at,3,Keel,5200,Buttock 400,5100,Chine,4800\n"
            + "Transom,Keel,7500,WL 900,7650,Sheer,7800,Round,60"));
        assertEquals(List.of(end("Keel", LineKind.KEEL, 0, 5.2), end("Buttock 400", LineKind.BUTTOCK, 0.4, 5.1),
            end("Chine", LineKind.CHINE, 0, 4.8)), table.ends().step(4).orElseThrow().points());
        assertEquals(List.of(end("Keel", LineKind.KEEL, 0, 7.5), end("WL 900", LineKind.WATERLINE, 0.9, 7.65),
            end("Sheer", LineKind.SHEER, 0, 7.8)), table.ends().transom().orElseThrow().points());
        assertEquals(0.06, table.ends().transom().orElseThrow().round());
        assertEquals(table, Tables.read(with("Step at 3 aft,Keel,5200,Buttock 400,5100,Chine,4800\n"
            + "Transom,Keel,7500,WL 900,7650,Round in plan,60,Sheer,7800")));
    }

    @Test
    void badInput_aStationTwiceWithTheSameValues() {
        assertProblems(IN_COLUMNS.replace("250,300,300,300", "250,250,300,300").replace("0,0,0,0,50,50,50", "0,0,0,0,0,50,50"),
            "boat.csv:4, station 3 aft: column 6: \"5000\" stands here: station 3 aft stands where station 3 does and has the"
                + " same values; two stations at one place are the two faces of a step; leave one of them out, or give each"
                + " face its own values");
    }

    @Test
    void badInput_aStepTheWrongWay() {
        assertProblems(IN_COLUMNS.replace("Keel,0,0,0,0,50,50,50", "Keel,0,0,0,60,50,50,50"),
            "boat.csv:8, station 3 aft, Keel: column 6: \"50\" stands here: the step goes the wrong way: its after face stands at"
                + " 50 mm here, below the forward face's 60 mm, and would catch the water; the after face of a step is the higher one");
    }

    @Test
    void badInput_aLengthOfTwoStations() {
        assertProblems(IN_COLUMNS.replace(",4,5\n", ",5\n").replace("5000,6000,", "5000,").replaceAll("(?m)(,\\d+),\\d+$", "$1")
                .replace("Distance from 0,0,2000,4000,5000,5000", "Distance from 0,0,2000,4000,5000,5000,7500"),
            "boat.csv:4, station 3 aft: column 6: \"5000\" stands here: the length from station 3 aft to station 5 has 2 stations"
                + " of its own, and three are the least, for between two nothing tells how the skin curves along it; add one"
                + " between them");
    }

    @Test
    void badInput_linesOfSteps() {
        assertProblems(with("Step at,4,Keel,5200,Chine,4800"),
            "boat.csv:5: column 2: \"4\" names no step; the steps of this table are at station 3");
        assertProblems(with("Step at,3,Keel,5200,Chine"),
            "boat.csv:5: column 1: \"Step at\" has 3 cell(s) for lines and distances behind it; write each line and behind it the"
                + " distance at which it ends, as Keel, 8000, Chine, 7600");
        assertProblems(with("Step at,3,Keel,5200,Chin,4800"),
            "boat.csv:5: column 5: \"Chin\" is no line of this table at which the skin can end; write Keel, a chine or Sheer as"
                + " they are called in the table, a Buttock with its distance or a WL with its height");
        assertProblems(with("Step at,3,Keel,5200,Chine,4.8x"),
            "boat.csv:5, Chine: column 6: distance \"4.8x\" has the unit \"x\", which is not known; write m, mm, cm, ft or in, or 2-3-4"
                + " (ft-in-eighths)");
        assertProblems(with("Step at,3,Chine,4800,Buttock 300,5000"),
            "boat.csv:5: column 3: \"Chine\" is the first place of a step's line; begin at the keel",
            "boat.csv:5: column 5: \"Buttock 300\" lies inboard of the place before it; give the line of a step from the keel outward");
        assertProblems(with("Step at,3,Keel,5200,Sheer,4800"),
            "boat.csv:5: column 5: \"Sheer\" is no line of the bottom; a step is given at the keel, at buttocks and at the chine");
    }

    /** The length ahead is drawn on by half of its last gap of 1000 mm, the one abaft forward by half of its first. */
    @Test
    void badInput_aStepsLineOffItsStations() {
        assertProblems(with("Step at,3,Keel,5501,Chine,4499"),
            "boat.csv:5, Keel: column 4: distance \"5501\" lies off the stations of the step at station 3, which tell of the skin"
                + " from 4500 mm to 5500 mm; compare the distance, or put a station nearer",
            "boat.csv:5, Chine: column 6: distance \"4499\" lies off the stations of the step at station 3, which tell of the skin"
                + " from 4500 mm to 5500 mm; compare the distance, or put a station nearer");
    }

    @Test
    void badInput_transoms() {
        assertProblems(with("Transom,Keel,7500,Sheer,8400"),
            "boat.csv:5, Sheer: column 5: distance \"8400\" lies off the stations of the transom, which tell of the skin from"
                + " 6000 mm to 8250 mm; compare the distance, or put a station nearer");
        assertProblems(with("Transom,Sheer,7800,Keel,7500"),
            "boat.csv:5: column 4: \"Keel\" stands no higher than the place before it; give the transom from the keel up");
        assertProblems(with("Transom,Keel,7500,Sheer,7800,Round,-5"),
            "boat.csv:5, transom: column 7: round \"-5\" is negative; write how far the middle stands abaft of the sides");
        assertProblems(with("Transom,Keel,7500"),
            "boat.csv:5: column 2: \"Keel\" is the only place at which the transom is given; give it at the keel and at the sheer at least");
    }

    @Test
    void badInput_stepsOnATableToTheInside() {
        assertProblems(IN_COLUMNS.replace("to outside of skin", "to inside of planking,30 mm"),
            "boat.csv: the table is drawn to the inside of the planking, 30 mm thick and has a step; the outside of a stepped"
                + " bottom cannot be drawn from its inside yet; give offsets to outside of skin");
    }

    @Test
    void exact_lineOfAStem() {
        OffsetTable table = Tables.read(with("Stem,Keel,-80,WL 600,-190,Sheer,-420"));
        assertEquals(new StemLine(List.of(end("Keel", LineKind.KEEL, 0, -0.08), end("WL 600", LineKind.WATERLINE, 0.6, -0.19),
            end("Sheer", LineKind.SHEER, 0, -0.42)), 0), table.ends().stem().orElseThrow());
        assertEquals(table, Tables.read(IN_ROWS.replace("HEIGHTS", "Stem,Keel,-80,WL 600,-190,Half-siding,0,Sheer,-420\nHEIGHTS")));
        OffsetTable sided = Tables.read(with("Stem,Keel,-80,Sheer,-420,Half-siding,15") + "Half-siding,15,15,15,15,15,15,15\n");
        assertEquals(0.015, sided.ends().stem().orElseThrow().halfSiding());
    }

    @Test
    void stemsThatCannotBe() {
        assertProblems(with("Stem,Keel,0,Sheer,-420"), "boat.csv:5, Keel: column 3: distance \"0\" does not lie forward of station 0,"
            + " which stands at 0 mm; a stem is given where the skin goes on ahead of the first station; where the keel line rises into it"
            + " within the stations, leave the row out");
        assertProblems(with("Stem,Keel,-80,Sheer,-4420"), "boat.csv:5, Sheer: column 5: distance \"-4420\" lies farther forward of station 0"
            + " than the second station behind it lies aft; the skin is drawn on to the stem from -4000 mm at the farthest; compare the"
            + " distance, or put a station nearer to the stem");
        assertProblems(with("Stem,WL 600,-80,Sheer,-420"), "boat.csv:5: column 2: \"WL 600\" is the first place of the stem;"
            + " begin where the keel line ends on it");
        assertProblems(with("Stem,Keel,-80,WL 900,-420"), "boat.csv:5: column 4: \"WL 900\" is the last place of the stem; end at the Sheer");
        assertProblems(with("Stem,Keel,-80,WL 900,-420,WL 600,-200,Sheer,-500"), "boat.csv:5: column 6: \"WL 600\" stands no higher than"
            + " the place before it; give the stem from the keel up");
        assertProblems(with("Stem,Keel,-80,Sheer,-420,Half-siding,15"), "boat.csv:5: column 1: \"Stem\" has a half-siding, and the keel has"
            + " none: the skin would begin on the centreline at the keel and beside it at the stem; add a row Half-siding for the keel,"
            + " or leave it out here");
        assertProblems(with("Stem,Keel,-80,Buttock 300,-100,Sheer,-420"), "boat.csv:5: column 4: \"Buttock 300\" is no place of a stem; it is"
            + " given at Keel, chines, Sheer and at waterlines with their heights");
    }
}
