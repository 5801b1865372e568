package org.garboard.tablefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Every message in full, for a file with many faults of one sort. */
class TableProblemsTest {
    private static final String KNOWN = "known are Sheer, Chine, Keel, Half-siding, Top of keel, Half-siding at rabbet, Keel bottom, Strake inner and Strake outer, WL or Waterline with its height,"
        + " Buttock with its distance, Distance from 0, Distance from aft, x";

    private static void assertProblems(String file, String... messages) {
        assertEquals(String.join("\n", messages), Tables.problems(file));
    }

    /** A sound table, to be spoilt. */
    private static final String SOUND = """
        Units,mm,to outside of skin
        Station,0,1,2
        x,0,1000,2000
        HEIGHTS
        Sheer,800,800,800
        Keel,0,0,0
        HALF-BREADTHS
        Sheer,90,90,90
        """;

    @Test
    void badInput_aTransomAndNoStations() {
        assertProblems("""
            Units,mm,to outside of skin
            Transom,Keel,11580,Chine,11690,Sheer,11880
            HEIGHTS ABOVE BASE
            Station,Distance from 0,Sheer,Chine,Keel
            HALF-BREADTHS FROM CENTRELINE
            Station,Sheer,Chine
            """,
            "boat.csv: the table has 0 station(s); three are the least",
            "boat.csv:4: no stations stand below this line",
            "boat.csv:6: no stations stand below this line");
    }

    @Test
    void badInput_cellsThatAreNoLengths() {
        assertProblems("""
            Units,m,to outside of skin
            Station,0,1,2,3
            Distance from 0,0,1,2..,-
            HEIGHTS ABOVE BASE
            Sheer,1.4,1.3,1.3,1.2.8
            Chine,0.5,—,0.3,n/a
            Keel,0,0,2-13-0,0
            HALF-BREADTHS FROM CENTRELINE
            Sheer,0.5,1,1,1
            Chine,0.4,0.9,0.9,0.9
            WL 0.40 m,,0.92,1.2.8,0.9e1
            WL half,,0.92,0.92,0.92
            WL,1,1,1,1
            """,
            "boat.csv:3, station 2: column 4: distance \"2..\" is not a length; write a number such as 1.28 m, or 4-2-3 (ft-in-eighths)",
            "boat.csv:3, station 3: column 5: distance \"-\" is blank; give it for every station",
            "boat.csv:5, station 3, Sheer: column 5: height \"1.2.8\" is not a number; write 1.28 or 4-2-3 (ft-in-eighths)",
            "boat.csv:6, station 1, Chine: column 3: \"—\" stands here: blank; Chine must be given at every station",
            "boat.csv:6, station 3, Chine: column 5: height \"n/a\" is not a length; write a number such as 1.28 m, or 4-2-3 (ft-in-eighths)",
            "boat.csv:7, station 2, Keel: column 4: height \"2-13-0\" has 13 inches; inches go from 0 to 11",
            "boat.csv:11, station 2, WL 0.40 m: column 4: half-breadth \"1.2.8\" is not a number; write 1.28 or 4-2-3 (ft-in-eighths)",
            "boat.csv:11, station 3, WL 0.40 m: column 5: half-breadth \"0.9e1\" is written with an exponent; write the number out",
            "boat.csv:12, WL half: column 1: height \"half\" is not a length; write a number such as 1.28 m, or 4-2-3 (ft-in-eighths)",
            "boat.csv:13: column 1: \"WL\" has no height behind it; write one, as in WL 1-0-0 or Buttock 300 mm");
    }

    @Test
    void badInput_ellipsisOfAnUnfinishedTable() {
        assertProblems(SOUND.replace("Sheer,800,800,800", "Sheer,800,…,800").replace("Sheer,90,90,90", "Sheer,90,…,90"),
            "boat.csv:5, station 1, Sheer: column 3: height \"…\" is not a length; write a number such as 1.28 m, or 4-2-3 (ft-in-eighths)",
            "boat.csv:8, station 1, Sheer: column 3: half-breadth \"…\" is not a length; write a number such as 1.28 m, or 4-2-3 (ft-in-eighths)");
    }

    @Test
    void badInput_rowsUnknownMisplacedOrTwice() {
        assertProblems("""
            Units,mm,to outside of skin
            Station,0,1,2
            x,0,1000,2000
            x,0,1000,2000
            HEIGHTS ABOVE BASE,mm
            Sheer,900,900,900
            Chine,300,300,300
            Upper chine,500,500,500
            Kiel,0,0,0
            Diagonal A,1,2
            ,5,6
            WL 300,5,6,7
            HALF-BREADTHS FROM CENTRELINE
            Sheer,900,900,900
            Sheer,900,900,900
            Lower chine,500,500,500
            Chine,700,700,700
            Keel,40,40,40
            WL 400,720,720,720
            Waterline 0.4 m,720,720,720
            """,
            "boat.csv: no row gives the keel; add \"Keel\" to the heights",
            "boat.csv:4: column 1: \"x\" gives the distances a second time, after line 3; leave one out",
            "boat.csv:5: column 2: \"mm\" stands beside a block heading; leave the rest of its line blank",
            "boat.csv:8: column 1: \"Upper chine\" stands here: Upper chine has heights but no half-breadths;"
                + " add a row \"Upper chine\" to the half-breadths",
            "boat.csv:9: column 1: \"Kiel\" is not a line that is known; " + KNOWN,
            "boat.csv:10: column 1: \"Diagonal A\" is not a line that is known; " + KNOWN,
            "boat.csv:11: column 1: \"\" is no label; " + KNOWN,
            "boat.csv:12: column 1: \"WL 300\" stands here: WL 300 stands among the heights; its place is among the half-breadths",
            "boat.csv:15: column 1: \"Sheer\" stands here: Sheer is given twice among the half-breadths; leave one of the rows out",
            "boat.csv:16: column 1: \"Lower chine\" stands here: Lower chine has half-breadths but no heights;"
                + " add a row \"Lower chine\" to the heights",
            "boat.csv:18: column 1: \"Keel\" stands here: Keel stands among the half-breadths; its place is among the heights"
                + " (half the width of a flat keel is called Half-siding)",
            "boat.csv:20: column 1: \"Waterline 0.4 m\" stands here: Waterline 0.4 m is given twice among the half-breadths;"
                + " leave one of the rows out");
    }

    @Test
    void badInput_raggedRows() {
        assertProblems("""
            Units,cm,to outside of skin
            Station,0,1,,3
            x,0,50,100
            HEIGHTS ABOVE BASE
            Sheer,80,80,80,80,
            Keel,1,5,1,5,1,5,1,5
            Chine,30,30
            HALF-BREADTHS FROM CENTRELINE
            Sheer,90,90,90,90
            Chine,70,70,70,70
            """,
            "boat.csv:2: column 4: \"\" names no station; name each column's station",
            "boat.csv:3, x: 3 cell(s) for 4 stations; give each its cell, blank or - where the line does not cross",
            "boat.csv:6, Keel: column 6: \"1\" stands beyond the last of 4 stations; if commas are decimal marks here, put ; between the cells",
            "boat.csv:7, Chine: 2 cell(s) for 4 stations; give each its cell, blank or - where the line does not cross");
    }

    @Test
    void badInput_stations() {
        assertProblems("""
            Units,mm,to outside of skin
            Station,0,1,1,2
            x,0,1000,2000,1500
            HEIGHTS
            Sheer,800,800,800,800
            Keel,0,0,0,0
            HALF-BREADTHS
            Station,0,1,2,2
            Sheer,90,90,90,90
            """,
            "boat.csv:2, station 1: column 4: \"1\" stands here: station 1 is given twice; give each station its own name",
            "boat.csv:3, station 2: column 5: \"1500\" stands here: station 2 stands 1500 mm from 0, which is not aft of"
                + " station 1 at 2000 mm; order the stations from forward aft, each at its own place",
            "boat.csv:8: column 4: station \"2\" is called \"1\" in line 2; name the same");
    }

    @Test
    void badInput_oneStation() {
        assertProblems("""
            Units,mm,to outside of skin
            Station,0
            x,0
            HEIGHTS
            Sheer,800
            Keel,0
            HALF-BREADTHS
            Sheer,90
            """,
            "boat.csv: the table has 1 station(s); three are the least");
    }

    /** A surface could be drawn; on a boat it would be a guess. */
    @Test
    void badInput_twoStations() {
        String twoStations = """
            Units,mm,to outside of skin
            Station,0,1
            x,0,1000
            HEIGHTS
            Sheer,800,800
            Keel,0,O
            HALF-BREADTHS
            Sheer,90,90
            """;
        String tooFew = "boat.csv: the table has 2 stations; three are the least, for between two nothing tells how the skin curves"
            + " along the boat";
        assertProblems(twoStations.replace(",O", ",0"), tooFew);
        assertProblems(twoStations, tooFew,
            "boat.csv:6, station 1, Keel: column 3: height \"O\" is not a length; write a number such as 1.28 m, or 4-2-3 (ft-in-eighths)");
    }

    @Test
    void badInput_headings() {
        assertProblems("""
            TABLE OF OFFSETS,Skiff
            Stations from,midship
            Units,fathoms,mm,ft
            Surface,to outside of skin,inside of planking,20 mm
            Station,0,A,2
            Distance from midship,0,1000,2000
            Spacing,0
            HEIGHTS
            Sheer,800,800,800
            Keel,0,0,0
            HALF-BREADTHS
            Sheer,90,90,90
            """,
            "boat.csv:2: \"Stations from midship\" does not say from which end the stations count, or says it otherwise than"
                + " before; write Stations from and in the next cell forward or aft",
            "boat.csv:3: column 2: \"fathoms\" is neither a unit (mm, cm, m, ft, in or feet-inches-eighths)"
                + " nor a surface (to outside of skin, to inside of planking, to inside of plating)",
            "boat.csv:3: column 4: \"ft\" is a second unit; give one, and write others behind the numbers, as 450 mm",
            "boat.csv:4: column 3: \"inside of planking\" is a second surface; a table is drawn to one",
            "boat.csv:5: column 3: station \"A\" is not a number, so a spacing does not place it; number the stations,"
                + " or give a row \"Distance from 0\"",
            "boat.csv:6: column 1: \"Distance from midship\" is not a line that is known; " + KNOWN,
            "boat.csv:7: column 2: spacing \"0\" is not more than 0");
    }

    @Test
    void badInput_headingsLeftOut() {
        assertProblems("""
            Station,0,1,2
            Sheer,800,8.0.0,800
            HEIGHTS
            Keel,0,0,0
            """,
            "boat.csv: the units are not told; add a row Units, with mm, cm, m, ft, in or feet-inches-eighths in its next cell",
            "boat.csv: the surface is not told; add it to the row Units: to outside of skin, to inside of planking,"
                + " to inside of plating, the last two with the thickness in the next cell",
            "boat.csv: nothing tells where the stations stand; add a row \"Distance from 0\", or a row \"Spacing\"",
            "boat.csv:2: column 1: \"Sheer\" stands under no block heading; write HEIGHTS ABOVE BASE or HALF-BREADTHS FROM CENTRELINE above it",
            "boat.csv:2, station 1, Sheer: column 3: offset \"8.0.0\" is not a number; write 8.00 or 26-3-0 (ft-in-eighths)");
    }

    /** Of a catamaran one hull has a table; two in one file are refused, one that is named is read. */
    @Test
    void badInput_twoHulls() {
        assertProblems("Title,Catamaran port hull\nNotes,Starboard hull alike\n" + SOUND,
            "boat.csv:2: column 2: \"Starboard hull alike\" names a second hull beside \"port hull\": a table holds one hull, measured from its own centreline;"
                + " give each of a pair a file of its own");
        assertInstanceOf(TableReading.Read.class, TableFile.read("boat.csv", ("Title,Catamaran port hull\n" + SOUND).getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void badInput_surfaces() {
        assertProblems(SOUND.replace("to outside of skin", "moulded"),
            "boat.csv:1: column 3: \"moulded\" does not say which surface that is (the inside in wood and metal, often the"
                + " outside in a mold); write \"to outside of skin\" if it is that, else \"to inside of planking\" or"
                + " \"to inside of plating\", with the thickness in the next cell");
        assertProblems("All offsets to inside of plating\n" + SOUND,
            "boat.csv:2: column 3: \"to outside of skin\" is a second surface; a table is drawn to one");
    }

    @Test
    void badInput_thickness() {
        String tellsNone = "tells no thickness; write it in the next cell, as 32 mm or 0-1-2";
        assertProblems(SOUND.replace("to outside of skin", "to inside of planking"),
            "boat.csv:1: column 3: \"to inside of planking\" " + tellsNone);
        assertProblems(SOUND.replace("to outside of skin", "inside of plating,thin"),
            "boat.csv:1: column 4: thickness \"thin\" is not a length; write a number such as 1.28 m, or 4-2-3 (ft-in-eighths)");
        assertProblems(SOUND.replace("to outside of skin", "inside of plating,-"),
            "boat.csv:1: column 4: thickness \"-\" is blank; write it, as 32 mm or 0-1-2");
        assertProblems(SOUND.replace("to outside of skin", "inside of plating,0"),
            "boat.csv:1: column 4: thickness \"0\" is not more than 0; write how thick the skin is, as 32 mm or 0-1-2");
        assertProblems(SOUND.replace("to outside of skin", "\"to inside of planking, 320 mm thick\""),
            "boat.csv:1: column 3: thickness \"320 mm\" is more than 200 mm; write how thick the skin is, as 32 mm or 0-1-2");
        assertProblems("Thickness,25\n" + SOUND.replace("to outside of skin", "to inside of planking,22"),
            "boat.csv:2: column 4: thickness \"22\" is a second one, after \"25\" in line 1;"
                + " give one, or each panel its own");
        assertProblems("Planking thickness,25\n" + SOUND,
            "boat.csv:1: column 2: thickness \"25\" is not wanted, for the table is drawn to the outside; leave it out,"
                + " or write to which inside it is drawn");
    }

    @Test
    void badInput_thicknessByPanel() {
        String inside = SOUND.replace("to outside of skin", "to inside of planking");
        assertProblems("Thickness\nThickness,Keel to Chine,25,Chine to Sheer\n" + inside,
            "boat.csv:1: column 1: \"Thickness\" has 0 cells behind it; write one thickness, as 32 mm or 0-1-2, or panels each"
                + " with its own behind it, as Keel to Chine and then 32 mm",
            "boat.csv:2: column 1: \"Thickness\" has 3 cells behind it; write one thickness, as 32 mm or 0-1-2, or panels each"
                + " with its own behind it, as Keel to Chine and then 32 mm",
            "boat.csv:3: column 3: \"to inside of planking\" tells no thickness; write it in the next cell, as 32 mm or 0-1-2");
        assertProblems("Thickness,Keel to Chine,2s,Chine to Sheer,20,Chine to Sheer,21,Keel to Sheer,22\nThickness,25\n"
                + inside.replace("Keel,", "Chine,300,300,300\nKeel,") + "Chine,80,80,80\n",
            "boat.csv:1, Keel to Chine: column 3: thickness \"2s\" has the unit \"s\", which is not known; write m, mm, cm, ft"
                + " or in, or 2-3-4 (ft-in-eighths)",
            "boat.csv:1: column 6: \"Chine to Sheer\" is given a second time; give each panel one thickness",
            "boat.csv:1: column 8: \"Keel to Sheer\" is no panel of this table; they are Keel to Chine, Chine to Sheer",
            "boat.csv:2: column 2: thickness \"25\" stands for all panels, and line 1 gives panels their own;"
                + " give one or the other");
        assertProblems("Thickness,Chine to Sheer,20\n" + inside.replace("Keel,", "Chine,300,300,300\nKeel,") + "Chine,80,80,80\n",
            "boat.csv:1: no thickness is given for Keel to Chine; the panels of this table are Keel to Chine, Chine to Sheer");
    }

    @Test
    void badInput_stationsFromAft() {
        assertProblems("""
            Units,mm,to outside of skin
            Stations from,forward
            Stations numbered from the transom
            Origin,station 4
            Origin,0
            Station,0,1,2,3
            Distance from AP,0,2000,1900,1500
            HEIGHTS
            Sheer,800,800,8oo,800
            Keel,0,0,0,900
            HALF-BREADTHS
            Sheer,90,90,90,90
            """,
            "boat.csv:3: \"Stations numbered from the transom\" does not say from which end the stations count, or says it"
                + " otherwise than before; write Stations from and in the next cell forward or aft",
            "boat.csv:5: column 2: \"0\" is a second origin; x is measured from one station",
            "boat.csv:7, station 2: column 4: \"1900\" stands here: out of order behind station 1; order the stations along the"
                + " boat, each at its own place",
            "boat.csv:7, station 3: column 5: \"1500\" stands here: out of order behind station 2; order the stations along the"
                + " boat, each at its own place",
            "boat.csv:9, station 2, Sheer: column 4: height \"8oo\" has the unit \"oo\", which is not known; write m, mm, cm, ft"
                + " or in, or 2-3-4 (ft-in-eighths)",
            "boat.csv:9, station 3, Sheer: column 5: \"800\" stands here: height 800 mm is not above the keel's 900 mm");
        assertProblems(SOUND.replace("Station,", "Origin,station 4\nStation,"),
            "boat.csv:2: column 2: \"station 4\" is no station of this table; they are 0, 1, 2");
    }

    /** The columns run from aft; the hull's stations run from forward. */
    @Test
    void badInput_faultsOfATableFromAftAreBroughtToTheirCells() {
        assertProblems("""
            Units,mm,to outside of skin
            Stations from,aft
            Spacing,1000
            Station,0,1,1,3
            HEIGHTS
            Sheer,800,,800,800
            Keel,900,0,0,0
            HALF-BREADTHS
            Sheer,90,90,90,-90
            """,
            "boat.csv:4, station 1: column 4: \"1\" stands here: out of order behind station 1; order the stations along the boat,"
                + " each at its own place",
            "boat.csv:4, station 1: column 4: \"1\" stands here: station 1 is given twice; give each station its own name",
            "boat.csv:6, station 0, Sheer: column 2: \"800\" stands here: height 800 mm is not above the keel's 900 mm",
            "boat.csv:6, station 1, Sheer: column 3: \"\" stands here: blank; Sheer must be given at every station",
            "boat.csv:9, station 3, Sheer: column 5: \"-90\" stands here: half-breadth -90 mm is negative; half-breadths are 0"
                + " or more");
        assertProblems("""
            Units,mm,to outside of skin
            Stations from,aft
            Spacing,1000
            Station,0,1,2,3
            HEIGHTS
            Sheer,800,,800,800
            Keel,900,0,0,0
            HALF-BREADTHS
            Sheer,90,90,90,-90
            """,
            "boat.csv:6, station 0, Sheer: column 2: \"800\" stands here: height 800 mm is not above the keel's 900 mm",
            "boat.csv:6, station 1, Sheer: column 3: \"\" stands here: blank; Sheer must be given at every station",
            "boat.csv:9, station 3, Sheer: column 5: \"-90\" stands here: half-breadth -90 mm is negative; half-breadths are 0"
                + " or more");
    }

    /** A note in passing decides nothing, but is not passed over either. */
    @Test
    void badInput_noteOfStationsFromAft() {
        String note = "Note,station distances are from the after perpendicular\n";
        assertProblems(note + SOUND,
            "boat.csv:1: column 2: \"station distances are from the after perpendicular\" says in passing that something is"
                + " measured from aft; write a row of its own, Stations from and in the next cell aft or forward");
        assertEquals(2.0, Tables.read(note + "Stations from,aft\n" + SOUND).stations().get(2).x());
        assertEquals("2", Tables.read(note + "Stations from,aft\n" + SOUND).stations().get(0).name());
        assertEquals("0", Tables.read("Note,the tank stands 1200 from the transom\n" + SOUND).stations().get(0).name());
    }

    @Test
    void badInput_spacingBesideDistances() {
        assertProblems(SOUND.replace("Station,", "Spacing,1000\nStation,"),
            "boat.csv:2: column 2: spacing \"1000\" stands beside the distances of line 4; give one or the other");
    }

    @Test
    void badInput_pointAndCommaMixed() {
        assertProblems("""
            Units;mm;to outside of skin
            Station;0;1;2
            x;0;1.000,5;2000
            HEIGHTS
            Sheer;800,5;800.5;800
            Keel;0;0;0
            HALF-BREADTHS
            Sheer;90;90;90
            """,
            "boat.csv:3, station 1: column 3: distance \"1.000,5\" is not a number; write 1000.5 or 3-3-3 (ft-in-eighths)",
            "boat.csv:5, station 1, Sheer: column 3: height \"800.5\" has a decimal point, and \"800,5\" in line 5 a decimal comma;"
                + " use one of them throughout");
    }

    /** 1.420 in a table of millimetres is 1420 to some and 1.42 to others; one number that cannot be thousands settles it. */
    @Test
    void badInput_pointsThatMayPartThousands() {
        String table = SOUND.replace("1000", "1.000").replace("Sheer,800,800,800", "Sheer,1.420,1.390,1.390");
        assertProblems(table,
            "boat.csv:3, station 1: column 3: distance \"1.000\" may be 1000 or 1; leave out what parts the thousands,"
                + " or write other than three decimals");
        assertEquals(0.00142, Tables.read(table.replace("1.390", "1.39")).lines().get(0).at(0).orElseThrow());
        assertEquals(1.42, Tables.read(table.replace("Units,mm", "Units,m").replace("90,90,90", "1,1,1").replace(",2000", ",2"))
            .lines().get(0).at(0).orElseThrow());
    }

    @Test
    void badInput_stationsInRows() {
        assertProblems("""
            Units,mm,to outside of skin
            HEIGHTS
            Station,x,Sheer,Keel,Strake
            0,0,800,0,1
            1,1000,800,0
            ,2000,800,0,1
            HALF-BREADTHS
            Station,Sheer,WL 300
            0,90,80
            2,90,80,70
            """,
            "boat.csv:3: column 5: \"Strake\" is not a line that is known; " + KNOWN,
            "boat.csv:5, station 1: 3 cell(s) for 4 columns; give each its cell, blank or - where the line does not cross",
            "boat.csv:6: column 1: \"\" names no station; name each row's station",
            "boat.csv:8: 2 station(s) stand below this line and 3 below the first such line;"
                + " give both blocks the same stations in the same order",
            "boat.csv:10: column 1: station \"2\" stands where line 5 has \"1\"; give both blocks the same stations in the same order",
            "boat.csv:10, station 2: column 4: \"70\" stands beyond the last of 2 columns;"
                + " if commas are decimal marks here, put ; between the cells");
    }

    @Test
    void badInput_faultsOfTheHullAreBroughtToTheirCells() {
        String table = Tables.resource("outboard-24.csv")
            .replace("3-11-2,3-10-6", "1-11-2,3-10-6")
            .replace("—,1-6-3", "—,3-6-3")
            .replace("0-0-4,0-0-0,0-0-0,0-0-0", "0-0-4,1-6-0,2-0-0,0-0-0")
            .replace("WL 1-0-0,—,0-5-1,1-1-6", "WL 1-0-0,0-0-0,0-5-1,2-6-6")
            + "WL 1-3-0,—,0-3-1,—,—,—,—,—\n";
        assertProblems(table,
            "boat.csv:6, station 5, Sheer: column 7: \"1-11-2\" stands here: height 1-11-2 is not above the keel's 2-0-0",
            "boat.csv:7, station 4, Chine: column 6: \"1-4-6\" stands here: height 1-4-6 is below the keel's 1-6-0;"
                + " a bottom that falls outboard cannot be lofted yet",
            "boat.csv:7, station 5, Chine: column 7: \"1-4-2\" stands here: height 1-4-2 is below the keel's 2-0-0;"
                + " a bottom that falls outboard cannot be lofted yet",
            "boat.csv:8, station 1, Buttock 1-0-0: column 3: \"3-6-3\" stands here: half-breadth 1-0-0, height 3-6-3 lies on"
                + " the wrong side of Chine (half-breadth 1-10-0, height 2-3-6)",
            "boat.csv:13, station 0, WL 1-0-0: column 2: \"0-0-0\" stands here: half-breadth 0-0-0, height 1-0-0 lies below"
                + " the keel at 1-11-0; leave the cell blank where the line does not cross",
            "boat.csv:13, station 1, WL 1-0-0: column 3: \"0-5-1\" stands here: half-breadth 0-5-1, height 1-0-0 runs backwards"
                + " past WL 1-3-0 (half-breadth 0-3-1, height 1-3-0); one of the two is wrong",
            "boat.csv:13, station 2, WL 1-0-0: column 4: \"2-6-6\" stands here: half-breadth 2-6-6, height 1-0-0 lies on"
                + " the wrong side of Chine (half-breadth 2-2-4, height 1-9-0)");
    }

    @Test
    void badInput_noTable() {
        assertProblems("", "boat.csv: the file is empty; a table of offsets was expected");
        assertProblems(" \n\n", "boat.csv: the file is empty; a table of offsets was expected");
        assertProblems("hello\n", "boat.csv: no line begins with \"Station\" and then , or ; or a tab;"
            + " write the stations in such a line, or head a column with it");
        assertProblems("Units,mm\n\"Title,x\nStation,0,1\n", "boat.csv:2: a quoted cell begins here or below and is not closed,"
            + " or text stands behind its closing quote; quote a cell as \"…\", a quote within it as \"\"");
        assertProblems("Units,mm\n\"Title,x\nStation,0,1\n\",5",
            "boat.csv: the line that begins with \"Station\" lies within a quoted cell that begins above it");
    }

    @Test
    void badInput_encodings() {
        assertEquals("boat.csv: the text is UTF-16; save it as CSV in UTF-8",
            Tables.problems("\uFEFFStation,0".getBytes(StandardCharsets.UTF_16LE)));
        assertEquals("boat.csv: the text is UTF-16; save it as CSV in UTF-8",
            Tables.problems("Station,0".getBytes(StandardCharsets.UTF_16)));
        assertEquals("boat.csv:1: a zero byte stands here; the file is UTF-16 or no text; save it as CSV in UTF-8",
            Tables.problems("Station,0".getBytes(StandardCharsets.UTF_16LE)));
        assertEquals("boat.csv:2: the byte 0xE9 is not UTF-8; save the file as CSV in UTF-8",
            Tables.problems("Units,mm\nTitle,caf\u00e9\nStation,0,1\n".getBytes(StandardCharsets.ISO_8859_1)));
        assertEquals("boat.csv: the text is UTF-32; save it as CSV in UTF-8",
            Tables.problems("\uFEFFStation,0".getBytes(Charset.forName("UTF-32LE"))));
        assertEquals("boat.csv: this zip file is no .xlsx spreadsheet; save the table as .xlsx, or as CSV in UTF-8",
            Tables.problems(new byte[] {'P', 'K', 3, 4, 20, 0}));
    }

    @Test
    void badInput_limits(@TempDir Path folder) throws IOException {
        byte[] large = new byte[TableFile.MOST_BYTES + 1];
        Arrays.fill(large, (byte) ' ');
        String tooLarge = "the file has 8388609 bytes; a table of offsets has 8388608 at most";
        assertEquals("boat.csv: " + tooLarge, Tables.problems(large));
        Path file = Files.write(folder.resolve("large.csv"), large);
        assertEquals(file + ": " + tooLarge, Tables.messages(TableFile.read(file)));
        assertProblems("Station" + ",1".repeat(501) + "\n",
            "boat.csv: the table has 501 stations; 500 are the most");
        assertProblems(SOUND + "WL 5,1,1,1\n".repeat(198), "boat.csv: the table has 201 lines; 200 are the most");
        String largest = "; a table has 500 stations and 200 lines at most";
        assertProblems("Station" + ",".repeat(100_000) + "\n", "boat.csv:1: this line has more than 2000 cells" + largest);
        assertProblems("Station,0\n" + "\n".repeat(100_000), "boat.csv: the file has more than 4000 lines" + largest);
        assertProblems(("Note" + ",".repeat(1900) + "\n").repeat(300) + SOUND,
            "boat.csv: the file has more than 500000 cells, empty ones included" + largest);
        assertProblems(SOUND.replace("Keel", "K".repeat(1001)),
            "boat.csv:6: column 1: \"" + "K".repeat(80) + "…\" has 1001 characters; a cell has 1000 at most");
        assertProblems(SOUND.replace("Keel,0", "Keel,\"0" + ",0".repeat(500) + "\""),
            "boat.csv:6: column 2: \"0" + ",0".repeat(39) + ",…\" has 1001 characters; a cell has 1000 at most");
    }

    /** Trying every way to part a line of blanks would take years. */
    @Test
    @Timeout(60)
    void badInput_aLineOfBlanks() {
        assertProblems(" ".repeat(5_000_000) + "x\n", "boat.csv: no line begins with \"Station\" and then , or ; or a tab;"
            + " write the stations in such a line, or head a column with it");
    }

    @Test
    void badInput_files(@TempDir Path folder) {
        assertEquals(folder + ": this is a folder; a file with a table of offsets was expected",
            Tables.messages(TableFile.read(folder)));
        Path missing = folder.resolve("missing.csv");
        assertEquals(missing + ": there is no such file", Tables.messages(TableFile.read(missing)));
    }
}
