package org.garboard.tablefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.garboard.reader.OutsideReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Spreadsheets written by openpyxl (Debian package python3-openpyxl) read as the CSV that they were made of. */
class SpreadsheetTest {
    private static final String TABLE = """
        TABLE OF OFFSETS,Workboat 5
        Units,mm,to outside of skin
        Station,0,1,2,3
        Distance from 0,0,1500,3000,5000
        HEIGHTS ABOVE BASE
        Sheer,1210,1090.5,1010,980
        Chine,720,430,330,310
        Buttock 300,700,210,120,110
        Keel,520,90,10,0
        HALF-BREADTHS FROM CENTRELINE
        Sheer,420,860,980,960
        Chine,330,760,880,870
        WL 600,,795,905,890
        """;
    private static final String TAKE_OFF = """
        TAKE-OFF,Workboat
        Units,mm,to outside of skin
        Datum,transom,300
        Distances,forward of datum
        Trim from,straight keel,1,3
        Station,Distance,Side,Mark,Out,Height
        1,3000,centre,Keel,0,300
        1,,port,Chine,1000,600
        1,,starboard,Chine,1000,600
        2,2000,centre,Keel,0,300
        2,,port,Chine,1000,600
        2,,starboard,Chine,1000,600
        3,1000,centre,Keel,0,300
        3,,port,Chine,1000,600
        3,,starboard,Chine,1000,600
        """;

    @TempDir
    private Path folder;

    private TableReading read(String csv, String sheet, String... changes) throws Exception {
        Path source = Files.writeString(folder.resolve("source.csv"), csv);
        Path script = folder.resolve("csv_to_xlsx.py");
        try (InputStream in = SpreadsheetTest.class.getResourceAsStream("csv_to_xlsx.py")) {
            Files.write(script, in.readAllBytes());
        }
        Path made = folder.resolve("boat.xlsx");
        List<String> arguments = new ArrayList<>(List.of(script.toString(), source.toString(), made.toString(), sheet));
        arguments.addAll(List.of(changes));
        OutsideReader.OPENPYXL.require();
        assertEquals(new OutsideReader.Answer(0, ""), OutsideReader.OPENPYXL.run(arguments));
        return TableFile.read("boat.xlsx", Files.readAllBytes(made));
    }

    private static TableReading csv(String text) {
        return TableFile.read("boat.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> faults(TableReading reading) {
        assertTrue(reading instanceof TableReading.Faulty, "read without fault");
        return ((TableReading.Faulty) reading).problems().stream().map(TableProblem::message).toList();
    }

    @Test
    void law_theSameTableAsTheCsv() throws Exception {
        for (String sheet : List.of("FIRST", "Table of offsets", "offsets")) {
            assertEquals(((TableReading.Read) csv(TABLE)).table(), ((TableReading.Read) read(TABLE, sheet)).table());
        }
    }

    @Test
    void law_theSameTakeOffAsTheCsv() throws Exception {
        assertEquals(((TableReading.TakenOff) csv(TAKE_OFF)).offsets(), ((TableReading.TakenOff) read(TAKE_OFF, "Take-off")).offsets());
    }

    @Test
    void law_feetInchesEighthsStandAsText() throws Exception {
        String eighths = TABLE.replace("Units,mm", "Units,feet-inches-eighths").replaceAll("(?<=,)([0-9]+)(?:\\.5)?(?=[,\n])", "$1 mm")
            .replace("Station,0 mm,1 mm,2 mm,3 mm", "Station,0,1,2,3").replace("Buttock 300", "Buttock 1-0-0").replace("WL 600", "WL 600 mm")
            .replace(",110 mm", ",0-4-3");
        assertEquals(((TableReading.Read) csv(eighths)).table(), ((TableReading.Read) read(eighths, "offsets")).table());
    }

    @Test
    void aDateIsToldWithTheWayToEnterIt() throws Exception {
        assertEquals(List.of("boat.xlsx, cell C6: \"46115\" is a date: the spreadsheet program has turned what was typed into one, as it"
            + " does with 2-3-4; format the cell as Text first and then type it anew, or put an apostrophe before it, '2-3-4"),
            faults(read(TABLE, "offsets", "C6=date:2026-04-03")));
    }

    @Test
    void aFormulaThatWasNeverWorkedOutIsTold() throws Exception {
        assertEquals(List.of("boat.xlsx, cell D7: \"=C7-100\" has never been worked out; open the file in the spreadsheet program, save it"
            + " there, or write the value itself"), faults(read(TABLE, "offsets", "D7==C7-100")));
    }

    @Test
    void faultsNameTheCell() throws Exception {
        assertEquals(List.of("boat.xlsx, cell B7, station 0, Chine: height \"72O\" has the unit \"O\", which is not known; write m, mm, cm,"
            + " ft or in, or 2-3-4 (ft-in-eighths)"), faults(read(TABLE, "offsets", "B7=72O")));
        assertEquals(List.of("boat.xlsx, cell C8, station 1: side \"left\" is none; write port, starboard, or centre for a keel that stands"
            + " over the line"), faults(read(TAKE_OFF, "Take-off", "C8=left")));
    }

    /** What breaks a line, or steers a terminal, is shown by its number. */
    @Test
    void aLineBreakInACellIsShown() throws Exception {
        assertEquals(List.of("boat.xlsx, cell B7, station 0, Chine: height \"3<U+000A>10-6\" is not a length; write a number such as 1.28 m,"
            + " or 4-2-3 (ft-in-eighths)"), faults(read(TABLE, "offsets", "B7=3\n10-6")));
    }
}
