package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Tables that nobody can use, given to the program as it is installed: one message, soon, in little memory. */
class SpoiltTableIT {
    private static final String LARGEST = "; a table has 500 stations and 200 lines at most";
    private static final String QUOTE = "a quoted cell begins here or below and is not closed, or text stands behind its closing"
        + " quote; quote a cell as \"…\", a quote within it as \"\"";
    /** Processor time [s]; a fraction of one is used. Reached only by work that never ends. */
    private static final int MOST_SECONDS = 20;

    @TempDir
    private Path folder;
    private Path table;

    @BeforeEach
    void name() {
        table = folder.resolve("boat.csv");
    }

    static Stream<Arguments> texts() {
        return Stream.of(
            Arguments.of("1 station", inColumns(1), ": the table has 1 station(s); three are the least"),
            Arguments.of("2 stations", inColumns(2), ": the table has 2 stations; three are the least, for between two nothing tells"
                + " how the skin curves along the boat"),
            Arguments.of("501 stations", inColumns(501), ": the table has 501 stations; 500 are the most"),
            Arguments.of("10,000 stations in columns", inColumns(10_000), ":2: this line has more than 2000 cells" + LARGEST),
            Arguments.of("10,000 stations in rows", inRows(10_000), ": the file has more than 4000 lines" + LARGEST),
            Arguments.of("10,000 lines", inColumns(3) + "WL 5,1,1,1\n".repeat(10_000), ": the file has more than 4000 lines" + LARGEST),
            Arguments.of("8 MB of commas", inColumns(3) + ("Note" + ",".repeat(1990) + "\n").repeat(3900),
                ": the file has more than 500000 cells, empty ones included" + LARGEST),
            Arguments.of("8 MB in a cell", inColumns(3).replace("Keel", "K".repeat(8_000_000)),
                ":6: column 1: \"" + "K".repeat(80) + "…\" has 8000000 characters; a cell has 1000 at most"),
            Arguments.of("8 MB of digits", inColumns(3).replace("Keel,0", "Keel,0." + "1".repeat(8_000_000)),
                ":6: column 2: \"0." + "1".repeat(78) + "…\" has 8000002 characters; a cell has 1000 at most"),
            Arguments.of("8 MB of blanks", " ".repeat(8_000_000) + "x\n", ": no line begins with \"Station\" and then , or ; or a tab;"
                + " write the stations in such a line, or head a column with it"),
            Arguments.of("quote in the first cell", "\"" + inColumns(3), ":1: " + QUOTE),
            Arguments.of("quote in the middle", inColumns(3).replace("Keel,0,0", "Keel,0,\"0"), ":6: " + QUOTE),
            Arguments.of("quote in the last cell", inColumns(3) + "\"", ":9: " + QUOTE),
            Arguments.of("quote closed too early", inColumns(3).replace("Keel,0,0", "Keel,\"0\"-1,0"), ":6: " + QUOTE));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("texts")
    void tellsWhatIsWrongWithTheText(String kind, String text, String message) throws Exception {
        Files.writeString(table, text, StandardCharsets.UTF_8);
        assertRefused(message);
    }

    static Stream<Arguments> encodings() {
        return Stream.of(
            Arguments.of("UTF-16LE", "\uFEFF", ": the text is UTF-16; save it as CSV in UTF-8"),
            Arguments.of("UTF-16BE", "\uFEFF", ": the text is UTF-16; save it as CSV in UTF-8"),
            Arguments.of("UTF-16LE", "", ":1: a zero byte stands here; the file is UTF-16 or no text; save it as CSV in UTF-8"),
            Arguments.of("UTF-16BE", "", ":1: a zero byte stands here; the file is UTF-16 or no text; save it as CSV in UTF-8"),
            Arguments.of("UTF-32LE", "\uFEFF", ": the text is UTF-32; save it as CSV in UTF-8"),
            Arguments.of("ISO-8859-1", "Title,B\u00e4r\n", ":1: the byte 0xE4 is not UTF-8; save the file as CSV in UTF-8"),
            Arguments.of("windows-1252", "Title,1\u20132\n", ":1: the byte 0x96 is not UTF-8; save the file as CSV in UTF-8"));
    }

    @ParameterizedTest(name = "{0} beginning with {1}")
    @MethodSource("encodings")
    void tellsAWrongEncoding(String encoding, String beginning, String message) throws Exception {
        Files.write(table, (beginning + inColumns(3)).getBytes(Charset.forName(encoding)));
        assertRefused(message);
    }

    /** A gigabyte that takes no room on the disk: a table, and nothing behind it. */
    @Test
    void tellsAGigabyteWithoutReadingIt() throws Exception {
        try (RandomAccessFile file = new RandomAccessFile(table.toFile(), "rw")) {
            file.write(inColumns(3).getBytes(StandardCharsets.UTF_8));
            file.setLength(1L << 30);
        }
        assertRefused(": the file has 1073741824 bytes; 8388608 are the most that are read");
    }

    @Test
    void readsAnEndlessStreamOnlyAsFarAsATableMayReach() throws Exception {
        Shell shell = shell("yes 0,1,2,3 | \"$0\" table /dev/stdin");
        assertEquals(new Shell(3, "", "/dev/stdin: more than 8388608 bytes come from it, the most that are read\n"), shell);
    }

    /** More points than can be drawn: the figure, and what works. */
    @Test
    void refusesMoreThanCanBeDrawn() throws Exception {
        StringBuilder table = new StringBuilder(inColumns(500).replace("HALF-BREADTHS\n", ""));
        String heights = table.substring(0, table.indexOf("Sheer,90"));
        StringBuilder buttocks = new StringBuilder();
        for (int i = 1; i <= 80; i++) {
            int z = 10 * i;
            buttocks.append("Buttock ").append(i).append(',').append(each(500, station -> z - 5)).append('\n');
        }
        Files.writeString(folder.resolve("boat.csv"), heights + buttocks + "HALF-BREADTHS\nSheer," + each(500, i -> 90) + "\n");
        Shell shell = shell("exec \"$0\" table boat.csv");
        assertEquals(3, shell.code(), shell.toString());
        assertTrue(shell.err().startsWith("boat.csv: 500 stations with up to 82 points from Keel to Sheer are more than can "
            + "be drawn within rounding"), shell.err());
    }

    private void assertRefused(String message) throws Exception {
        assertEquals(new Shell(3, "", "boat.csv" + message + "\n"), shell("exec \"$0\" table boat.csv"));
    }

    private Shell shell(String command) throws Exception {
        return BuiltFolder.run(folder, Map.of("GARBOARD_HEAP", "256m"), "sh", "-c", "ulimit -t " + MOST_SECONDS + "; " + command, BuiltFolder.LAUNCHER);
    }

    private static String inColumns(int stations) {
        return "Units,mm,to outside of skin\n"
            + "Station," + each(stations, i -> i) + "\nx," + each(stations, i -> 100 * i)
            + "\nHEIGHTS\nSheer," + each(stations, i -> 800) + "\nKeel," + each(stations, i -> 0)
            + "\nHALF-BREADTHS\nSheer," + each(stations, i -> 90) + "\n";
    }

    private static String each(int stations, IntUnaryOperator value) {
        return IntStream.range(0, stations).map(value).mapToObj(Integer::toString).collect(Collectors.joining(","));
    }

    private static String inRows(int stations) {
        return "Units,mm,to outside of skin\nStation,x,HEIGHTS,Sheer,Keel,HALF-BREADTHS,Sheer\n"
            + IntStream.range(0, stations).mapToObj(i -> i + "," + 500 * i + ",,800,0,,90\n").collect(Collectors.joining());
    }
}
