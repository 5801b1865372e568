package org.garboard.findingsfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.garboard.survey.PlaceFault;
import org.garboard.survey.SurveyFinding;
import org.garboard.survey.SurveyPlace;
import org.garboard.survey.SurveyPlace.Side;
import org.junit.jupiter.api.Test;

class FindingsFileTest {

    private static FindingsReading read(String text) {
        return FindingsFile.read("f.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<SurveyFinding> findings(String text) {
        FindingsReading reading = read(text);
        assertTrue(reading instanceof FindingsReading.Read, reading.toString());
        return ((FindingsReading.Read) reading).findings().stream().map(WrittenFinding::finding).toList();
    }

    private static List<String> faults(String text) {
        return ((FindingsReading.Faulty) read(text)).faults().stream().map(FindingsFault::message).toList();
    }

    @Test
    void exact_everyKindOfPlace() {
        assertEquals(List.of(
            new SurveyFinding("1", new SurveyPlace(Optional.of(new SurveyPlace.AtStation("3 1/2")), new SurveyPlace.Girth(0.3556), Optional.of(Side.PORT)),
                "Crack, 40 mm", "B", "Fill", "P-1", "2026-04-02"),
            new SurveyFinding("2a", new SurveyPlace(Optional.of(new SurveyPlace.AftOfOrigin(5.85)), new SurveyPlace.HalfBreadth(0.2), Optional.of(Side.STARBOARD)),
                "Blister", "", "", "", ""),
            new SurveyFinding("3", new SurveyPlace(Optional.of(new SurveyPlace.AheadOfAfterEnd(1.5)), new SurveyPlace.NotTold(), Optional.of(Side.PORT)),
                "Scrape", "", "", "", ""),
            new SurveyFinding("4", new SurveyPlace(Optional.empty(), new SurveyPlace.InRegion("Inner strake"), Optional.of(Side.BOTH)), "Worn", "", "", "", "")),
            findings("No,Station,X m,Ahead of after end,Girth,Y (mm),Side,Region,Finding,Severity,Action,Photo,Date\r\n"
                + "1,3 1/2,,,1-2-0,,port,,\"Crack, 40 mm\",B,Fill,P-1,2026-04-02\r\n"
                + "2a,,5.85,,,200,S,,Blister\r\n"
                + "\r\n"
                + "3,,,1500mm,,,Port,,Scrape,,,,\r\n"
                + "4,,,,,,both,Inner strake,Worn,,,,\r\n"));
    }

    @Test
    void exact_semicolonsDecimalCommasTabsAndAByteOrderMark() {
        SurveyPlace place = new SurveyPlace(Optional.of(new SurveyPlace.AftOfOrigin(5.85)), new SurveyPlace.Girth(0.25), Optional.of(Side.PORT));
        assertEquals(place, findings("\uFEFFNumber;X m;Girth m;Side;Finding\n1;5,85;0,25;p;Crack\n").get(0).place());
        assertEquals(place, findings("no\tx [m]\tgirth (mm)\tside\tfinding\n1\t5.85\t250\tp\tCrack\n").get(0).place());
    }

    /** Every fault in one go, each at its cell. */
    @Test
    void tellsEveryFault() {
        assertEquals(List.of(
            "f.csv:2: no place is told; write a station and a girth, a distance and a side, or a region",
            "f.csv:3: the place is told along the boat alone; write how far out on which side, the side at least, or a region",
            "f.csv:4: column 1, No: \"1\" is the number of line 2 too; give each finding its own",
            "f.csv:4: column 4, Girth: \"12\" has no unit; write 2-3-4 (ft-in-eighths), or m, mm, cm, ft or in behind the number",
            "f.csv:4: column 5, Side: \"left\" is no side; write port, starboard, both or centreline",
            "f.csv:4: column 8, Date: \"2026-02-30\" is no date; write year, month, day as 2026-03-14",
            "f.csv:5: column 1, No: nothing stands there; every finding has a number and words",
            "f.csv:5: column 3, X: \"2\" tells how far along the boat, and so does Station; leave one of them out",
            "f.csv:5: column 4, Girth: \"-3 mm\" is negative; write it without a sign, and port or starboard as the side",
            "f.csv:5: column 7, Finding: nothing stands there; every finding has a number and words",
            "f.csv:6: the place is told across the boat and not along it; write a station or a distance as well",
            "f.csv:6: column 9, \"more\" stands beyond the last heading; quote a cell that holds the mark between cells, and head every column",
            "f.csv:7: column 1, No: \"12345\" has 5 characters; 4 are the most",
            "f.csv:7: column 4, Girth: \"3 mm\" tells how far out, and so does Region; leave one of them out"),
            faults("No,Station,X m,Girth,Side,Region,Finding,Date\n"
                + "1,,,,,,Crack,\n"
                + "2,3,,,,,Crack,\n"
                + "1,3,,12,left,,Crack,2026-02-30\n"
                + ",3,2,-3 mm,port,,,\n"
                + "6,,,3 mm,port,,Crack,,more\n"
                + "12345,3,,3 mm,port,keel,Crack,\n"));
    }

    @Test
    void tellsFaultsOfHeadings() {
        assertEquals(List.of("f.csv:1: no heading \"Finding\"; every finding has a number and words",
            "f.csv:1: column 2, heading \"Girth parsecs\" ends in the unit \"parsecs\", which is not known; write m, mm, cm, ft or in, or none and a unit in every cell",
            "f.csv:1: column 3, heading \"Girth\" stands there twice; leave one out",
            "f.csv:1: column 4, heading \"Owner\" is not known; write one of: No, Station, X, Ahead of after end, Girth, Off centreline, Side, "
                + "Region, Finding, Severity, Action, Photo, Date; behind a length its unit"),
            faults("No,Girth parsecs,Girth,Owner\n"));
        assertEquals(List.of("f.csv: the file does not begin with a heading and , or ; or a tab; a row of headings is expected, such as "
            + "No,Station,Girth mm,Side,Finding,Severity,Action,Photo,Date"), faults("TABLE OF OFFSETS,Boat\n"));
        assertEquals(List.of("f.csv: there is no finding below the headings; a row for each is expected"), faults("No,Region,Finding\n\n"));
        assertEquals(List.of("f.csv: the file is not text in UTF-8; save it as CSV in UTF-8"),
            ((FindingsReading.Faulty) FindingsFile.read("f.csv", new byte[] {(byte) 0xC3, 0x28})).faults().stream().map(FindingsFault::message).toList());
        assertEquals(List.of("f.csv:2: a quoted cell begins here or below and is not closed, or text stands behind its closing quote; "
            + "quote a cell as \"…\", a quote within it as \"\""), faults("No,Region,Finding\n1,keel,\"Crack\n"));
    }

    /** What a spreadsheet would work out is text here, and what a terminal would act on is told by its number. */
    @Test
    void formulasAreTextAndControlsAreRefused() {
        assertEquals("=HYPERLINK(\"x\")", findings("No,Region,Finding\n1,keel,\"=HYPERLINK(\"\"x\"\")\"\n").get(0).words());
        assertEquals("two lines", findings("No,Region,Finding\n1,keel,\"two\r\nlines\"\n").get(0).words());
        assertEquals(List.of("f.csv:2: column 3, \"<U+001B>[31mred\" holds the control character U+001B; type the cell anew"),
            faults("No,Region,Finding\n1,keel,\u001b[31mred\n"));
    }

    @Test
    void laterFaultsAreToldAtTheCellOfThePlace() {
        WrittenFinding written = ((FindingsReading.Read) read("No,Station,Girth mm,Side,Finding\n1,9,300,,Crack\n")).findings().get(0);
        assertEquals("f.csv:2: column 2, Station: \"9\" is no station", written.fault("f.csv", new PlaceFault(0, PlaceFault.Part.ALONG, "is no station")).message());
        assertEquals("f.csv:2: column 3, Girth: \"300\" lies off the skin", written.fault("f.csv", new PlaceFault(0, PlaceFault.Part.OUT, "lies off the skin")).message());
        assertEquals("f.csv:2: column 4, Side: nothing stands there; it is not told",
            written.fault("f.csv", new PlaceFault(0, PlaceFault.Part.SIDE, "is not told")).message());
    }
}
