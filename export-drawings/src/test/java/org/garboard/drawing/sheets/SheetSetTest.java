package org.garboard.drawing.sheets;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.garboard.craft.BottomFeatures;
import org.garboard.drawing.StrokesInFile;
import org.garboard.drawing.dxf.EzdxfAudit;
import org.garboard.drawing.dxf.SheetDxfRules;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Units;
import org.garboard.job.SitingRecord;
import org.garboard.reader.OutsideReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetSetTest {

    private static final SampleBoat BOAT = new SampleBoat(6.706, 11);

    private static DrawnSet drawn(Units units, Paper paper) {
        return SheetSet.draw(BOAT.record(units, paper), BOAT.table(), Hull.through(BOAT.table()), SampleBoat.PROVENANCE);
    }

    private static List<String> names(DrawnSet set) {
        return set.drawings().stream().map(NamedDrawing::fileName).toList();
    }

    @Test
    void exact_filesOfTheSet() {
        assertEquals(List.of("sheet-1-siting.dxf", "sheet-1-siting.svg", "sheet-2-marking-out.dxf",
                "sheet-2-marking-out.svg", "sheet-4-pocket.dxf", "sheet-4-pocket.svg",
                "sheet-7-check.dxf", "sheet-7-check.svg", "pocket-outside-up_mm_1to1.dxf", "template-A4.pdf", "template-Letter.pdf", "set.pdf"), names(drawn(Units.MILLIMETRES, Paper.A3)));
    }

    @Test
    void exact_noPocketNoSheetFour() {
        SitingRecord with = BOAT.record(Units.MILLIMETRES, Paper.A2);
        SitingRecord without = new SitingRecord(with.job(), BottomFeatures.NOT_LISTED, with.sitings(), with.advised(), Optional.empty(),
                "ramps of 1:8 run off the ends of the table; ramps of 1:5.0 or steeper");
        DrawnSet set = SheetSet.draw(without, BOAT.table(), Hull.through(BOAT.table()), SampleBoat.PROVENANCE);
        assertEquals(List.of("sheet-1-siting.dxf", "sheet-1-siting.svg", "sheet-2-marking-out.dxf", "sheet-2-marking-out.svg",
                "sheet-7-check.dxf", "sheet-7-check.svg", "set.pdf"), names(set));
    }

    /** What one small sheet does not hold runs on; all its pages stand in the set, in their order, and say which they are. */
    @Test
    void exact_smallPaperRunsOn() {
        DrawnSet set = drawn(Units.MILLIMETRES, Paper.A4);
        assertEquals(List.of(), set.refusals());
        List<String> pages = set.drawings().stream().filter(drawing -> drawing.fileName().matches("sheet-1-siting.*svg"))
                .map(drawing -> new String(drawing.content(), StandardCharsets.UTF_8)).toList();
        assertTrue(pages.size() > 1, names(set).toString());
        for (int i = 0; i < pages.size(); i++) {
            assertTrue(pages.get(i).contains("Transducer siting, page " + (i + 1) + " of " + pages.size() + "</title>"), pages.get(i).substring(0, 900));
            assertTrue(pages.get(i).contains("HOLE BELOW"), "every page has its cautions");
        }
        String all = String.join(" ", pages);
        for (String once : List.of("PROFILE FROM STARBOARD", "BOTTOM PLAN SEEN FROM BELOW", "BODY PLAN,", ">SITES<", ">NOTES<", ">FEASIBLE REGIONS<")) {
            assertEquals(2, all.split(once, -1).length, once);
        }
    }

    @Test
    void exact_sheetsKeepEveryRule() {
        for (NamedDrawing drawing : drawn(Units.FEET_INCHES_EIGHTHS, Paper.ANSI_C).drawings()) {
            if (drawing.fileName().matches("sheet-.*\\.dxf")) {
                assertEquals(List.of(), SheetDxfRules.broken(drawing.content()), drawing.fileName());
            }
        }
    }

    @Test
    void exact_outsideReadersTakeTheSet(@TempDir Path folder) throws IOException {
        OutsideReader.EZDXF.require();
        OutsideReader.XMLLINT.require();
        OutsideReader.RSVG.require();
        for (NamedDrawing drawing : drawn(Units.FEET_INCHES_EIGHTHS, Paper.ANSI_C).drawings()) {
            Path file = folder.resolve(drawing.fileName());
            Files.write(file, drawing.content());
            if (drawing.fileName().endsWith(".dxf")) {
                EzdxfAudit.assertClean(file);
            } else if (drawing.fileName().endsWith(".svg")) {
                assertEquals(new OutsideReader.Answer(0, ""), OutsideReader.XMLLINT.run(List.of("--noout", "--nonet", file.toString())));
                assertEquals(0, OutsideReader.RSVG.run(List.of("-o", file + ".png", file.toString())).exit());
            }
        }
    }

    /** DXF, SVG and the page of the set: every stroke at the same place on the paper, to 0.002 mm. */
    @Test
    void law_threeFormatsShowTheSame() {
        List<NamedDrawing> all = drawn(Units.FEET_INCHES_EIGHTHS, Paper.ANSI_C).drawings();
        byte[] set = all.stream().filter(drawing -> drawing.fileName().equals("set.pdf")).findFirst().orElseThrow().content();
        int page = 0;
        for (int i = 0; i + 1 < all.size(); i++) {
            if (!all.get(i + 1).fileName().endsWith(".svg")) {
                continue;
            }
            byte[] svg = all.get(i + 1).content();
            int scale = Integer.parseInt(new String(svg, StandardCharsets.UTF_8).replaceAll("(?s).*?Scale 1:(\\d+) on.*", "$1"));
            StrokesInFile cad = StrokesInFile.ofDxf(all.get(i).content(), scale);
            StrokesInFile plain = StrokesInFile.ofSvg(svg, StrokesInFile.Hatches.LEFT_OUT);
            StrokesInFile hatched = StrokesInFile.ofSvg(svg, StrokesInFile.Hatches.SHOWN);
            StrokesInFile paper = StrokesInFile.ofPdf(set, page++);
            assertTrue(plain.straight() > 50, all.get(i).fileName());
            assertEquals(List.of(), plain.lackingIn(cad, 0.002), all.get(i).fileName());
            assertEquals(List.of(), cad.lackingIn(plain, 0.002), all.get(i).fileName());
            assertEquals(List.of(), hatched.lackingIn(paper, 0.002), all.get(i).fileName());
            assertEquals(List.of(), paper.lackingIn(hatched, 0.002), all.get(i).fileName());
            // a half turn, read back from a chord to the micrometre, may be out by hundredths
            assertEquals(plain.round(), cad.round(), 2e-3 * plain.round());
            assertEquals(cad.round(), paper.round(), 5e-4 * cad.round());
            assertEquals(plain.texts(), cad.texts());
            assertEquals(plain.texts(), paper.texts());
        }
        assertEquals(all.stream().filter(drawing -> drawing.fileName().endsWith(".svg")).count(), page);
    }

    @Test
    void law_sameBytesOnAnyLocale() {
        DrawnSet first = drawn(Units.FEET_INCHES_EIGHTHS, Paper.ANSI_B);
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("tr-TR", "ar-EG-u-nu-arab")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                DrawnSet again = drawn(Units.FEET_INCHES_EIGHTHS, Paper.ANSI_B);
                for (int i = 0; i < first.drawings().size(); i++) {
                    assertArrayEquals(first.drawings().get(i).content(), again.drawings().get(i).content());
                }
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
