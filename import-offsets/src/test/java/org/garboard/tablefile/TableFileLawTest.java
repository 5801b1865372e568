package org.garboard.tablefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.PanelOffsets;

class TableFileLawTest {

    /** The same offsets, written with any mark between the cells, either way round, in mm or in metres. */
    @Property(tries = 200)
    void law_anyWayOfWritingReadsTheSame(
            @ForAll @Size(min = 3, max = 8) List<@IntRange(min = 1, max = 400) Integer> halfBreadths,
            @ForAll @IntRange(min = 0, max = 2) int mark) {
        List<List<String>> rows = rows(halfBreadths);
        List<List<String>> turned = turned(rows);
        String between = List.of(",", ";", "\t").get(mark);
        OffsetTable table = Tables.read(heading("mm", between) + csv(rows, between, ""));
        assertEquals(halfBreadths.get(0) / 1000.0, table.lines().get(3).at(0).orElseThrow());
        assertEquals(table, Tables.read(heading("mm", between) + csv(turned, between, "")));
        OffsetTable metres = Tables.read(heading("m", between) + csv(rows, between, " mm"));
        assertEquals(table.lines(), metres.lines());
    }

    private static String heading(String unit, String mark) {
        return String.join(mark, "Units", unit, "to outside of skin") + "\n";
    }

    private static List<List<String>> rows(List<Integer> halfBreadths) {
        List<String> stations = new ArrayList<>(List.of("Station"));
        List<String> x = new ArrayList<>(List.of("x"));
        List<String> heights = new ArrayList<>(List.of("HEIGHTS"));
        List<String> sheerHeights = new ArrayList<>(List.of("Sheer"));
        List<String> keel = new ArrayList<>(List.of("Keel"));
        List<String> buttock = new ArrayList<>(List.of("Buttock 200 mm"));
        List<String> breadths = new ArrayList<>(List.of("HALF-BREADTHS"));
        List<String> sheer = new ArrayList<>(List.of("Sheer"));
        for (int i = 0; i < halfBreadths.size(); i++) {
            stations.add("S" + i);
            x.add(700 * i + "!");
            heights.add("");
            sheerHeights.add("1000!");
            keel.add("100!");
            buttock.add(halfBreadths.get(i) > 250 ? "600!" : "-");
            breadths.add("");
            sheer.add(halfBreadths.get(i) + "!");
        }
        return List.of(stations, x, heights, sheerHeights, keel, buttock, breadths, sheer);
    }

    private static List<List<String>> turned(List<List<String>> rows) {
        List<List<String>> turned = new ArrayList<>();
        for (int column = 0; column < rows.get(0).size(); column++) {
            List<String> line = new ArrayList<>();
            for (List<String> row : rows) {
                line.add(row.get(column));
            }
            turned.add(line);
        }
        return turned;
    }

    /** Cells end in ! where a unit may stand. */
    private static String csv(List<List<String>> rows, String mark, String unit) {
        StringBuilder text = new StringBuilder();
        rows.forEach(row -> text.append(String.join(mark, row)).append('\n'));
        return text.toString().replace("!", unit);
    }

    /** Whatever is done to a table, it is read whole or refused with a reason; nothing is thrown. */
    @Property(tries = 1000)
    void law_aSpoiltTableIsReadOrRefused(
            @ForAll @IntRange(max = 500) int at, @ForAll @IntRange(max = 40) int length, @ForAll String instead) {
        String table = Tables.resource("outboard-24.csv");
        int from = Math.min(at, table.length());
        int to = Math.min(from + length, table.length());
        TableReading reading = Tables.reading(table.substring(0, from) + instead + table.substring(to));
        if (reading instanceof TableReading.Read read) {
            PanelOffsets.of(read.table());
        } else {
            assertFalse(((TableReading.Faulty) reading).problems().isEmpty());
        }
    }

    /** The same for two cells changed for each other, which keeps the table's shape. */
    @Property(tries = 1000)
    void law_exchangedCellsAreReadOrRefused(@ForAll @IntRange(max = 90) int a, @ForAll @IntRange(max = 90) int b) {
        String[] cells = Tables.resource("outboard-24.csv").split("(?<=[,\n])|(?=[,\n])");
        int first = 2 * Math.min(a, (cells.length - 1) / 2);
        int second = 2 * Math.min(b, (cells.length - 1) / 2);
        String kept = cells[first];
        cells[first] = cells[second];
        cells[second] = kept;
        TableReading reading = Tables.reading(String.join("", cells));
        if (reading instanceof TableReading.Read read) {
            PanelOffsets.of(read.table());
        } else {
            assertFalse(((TableReading.Faulty) reading).problems().isEmpty());
        }
    }
}
