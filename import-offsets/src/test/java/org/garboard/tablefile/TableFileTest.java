package org.garboard.tablefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.PanelName;
import org.garboard.offsets.PanelOffsets;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.SkinThickness;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TableFileTest {

    /** The table as books print it; values converted by hand: ft * 304.8 + in * 25.4 + eighths * 3.175 mm. */
    @Test
    void exact_tableAsBooksPrintIt() {
        OffsetTable table = Tables.read(Tables.resource("outboard-24.csv"));
        assertEquals("Outboard 24", table.title());
        assertEquals(SkinSurface.OUTSIDE_OF_SKIN, table.surface());
        assertEquals(0.0015875, table.leastCount(), "0-10-5+ makes it a sixteenth");
        assertEquals(7, table.stations().size());
        assertEquals(new Station("3", 3.6576), table.stations().get(3));
        assertEquals(List.of("Sheer", "Chine", "Buttock 1-0-0", "Keel", "Sheer", "Chine", "WL 1-0-0"),
            table.lines().stream().map(TableLine::name).toList());
        TableLine sheer = table.lines().get(0);
        assertEquals(LineKind.SHEER, sheer.kind());
        assertEquals(Measure.HEIGHT, sheer.measure());
        assertEquals(1.47955, sheer.at(0).orElseThrow());
        TableLine buttock = table.lines().get(2);
        assertEquals(LineKind.BUTTOCK, buttock.kind());
        assertEquals(0.3048, buttock.level());
        assertEquals(OptionalDouble.empty(), buttock.at(0));
        assertEquals(0.2714625, buttock.at(2).orElseThrow(), 1e-15);
        TableLine waterline = table.lines().get(6);
        assertEquals(Measure.HALF_BREADTH, waterline.measure());
        assertEquals(0.130175, waterline.at(1).orElseThrow(), 1e-15);
        assertEquals(2, PanelOffsets.of(table).size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"outboard-22", "outboard-39"})
    void exact_demoTablesHaveNoFaults(String boat) {
        Path file = Path.of("..", "plugin", "src", "main", "demo", boat, "offsets.csv");
        TableReading reading = TableFile.read(file);
        OffsetTable table = assertInstanceOf(TableReading.Read.class, reading, reading::toString).table();
        assertEquals(0.003175, table.leastCount());
        assertEquals(2, PanelOffsets.of(table).size());
    }

    private static final String IN_COLUMNS = """
        TABLE OF OFFSETS;Skiff
        Units;mm;to outside of skin
        Station;0;1;2
        x;0;1000;2000
        HEIGHTS ABOVE BASE
        Sheer;900;850;800
        Chine;500;300;250
        Keel;300;100;100
        HALF-BREADTHS FROM CENTRELINE
        Sheer;100;700;900
        Chine;80;600;800
        WL 400;-;620;840
        """;

    @Test
    void exact_blocksStandInEitherOrder() {
        OffsetTable table = Tables.read("""
            TABLE OF OFFSETS;Skiff
            Units;mm;to outside of skin
            HALF-BREADTHS FROM CENTRELINE
            Station;0;1;2
            Sheer;100;700;900
            Chine;80;600;800
            WL 400;-;620;840
            HEIGHTS ABOVE BASE
            Station;0;1;2
            Sheer;900;850;800
            Chine;500;300;250
            Keel;300;100;100
            Distance from 0;0;1000;2000
            """);
        List<TableLine> lines = Tables.read(IN_COLUMNS).lines();
        assertEquals(List.of(lines.get(3), lines.get(4), lines.get(5), lines.get(0), lines.get(1), lines.get(2)), table.lines());
    }

    @Test
    void exact_stationsInRowsUnderBlockHeadings() {
        assertEquals(Tables.read(IN_COLUMNS), Tables.read("""
            TABLE OF OFFSETS;Skiff;;;;;;
            Units;mm;to outside of skin;;;;;
            ;;HEIGHTS ABOVE BASE;;;HALF-BREADTHS FROM CENTRELINE;;
            Station;x;Sheer;Chine;Keel;Sheer;Chine;WL 400
            0;0;900;500;300;100;80;—
            1;1000;850;300;100;700;600;620
            2;2000;800;250;100;900;800;840
            """));
    }

    @Test
    void exact_stationsInRowsWithTheHeadingsAmongTheNames() {
        assertEquals(Tables.read(IN_COLUMNS), Tables.read("""
            TABLE OF OFFSETS;Skiff
            Units;mm;to outside of skin
            Station;Distance from 0;HEIGHTS ABOVE BASE;Sheer;Chine;Keel;HALF-BREADTHS FROM CENTRELINE;Sheer;Chine;WL 400
            0;0;;900;500;300;;100;80;
            1;1000;;850;300;100;;700;600;620
            2;2000;;800;250;100;;900;800;840
            """));
    }

    @Test
    void exact_stationsInRowsOneBlockBelowTheOther() {
        assertEquals(Tables.read(IN_COLUMNS), Tables.read("""
            TABLE OF OFFSETS;Skiff
            Units;mm;to outside of skin
            Heights
            Station;Sheer;Chine;Keel
            0;900;500;300
            1;850;300;100
            2;800;250;100

            Half-breadths
            Station;x;Sheer;Chine;WL 400
            0;0;100;80;
            1;1000;700;600;620
            2;2000;900;800;840
            """));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "mm | 0.001  | 450",
        "millimetres | 0.001 | 450",
        "cm | 0.01   | 45",
        "m  | 0.01   | 0.45",
        "ft | 0.3048 | 2",
        "in | 0.0254 | 18",
        "Feet-inches-eighths | 0.003175 | 1-6-0",
    })
    void exact_unitsOfTheHeading(String unit, double leastCount, String sheer) {
        OffsetTable table = Tables.read("""
            Units,%2$s,outside of planking
            Station,0,1,2
            x,0,2 m,4 m
            Heights
            Sheer,%1$s,%1$s,%1$s
            Keel,0,0,0
            Half-breadths
            Sheer,%1$s,%1$s,%1$s
            """.formatted(sheer, unit));
        assertEquals(leastCount, table.leastCount(), 1e-15);
        assertEquals(2.0, table.stations().get(1).x());
    }

    @Test
    void exact_decimalCommaAndTab() {
        OffsetTable table = Tables.read("Units\tm\tto outside of skin\nStation\t0\t1\t2\nx\t-0,5\t1\t2\nHeights\n"
            + "Sheer\t1,25\t1,2\t1,2\nKeel\t0\t0,05\t0,05\nHalf-breadths\nSheer\t0,5\t0,6\t0,6\n");
        assertEquals(-0.5, table.stations().get(0).x());
        assertEquals(1.25, table.lines().get(0).at(0).orElseThrow());
        assertEquals(0.01, table.leastCount());
    }

    @Test
    void exact_spacingPlacesStationsByTheirNumbers() {
        OffsetTable table = Tables.read("""
            Units,ft,to outside of skin
            Spacing,2-0-0
            Station,0,1/2,1,2 1/2,3.5
            Heights
            Sheer,4,4,4,4,4
            Keel,0,0,0,0,0
            Half-breadths
            Sheer,2,3,3,3,3
            """);
        assertEquals(List.of(0.0, 0.3048, 0.6096, 1.524, 2.1336), table.stations().stream().map(Station::x).toList());
    }

    @Test
    void exact_severalChinesAndAFlatKeel() {
        OffsetTable table = Tables.read("""
            Units,mm,to outside of skin
            Station,0,1,2
            x,0,1000,2000
            Heights above base line
            Sheer,900,900,900
            Upper chine,600,600,600
            Chine 1,300,300,300
            Keel,0,0,0
            Half-breadths
            sheer,900,900,900
            UPPER  CHINE,800,800,800
            Chine 1,700,700,700
            Half-siding,40,50,50
            """);
        assertEquals(List.of("Keel", "Half-siding", "Chine 1", "Upper chine", "Sheer"), Stream.concat(
            Stream.of("Keel"), PanelOffsets.of(table).stream().map(PanelOffsets::upper)).toList());
    }

    @Test
    void exact_headingsThatAreNotUsedAreNotes() {
        TableReading reading = Tables.reading("""
            ,TABLE OF OFFSETS
            A skiff
            Designer,nobody
            Units,mm
            Surface,to outside of skin
            Station,0,1,2
            x,0,1000,2000
            Heights
            Sheer,900,900,900
            Keel,0,0,0
            Half-breadths
            Sheer,900,900,900
            Note,invented,for a test
            """);
        assertEquals(List.of(", TABLE OF OFFSETS", "A skiff", "Designer, nobody", "Note, invented, for a test"),
            assertInstanceOf(TableReading.Read.class, reading, reading::toString).notes());
    }

    @Test
    void exact_byteOrderMarkAndAnyLineEnding(@TempDir Path folder) throws IOException {
        OffsetTable table = Tables.read(IN_COLUMNS);
        assertEquals(table, Tables.read("\uFEFF" + IN_COLUMNS));
        assertEquals(table, Tables.read(IN_COLUMNS.replace("\n", "\r\n")));
        assertEquals(table, Tables.read(IN_COLUMNS.replace("\n", "\r")));
        Path file = Files.write(folder.resolve("skiff.csv"), IN_COLUMNS.getBytes(StandardCharsets.UTF_8));
        assertEquals(table, ((TableReading.Read) TableFile.read(file)).table());
    }

    private static SkinSurface surface(String heading) {
        return Tables.read(IN_COLUMNS.replace("Units;mm;to outside of skin", heading)).surface();
    }

    private static SkinSurface inside(SkinSurface.Covering covering, double metres) {
        return new SkinSurface.Inside(covering, new SkinThickness.Everywhere(metres));
    }

    /** 0-1-2 is an inch and two eighths. */
    @Test
    void exact_surfaceAndThickness() {
        assertEquals(inside(SkinSurface.Covering.PLANKING, 0.022), surface("Units;mm;to inside of planking;22"));
        assertEquals(inside(SkinSurface.Covering.PLANKING, 1.25 * 0.0254), surface("Units;mm;inside of planking, 0-1-2"));
        assertEquals(inside(SkinSurface.Covering.PLATING, 0.006), surface("Surface;inside of plating, 6 mm thick\nUnits;mm"));
        assertEquals(inside(SkinSurface.Covering.PLATING, 0.006), surface("All offsets to inside of the plating (6 mm)\nUnits;mm"));
        assertEquals(inside(SkinSurface.Covering.SKIN, 0.012), surface("Units;mm;inside of skin\nThickness;1,2 cm"));
        assertEquals(SkinSurface.OUTSIDE_OF_SKIN, surface("Units;mm;to outside of planking"));
    }

    @Test
    void exact_thicknessByPanel() {
        SkinSurface expected = new SkinSurface.Inside(SkinSurface.Covering.PLANKING, new SkinThickness.ByPanel(List.of(
            new SkinThickness.OfPanel(new PanelName("Keel", "Chine"), 0.032),
            new SkinThickness.OfPanel(new PanelName("Chine", "Sheer"), 0.025))));
        String heading = "Units;mm;to inside of planking\n";
        assertEquals(expected, surface(heading + "Thickness;Keel to Chine;32 mm;Chine to Sheer;25"));
        assertEquals(expected, surface(heading + "Planking thickness;chine to  sheer;25\nPlanking thickness;Keel to Chine;32"));
        assertEquals("the inside of the planking, 32 mm thick from Keel to Chine, 25 mm thick from Chine to Sheer", expected.words());
    }

    private static final String FROM_AFT = """
        Units;mm;to outside of skin
        Stations from;aft
        Station;0;1;2
        Distance from 0;0;1000;2500
        HEIGHTS ABOVE BASE
        Sheer;800;850;900
        Chine;250;300;500
        Keel;100;100;300
        HALF-BREADTHS FROM CENTRELINE
        Sheer;900;700;100
        Chine;800;600;80
        WL 400;840;620;-
        """;

    /** x runs aft from the forward-most station, 2500 forward of station 0. */
    @Test
    void exact_stationsFromAft() {
        OffsetTable table = Tables.read(FROM_AFT);
        assertEquals(List.of(new Station("2", 0), new Station("1", 1.5), new Station("0", 2.5)), table.stations());
        assertEquals(Tables.read(IN_COLUMNS).lines(), table.lines());
        assertEquals("station 2", table.origin());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Distance from aft", "Distance from AP", "Distance from A.P.", "Distance from the transom",
        "Distance forward of 0", "Distance forward of station 0", "Distances from the after perpendicular"})
    void exact_labelOfTheDistancesSaysThatTheyAreFromAft(String label) {
        assertEquals(Tables.read(FROM_AFT), Tables.read(FROM_AFT.replace("Stations from;aft\n", "").replace("Distance from 0", label)));
        assertEquals(Tables.read(FROM_AFT), Tables.read(FROM_AFT.replace("from;aft", "from;forward").replace("Distance from 0", label)),
            "numbered from forward, measured from aft");
    }

    /** The label goes before the heading, which then speaks of the numbers alone. */
    @ParameterizedTest
    @ValueSource(strings = {"Distance from forward", "Distance from FP", "Distance from the stem", "Distance aft of 0", "Distance aft"})
    void exact_labelOfTheDistancesSaysThatTheyAreFromForward(String label) {
        OffsetTable table = Tables.read(IN_COLUMNS.replace("Station;", "Stations from;aft\nStation;").replace("x;0", label + ";0"));
        assertEquals(Tables.read(IN_COLUMNS).stations(), table.stations());
    }

    @Test
    void exact_stationsFromAftListedFromForward() {
        String listed = FROM_AFT.replace("Station;0;1;2", "Station;2;1;0").replace("0;0;1000;2500", "0;2500;1000;0")
            .replace("800;850;900", "900;850;800").replace("250;300;500", "500;300;250").replace("100;100;300", "300;100;100")
            .replace("900;700;100", "100;700;900").replace("800;600;80\n", "80;600;800\n").replace("840;620;-", "-;620;840");
        assertEquals(Tables.read(FROM_AFT), Tables.read(listed));
    }

    @Test
    void exact_spacingOfStationsNumberedFromAft() {
        OffsetTable table = Tables.read(FROM_AFT.replace("Distance from 0;0;1000;2500", "Spacing;1200"));
        assertEquals(List.of(new Station("2", 0), new Station("1", 1.2), new Station("0", 2.4)), table.stations());
    }

    @Test
    void exact_statedOrigin() {
        assertEquals(List.of(new Station("2", -1.5), new Station("1", 0), new Station("0", 1)),
            Tables.read("Origin;station 1\n" + FROM_AFT).stations());
        assertEquals(List.of(new Station("0", -1), new Station("1", 0), new Station("2", 1)),
            Tables.read("x from;1\n" + IN_COLUMNS).stations());
        assertEquals("station 1", Tables.read("x from;1\n" + IN_COLUMNS).origin());
        assertEquals("the origin",
            Tables.read(IN_COLUMNS.replace("x;0;1000", "x;100;1000")).origin());
    }

    @Test
    void exact_stationsFromAftInRows() {
        assertEquals(Tables.read(FROM_AFT), Tables.read("""
            Units;mm;to outside of skin
            Station;Distance from AP;HEIGHTS;Sheer;Chine;Keel;HALF-BREADTHS;Sheer;Chine;WL 400
            0;0;;800;250;100;;900;800;840
            1;1000;;850;300;100;;700;600;620
            2;2500;;900;500;300;;100;80;
            """));
    }
}
