package org.garboard.tablefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.garboard.units.Length;
import org.garboard.units.LengthNotation;
import org.junit.jupiter.api.Test;

/** Slips made in the text of a demo boat's table, 13 stations from 0 to 12. */
class LikelySlipTest {
    private static final String GOOD = DemoTables.outboard39();

    /** Line of the file, the first is 1, in which the label stands for the second time, or the only. */
    private static int line(String text, String label) {
        List<String> lines = text.lines().toList();
        int found = 0;
        for (int i = 0; i < lines.size(); i++) {
            found = lines.get(i).startsWith(label + ",") ? i + 1 : found;
        }
        return found;
    }

    private static String cell(String text, int line, int column) {
        return text.lines().toList().get(line - 1).split(",", -1)[column - 1];
    }

    private static String with(String text, int line, int column, String cell) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        String[] cells = lines.get(line - 1).split(",", -1);
        cells[column - 1] = cell;
        lines.set(line - 1, String.join(",", cells));
        return String.join("\n", lines) + "\n";
    }

    private static List<String> slips(TableReading reading) {
        WrittenTable written = reading instanceof TableReading.Read read
            ? read.written() : ((TableReading.Faulty) reading).written().orElseThrow();
        assertEquals(Optional.empty(), written.slips().notSearched());
        return written.slips().slips().stream().map(LikelySlip::message).toList();
    }

    @Test
    void theDemoBoatsHaveNone() {
        assertEquals(List.of(), slips(Tables.reading(DemoTables.outboard22())));
        assertEquals(List.of(), slips(Tables.reading(GOOD)));
    }

    @Test
    void exact_aFoot() {
        int chine = line(GOOD, "Chine");
        String was = cell(GOOD, chine, 8);
        String spoilt = (char) (was.charAt(0) + 1) + was.substring(1);
        assertEquals(List.of("likely slip: boat.csv:" + chine + ", station 6, Chine: column 8: half-breadth \"" + spoilt
            + "\" does not go with the cells around it; " + was + " would, a foot less"),
            slips(Tables.reading(with(GOOD, chine, 8, spoilt))));
    }

    @Test
    void exact_swappedDigitsInAWaterline() {
        int waterline = line(GOOD, "WL 4-0-0");
        String was = cell(GOOD, waterline, 7);
        String spoilt = was.charAt(2) + "-" + was.charAt(0) + was.substring(3);
        assertEquals(List.of("likely slip: boat.csv:" + waterline + ", station 5, WL 4-0-0: column 7: half-breadth \"" + spoilt
            + "\" does not go with the cells around it; " + was + " would, with two digits swapped"),
            slips(Tables.reading(with(GOOD, waterline, 7, spoilt))));
    }

    @Test
    void exact_theEndsAreLessSure() {
        int sheer = line(GOOD, "Sheer");
        String was = cell(GOOD, sheer, 14);
        String spoilt = (char) (was.charAt(0) - 1) + was.substring(1);
        assertEquals(List.of("likely slip: boat.csv:" + sheer + ", station 12, Sheer: column 14: half-breadth \"" + spoilt
            + "\" does not go with the cells around it; " + was
            + " would, a foot more (less sure: the end station has neighbours on one side only)"),
            slips(Tables.reading(with(GOOD, sheer, 14, spoilt))));
    }

    /** The same table in metres with decimal commas, a point moved in one cell. */
    @Test
    void exact_aMovedPointAmongDecimalCommas() {
        String metres = inMetres();
        int keel = line(metres.replace(';', ','), "Keel");
        String was = metres.lines().toList().get(keel - 1).split(";", -1)[3];
        String spoilt = was.charAt(2) + "," + was.substring(3) + "0";
        List<String> lines = new ArrayList<>(metres.lines().toList());
        lines.set(keel - 1, lines.get(keel - 1).replace(";" + was + ";", ";" + spoilt + ";"));
        assertEquals(List.of("likely slip: boat.csv:" + keel + ", station 2, Keel: column 4: height \"" + spoilt
            + "\" does not go with the cells around it; " + was + " would, with the point moved"),
            slips(Tables.reading(String.join("\n", lines))));
    }

    /** Turned round, and with the stations counted from aft, the slip is told where it stands in the file. */
    @Test
    void exact_stationsInRowsFromAft() {
        List<List<String>> rows = inMetres().lines().map(line -> Arrays.asList(line.split(";", -1))).toList();
        List<List<String>> table = rows.subList(2, rows.size());
        StringBuilder turned = new StringBuilder("Units;m;to outside of skin\nStations from;aft\n");
        for (int column = 0; column < table.get(0).size(); column++) {
            int from = column;
            turned.append(table.stream().map(row -> from < row.size() ? row.get(from) : "").collect(Collectors.joining(";"))).append('\n');
        }
        List<String> lines = new ArrayList<>(turned.toString().replace("Distance from 0", "Distance from aft").lines().toList());
        List<String> names = Arrays.asList(lines.get(2).split(";", -1));
        for (int i = 3; i < lines.size(); i++) {
            String[] cells = lines.get(i).split(";", -1);
            cells[1] = String.format(Locale.ROOT, "%.3f", 39 * 0.3048 - Double.parseDouble(cells[1].replace(',', '.'))).replace('.', ',');
            lines.set(i, String.join(";", cells));
        }
        int chine = names.lastIndexOf("Chine");
        String[] cells = lines.get(9).split(";", -1);
        String was = cells[chine];
        cells[chine] = was.substring(0, 2) + was.charAt(3) + was.charAt(2) + was.substring(4);
        lines.set(9, String.join(";", cells));
        TableReading reading = Tables.reading(String.join("\n", lines));
        assertEquals(List.of("likely slip: boat.csv:10, station 6, Chine: column " + (chine + 1) + ": half-breadth \""
            + cells[chine] + "\" does not go with the cells around it; " + was + " would, with two digits swapped"), slips(reading));
    }

    private static String inMetres() {
        return GOOD.lines().filter(line -> !line.startsWith("Note")).map(line -> {
            if (line.startsWith("Units")) {
                return "Units;m;to outside of skin";
            }
            String[] cells = line.split(",", -1);
            for (int i = 0; i < cells.length; i++) {
                String length = cells[i].replaceFirst("^(WL|Buttock) ", "");
                if (length.matches("[0-9]+-[0-9]+-[0-9]+")) {
                    double metres = ((Length) LengthNotation.unitRequired().read(length)).metres();
                    int places = length.equals(cells[i]) ? 3 : 4;
                    cells[i] = cells[i].replace(length, String.format(Locale.ROOT, "%." + places + "f", metres).replace('.', ','));
                }
            }
            return String.join(";", cells);
        }).collect(Collectors.joining("\n"));
    }

    /** A slip that makes the table faulty is told beside the faults. */
    @Test
    void aSlipBehindFaults() {
        int chine = line(GOOD, "Chine");
        String was = cell(GOOD, chine, 10);
        String spoilt = (char) (was.charAt(0) - 1) + was.substring(1);
        TableReading reading = Tables.reading(with(GOOD, chine, 10, spoilt));
        assertFalse(assertInstanceOf(TableReading.Faulty.class, reading).problems().isEmpty());
        assertEquals(List.of("likely slip: boat.csv:" + chine + ", station 8, Chine: column 10: half-breadth \"" + spoilt
            + "\" does not go with the cells around it; " + was + " would, a foot more"), slips(reading));
    }

    /** Cells that cannot be read are told first. */
    @Test
    void badInput_cellsThatCannotBeRead() {
        TableReading reading = Tables.reading(with(GOOD, line(GOOD, "Chine"), 8, "4-13-0"));
        assertEquals(Optional.empty(), assertInstanceOf(TableReading.Faulty.class, reading).written());
    }
}
