package org.garboard.drawing.sheets;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.garboard.craft.BottomFeatures;
import org.garboard.drawing.OutsideReader;
import org.garboard.drawing.dxf.EzdxfAudit;
import org.garboard.drawing.dxf.SheetDxfRules;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Units;
import org.garboard.job.SitingRecord;
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
        assertEquals(List.of("sheet-1-siting.dxf", "sheet-1-siting.svg", "sheet-4-pocket.dxf", "sheet-4-pocket.svg",
                "pocket-outside-up_mm_1to1.dxf"), names(drawn(Units.MILLIMETRES, Paper.A3)));
    }

    @Test
    void exact_noPocketNoSheetFour() {
        SitingRecord with = BOAT.record(Units.MILLIMETRES, Paper.A2);
        SitingRecord without = new SitingRecord(with.job(), BottomFeatures.NOT_LISTED, with.sitings(), with.advised(), Optional.empty(),
                "ramps of 1:8 run off the ends of the table; ramps of 1:5.0 or steeper");
        DrawnSet set = SheetSet.draw(without, BOAT.table(), Hull.through(BOAT.table()), SampleBoat.PROVENANCE);
        assertEquals(List.of("sheet-1-siting.dxf", "sheet-1-siting.svg"), names(set));
    }

    /** What cannot be read is not drawn, and both sheets say so; nor is anything cut without them. */
    @Test
    void badInput_paperTooSmall() {
        DrawnSet set = drawn(Units.MILLIMETRES, Paper.A4);
        assertEquals(List.of(), names(set));
        assertEquals(List.of("sheet 1 (siting)", "sheet 4 (pocket)", "cut file (pocket)"),
                set.refusals().stream().map(SheetRefusal::sheet).toList());
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
            } else {
                assertEquals(new OutsideReader.Answer(0, ""), OutsideReader.XMLLINT.run(List.of("--noout", "--nonet", file.toString())));
                assertEquals(0, OutsideReader.RSVG.run(List.of("-o", file + ".png", file.toString())).exit());
            }
        }
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
