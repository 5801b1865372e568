package org.garboard.tablefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.OpenEnd;
import org.garboard.takeoff.LevelledOffsets;
import org.junit.jupiter.api.Test;

/** Take-offs as files: the V bottom of a small boat, straight keel, blocked level at first. */
class TakeOffFileTest {
    private static final String HEAD = """
        TAKE-OFF,Workboat
        Units,mm,to outside of skin
        Datum,lower corner of transom,300
        Distances,forward of datum
        """;
    private static final String TRIM = "Trim from,straight keel,1,3\n";
    private static final String COLUMNS = "Station,Distance,Side,Mark,Out,Height\n";
    private static final String LIST = COLUMNS
        + station("1", 3000, 300) + station("2", 2000, 300) + station("3", 1000, 300);

    /** Deadrise of 3 in 10, chine 1000 out. */
    private static String station(String name, int distance, int keel) {
        return name + "," + distance + ",centre,Keel,0," + keel + "\n"
            + name + ",,port,,500," + (keel + 150) + "\n"
            + name + ",,port,Chine,1000," + (keel + 300) + "\n"
            + name + ",,starboard,Chine,1000," + (keel + 300) + "\n";
    }

    private static TableReading read(String text) {
        return TableFile.read("yard.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private static LevelledOffsets taken(String text) {
        TableReading reading = read(text);
        assertTrue(reading instanceof TableReading.TakenOff, reading::toString);
        return ((TableReading.TakenOff) reading).offsets();
    }

    private static void assertFaults(String text, String... messages) {
        TableReading reading = read(text);
        assertTrue(reading instanceof TableReading.Faulty, "read without fault");
        assertEquals(List.of(messages), ((TableReading.Faulty) reading).problems().stream().map(TableProblem::message).toList());
    }

    @Test
    void exact_aLevelBoatComesBackAsMeasured() {
        LevelledOffsets offsets = taken(HEAD + TRIM + "Covers,to the transom\n" + LIST);
        assertEquals("Workboat", offsets.title());
        assertEquals(List.of("1", "2", "3"), offsets.stations().stream().map(station -> station.name()).toList());
        assertEquals(-3, offsets.stations().get(0).x(), 1e-9);
        assertEquals(List.of(LineKind.KEEL, LineKind.CHINE), offsets.kinds());
        assertEquals(0.3, offsets.panels().get(0).stations().get(1).get(2).z(), 1e-9);
        assertEquals(0.15, offsets.panels().get(0).stations().get(1).get(1).z(), 1e-9);
        assertEquals(0.001, offsets.leastCount(), 1e-12);
        assertEquals(Set.of(OpenEnd.FORWARD), offsets.openEnds());
        assertEquals("lower corner of transom", offsets.origin());
    }

    @Test
    void law_heightsReadDownAndDistancesReadAftAreTheSameBoat() {
        String down = (HEAD + TRIM + LIST).replace("forward of", "aft of").replace("Units", "Heights,down from level\nUnits");
        StringBuilder turned = new StringBuilder();
        for (String line : down.split("\n")) {
            String[] cells = line.split(",");
            if (cells.length == 6 && !cells[0].equals("Station")) {
                cells[1] = cells[1].isEmpty() ? "" : "-" + cells[1];
                cells[5] = "-" + cells[5];
            }
            turned.append(String.join(",", cells)).append('\n');
        }
        LevelledOffsets one = taken(HEAD + TRIM + LIST);
        LevelledOffsets two = taken(turned.toString().replace("transom,300", "transom,-300"));
        assertEquals(one.stations(), two.stations());
        assertEquals(one.panels().get(0).stations().get(0).get(1).z(), two.panels().get(0).stations().get(0).get(1).z(), 1e-12);
    }

    @Test
    void everyCellAtFaultIsToldAtOnce() {
        assertFaults(HEAD + TRIM + LIST.replace("2,,port,,500,450", "2,,left,,500,4x0").replace("3,1000,", "3,,") + "3,,port,P1,400,,\n",
            "yard.csv:12, station 2: column 3: side \"left\" is none; write port, starboard, or centre for a keel that stands over the line",
            "yard.csv:12, station 2: column 6: height \"4x0\" has the unit \"x0\", which is not known; write m, mm, cm, ft or in, or 2-3-4 (ft-in-eighths)",
            "yard.csv:15, station 3: column 2: distance \"\" is blank; write it in the station's first row",
            "yard.csv:19, station 3: column 6: height \"\" is blank; write what was read, 0 if it was that");
    }

    @Test
    void headingsThatAreMissingAreTold() {
        assertFaults("TAKE-OFF,Workboat\n" + LIST,
            "yard.csv: the units are not told; add a row Units, with mm, cm, m, ft, in or feet-inches-eighths in its next cell",
            "yard.csv: the surface is not told; add it to the row Units: to outside of skin, to inside of planking, to inside of plating,"
                + " the last two with the thickness in the next cell",
            "yard.csv: the datum is not told; add a row Datum, and in its next cell the place of the boat that distances are measured"
                + " from, such as lower corner of transom",
            "yard.csv: nothing tells which way the distances run; add a row Distances, with \"aft of datum\" or \"forward of datum\" in its next cell",
            "yard.csv: nothing tells the trim; add a row Trim from, with \"float marks\" with the waterline's name in the next cell and its"
                + " height above base in the one after, or \"straight keel\" with the first and the last station of the straight run");
    }

    /** A text with the word at the beginning of a line, such as this program's own README: one message, not one for each of its lines. */
    @Test
    void aTextThatIsNoTakeOffIsToldOnce() {
        assertFaults("Take-off, how to\nStation,0,1,2\nThe boat,is,blocked\nand,so,on\n",
            "yard.csv:2: this is no take-off: the first line that begins with \"Station\" heads none of the columns Distance, Side, Mark, Out, Height; "
                + "write the list of points under a row with these");
    }

    @Test
    void twoStationsAreTooFew() {
        assertFaults(HEAD + "Trim from,straight keel,1,2\n" + COLUMNS + station("1", 3000, 300) + station("2", 2000, 300),
            "yard.csv: the take-off has 2 station(s); three are the least, for between two nothing tells how the skin curves along the boat");
    }

    @Test
    void withoutPairsTheHeelIsUnknown() {
        assertFaults(HEAD + TRIM + LIST.replaceAll("(?m)^.,,starboard,Chine.*\n", ""),
            "yard.csv: no mark is measured on both sides of one station, so nothing tells the heel; measure the chine, the sheer, or a chalk"
                + " mark at one girth from the keel to port and to starboard, at two stations or more");
    }

    @Test
    void oneFloatMarkTellsNoTrim() {
        assertFaults(HEAD + "Trim from,float marks,load waterline,200\n" + LIST + ",2900,port,float,700,500\n",
            "yard.csv: the trim is to come from float marks, and 1 is measured; measure one forward and one aft at least, on one waterline");
    }

    @Test
    void aStationWithoutKeelIsTold() {
        assertFaults(HEAD + TRIM + LIST.replace("2,2000,centre,Keel,0,300\n2,,port,,", "2,2000,port,,"),
            "yard.csv:11: station 2 has no point marked keel; measure there where the bottom skin meets the centreline");
    }

    @Test
    void sidesThatDifferAreToldWithPlaceAndSize() {
        String more = ", more than the rounding explains; measure both again, or, if the boat is so, allow it by a row Symmetric"
            + " within, and the mean of both sides is drawn";
        String skewed = LIST.replace("2,,starboard,Chine,1000,600", "2,,starboard,Chine,1000,612");
        assertFaults(HEAD + TRIM + skewed,
            "yard.csv:10: column 6: height \"600\" does not serve: Chine at station 1: with the heel taken out, starboard lies 4 mm lower and 1 mm farther out than port (line 9)" + more,
            "yard.csv:14: column 6: height \"612\" does not serve: Chine at station 2: with the heel taken out, starboard lies 8 mm higher and 1 mm farther out than port (line 13)" + more,
            "yard.csv:18: column 6: height \"600\" does not serve: Chine at station 3: with the heel taken out, starboard lies 4 mm lower and 1 mm farther out than port (line 17)" + more);
        LevelledOffsets allowed = taken(HEAD + TRIM + "Symmetric within,15\n" + skewed);
        assertEquals(0.008, allowed.apart(), 5e-4);
    }

    @Test
    void aKeelThatIsNotStraightIsTold() {
        assertFaults(HEAD + TRIM + COLUMNS + station("1", 3000, 300) + station("2", 2000, 320) + station("3", 1000, 300),
            "yard.csv:7: column 6: height \"300\" does not serve: the keel at station 1 lies 7 mm below the straight run of the keel; measure it again, or name stations between which the keel is straight",
            "yard.csv:11: column 6: height \"320\" does not serve: the keel at station 2 lies 13 mm above the straight run of the keel; measure it again, or name stations between which the keel is straight",
            "yard.csv:15: column 6: height \"300\" does not serve: the keel at station 3 lies 7 mm below the straight run of the keel; measure it again, or name stations between which the keel is straight");
    }

    @Test
    void anInsideIsNotMeasuredWithATape() {
        assertFaults(HEAD.replace("outside of skin", "inside of planking,30 mm") + TRIM + LIST,
            "yard.csv:2: column 3: \"to inside of planking\" is not what a tape on the boat measures; a take-off is to outside of skin",
            "yard.csv:2: column 4: thickness \"30 mm\" is not wanted, for the table is drawn to the outside; leave it out, or write to which inside it is drawn");
    }

    @Test
    void aChineThatIsMissingSomewhereIsTold() {
        assertFaults(HEAD + TRIM + LIST.replaceAll("(?m)^2,,(port|starboard),Chine.*\n", ""),
            "yard.csv:11: station 2 has no point marked Chine; measure it there too, or take the mark off the others");
    }
}
