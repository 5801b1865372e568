package org.garboard.drawing.dxf;

import org.garboard.drawing.Dimension;
import org.garboard.drawing.Sheet;

/** The variables at the head of a sheet. No dates: the same sheet gives the same bytes. */
final class HeaderSection {

    private HeaderSection() {
    }

    static void write(Tags tags, Sheet sheet, int handleSeed) {
        double scale = sheet.scale().denominator();
        double width = sheet.width() * scale;
        double height = sheet.height() * scale;
        // a comment, which readers pass over and people find in a text editor
        tags.tag(999, AsciiText.of(sheet.title()));
        tags.section("HEADER");
        name(tags, "$ACADVER").tag(1, "AC1015");
        name(tags, "$DWGCODEPAGE").tag(3, "ANSI_1252");
        name(tags, "$INSBASE").point(10, 0, 0);
        name(tags, "$EXTMIN").point(10, 0, 0);
        name(tags, "$EXTMAX").point(10, width, height);
        name(tags, "$LIMMIN").flat(10, 0, 0);
        name(tags, "$LIMMAX").flat(10, width, height);
        name(tags, "$LTSCALE").number(40, scale);
        name(tags, "$TEXTSTYLE").tag(7, TableSection.LETTERING);
        name(tags, "$CLAYER").tag(8, "0");
        dimensions(tags, sheet, scale);
        name(tags, "$LUNITS").tag(70, 2);
        name(tags, "$LUPREC").tag(70, 2);
        name(tags, "$PSLTSCALE").tag(70, 1);
        name(tags, "$TILEMODE").tag(70, 1);
        name(tags, "$INSUNITS").tag(70, 4);
        name(tags, "$MEASUREMENT").tag(70, 1);
        name(tags, "$LWDISPLAY").tag(290, 1);
        name(tags, "$HANDSEED").handle(5, handleSeed);
        tags.endSection();
    }

    private static void dimensions(Tags tags, Sheet sheet, double scale) {
        name(tags, "$DIMSCALE").number(40, scale);
        name(tags, "$DIMASZ").number(40, Dimension.arrow(sheet.lettering()));
        name(tags, "$DIMEXO").number(40, Dimension.GAP);
        name(tags, "$DIMEXE").number(40, Dimension.OVERRUN);
        name(tags, "$DIMTXT").number(40, sheet.lettering());
        name(tags, "$DIMGAP").number(40, Dimension.ABOVE_LINE);
        name(tags, "$DIMTAD").tag(70, 1);
        name(tags, "$DIMTIH").tag(70, 0);
        name(tags, "$DIMTOH").tag(70, 0);
        name(tags, "$DIMZIN").tag(70, 8);
        name(tags, "$DIMDEC").tag(70, DimensionTags.DECIMALS);
        name(tags, "$DIMSTYLE").tag(2, TableSection.DIMENSIONS);
    }

    private static Tags name(Tags tags, String name) {
        return tags.tag(9, name);
    }
}
