package org.garboard.tablefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.garboard.appendage.Keel;
import org.garboard.hull.Fit;
import org.garboard.hull.Hull;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.StrakeEdges;
import org.garboard.takeoff.LevelledOffsets;
import org.junit.jupiter.api.Test;

/** Take-offs of boats whose keel hangs below the rabbet, and of bottoms with strakes. */
class KeelTakeOffTest {
    private static final String HEAD = """
        TAKE-OFF,Workboat
        Units,mm,to outside of planking
        Datum,heel of the sternpost,0
        Distances,aft of datum
        Trim from,straight keel,1,3
        Station,Distance,Side,Mark,Out,Height
        """;
    private static final String LIST = HEAD + station("1", 1000) + station("2", 2000) + station("3", 3000);

    /** Keel 100 wide, 300 deep; bottom of 1 in 4 from the rabbet, 1000 out; a strake from 400 to 480. */
    private static String station(String name, int distance) {
        StringBuilder rows = new StringBuilder(name + "," + distance + ",centre,Keel bottom,0,0\n");
        for (String side : List.of("port", "starboard")) {
            rows.append(name + ",," + side + ",Rabbet,50,300\n").append(name + ",," + side + ",edge,1050,550\n");
        }
        return rows.append(name + ",,port,,650,450\n").toString();
    }

    private static String strake(String name) {
        return name + ",,port,\"Strake, inner\",400,388\n" + name + ",,port,\"Strake, outer\",480,388\n";
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

    /** What the yard reads to the millimetre, at plumb stations, heeled and trimmed, comes back to it: skin, rabbet, keel. */
    @Test
    void law_theDisplacementBoatComesBackUprightAndLevel() {
        LevelledOffsets offsets = taken(DisplacementTakeOff.text());
        assertEquals(DisplacementTakeOff.TRIM_DEGREES, offsets.asBlocked().trim().degrees(), 0.02);
        assertEquals(DisplacementTakeOff.HEEL_DEGREES, offsets.asBlocked().heel().degrees(), 0.03);
        assertEquals(List.of(LineKind.KEEL, LineKind.RABBET, LineKind.EDGE), offsets.kinds());
        Hull hull = Fit.WITHIN_ROUNDING.draw(offsets);
        double sternpost = DisplacementBoat.STERNPOST;
        double worst = 0;
        double squares = 0;
        int looks = 0;
        for (double x = hull.forwardEnd() + 0.3; x < hull.afterEnd(); x += 0.05) {
            double own = x + sternpost;
            double siding = DisplacementBoat.siding(own);
            assertEquals(siding, hull.lines().get(1).y(x), 1.5e-3);
            assertEquals(DisplacementBoat.rabbet(own), hull.lines().get(1).z(x), 3e-3);
            for (double share = 0.05; share < 0.95; share += 0.05) {
                double y = siding + share * (DisplacementBoat.halfBreadth(own, DisplacementTakeOff.RIBBAND) - siding);
                double off = Math.abs(hull.height(x, y) - DisplacementBoat.height(own, y));
                worst = Math.max(worst, off);
                squares += off * off;
                looks++;
            }
        }
        // the loft's between stations 0.9 m apart of a bottom that curves both ways is in it
        assertTrue(worst < 5e-3, "worst " + worst);
        assertTrue(Math.sqrt(squares / looks) < 1.5e-3, "rms " + Math.sqrt(squares / looks));
        Keel keel = Keel.of(offsets, hull).orElseThrow();
        assertEquals(0, keel.to(), 1.5e-3);
        for (double x = -5; x < 0; x += 0.5) {
            assertEquals(DisplacementBoat.keelBottom(x + sternpost), keel.section(x).z(), 2e-3);
            assertEquals(DisplacementBoat.keelBottomSiding(x + sternpost), keel.section(x).halfSiding(), 1.5e-3);
        }
    }

    @Test
    void exact_aLevelKeelComesBackAsMeasured() {
        LevelledOffsets offsets = taken(LIST);
        Hull hull = Fit.WITHIN_ROUNDING.draw(offsets);
        Keel keel = Keel.of(offsets, hull).orElseThrow();
        assertEquals(0, keel.section(2).z(), 1e-9);
        assertEquals(0.05, keel.section(2).halfSiding(), 1e-9);
        assertEquals(0.3, hull.lines().get(1).z(2), 1e-9);
        assertEquals(0.4, hull.height(1.5, 0.45), 1e-9);
    }

    @Test
    void exact_aStrakeLiesBesideTheSkin() {
        String text = LIST + strake("2") + strake("3");
        LevelledOffsets offsets = taken(text);
        StrakeEdges strake = offsets.strakes().get(0);
        assertEquals("Strake", strake.name());
        assertEquals(new StrakeEdges.Cut(2, 0.4, 0.388, 0.48, 0.388), rounded(strake.cuts().get(0)));
        assertEquals(2, strake.cuts().size());
        assertEquals(0.3 + 0.39 * 0.25, Fit.WITHIN_ROUNDING.draw(offsets).height(2.5, 0.44), 1e-9);
    }

    private static StrakeEdges.Cut rounded(StrakeEdges.Cut cut) {
        return new StrakeEdges.Cut(round(cut.x()), round(cut.innerY()), round(cut.innerZ()), round(cut.outerY()), round(cut.outerZ()));
    }

    private static double round(double metres) {
        return Math.rint(metres * 1e6) / 1e6;
    }

    @Test
    void aRabbetOnOneSideTellsNoCentreline() {
        assertFaults(LIST.replace("2,,port,Rabbet,50,300\n", ""),
            "yard.csv:15: column 3: side \"starboard\" does not serve: Rabbet is measured on one side alone at station 2; measure it to port"
                + " and to starboard, for the centreline lies half-way between");
    }

    @Test
    void aKeelIsNotMeasuredTwoWays() {
        assertFaults(LIST + "3,,centre,Keel,0,300\n",
            "yard.csv:25: column 4: mark \"Keel\" does not serve: Keel is given beside Rabbet; a keel below the skin has Rabbet and Keel bottom, one"
                + " that is skin has Keel, and a box keel Half-siding and Top of keel besides");
    }

    @Test
    void aKeelBottomNeedsARabbet() {
        assertFaults(LIST.replaceAll("(?m)^.,,port,Rabbet.*\n", "").replaceAll(",starboard,Rabbet,50,300", ",centre,Keel,0,300"),
            "yard.csv:7: column 4: mark \"Keel bottom\" does not serve: Keel bottom is given, but not where the skin meets the keel; mark that Rabbet,"
                + " to port and to starboard at every station, instead of Keel");
    }

    @Test
    void aKeelBottomAboveTheRabbetIsTold() {
        assertFaults(LIST.replace("Trim from,straight keel,1,3", "Trim from,float marks,load waterline,450")
                .replace("2,2000,centre,Keel bottom,0,0", "2,2000,centre,Keel bottom,0,330")
                + ",1000,port,float,650,450\n,3000,port,float,650,450\n",
            "yard.csv:13: column 6: height \"330\" does not serve: Keel bottom at station 2 lies 30 mm above Rabbet; the keel hangs below it: see which was misread");
    }

    @Test
    void oneCornerOfTheKeelIsNotItsMiddle() {
        assertFaults(LIST.replace("2,2000,centre,Keel bottom,0,0", "2,2000,port,Keel bottom,50,0"),
            "yard.csv:13: column 5: out \"50\" does not serve: Keel bottom at station 2 lies 50 mm to port of the straight line through the middle of"
                + " the rabbet, and where only one point of it is measured it is the middle, more than the rounding explains; measure it again,"
                + " or, if the boat is so, allow it by a row Symmetric within");
    }

    @Test
    void aStrakeWithOneEdgeIsTold() {
        assertFaults(LIST + "2,,port,\"Strake, outer\",480,388\n",
            "yard.csv:25: column 4: mark \"Strake, outer\" does not serve: Strake, outer stands alone; measure both edges of Strake, and mark them"
                + " \"Strake, inner\" where its face leaves the skin and \"Strake, outer\" at the corner that stands out");
    }

    @Test
    void aReadingOnAStrakeIsTold() {
        assertFaults(LIST + strake("2") + strake("3") + "3,,port,,440,385\n",
            "yard.csv:29: column 5: out \"440\" does not serve: this point lies between the edges of Strake (400 mm and 480 mm from the centreline): it"
                + " reads the strake and not the skin; leave it out");
    }

    @Test
    void aStepIsNotReadFromATakeOff() {
        assertFaults(LIST.replace("3,3000", "3,2000"),
            "yard.csv:19: column 2: distance \"2000\" does not serve: station 3 stands where station 2 stands; give each station a distance of its own."
                + " A step across the bottom is not read from a take-off: measure the bottom ahead of the first step, where the transducer"
                + " goes, and end there");
    }
}
