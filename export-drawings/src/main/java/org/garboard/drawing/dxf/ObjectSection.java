package org.garboard.drawing.dxf;

import org.garboard.drawing.Sheet;

/** The dictionaries, and the layouts of model space and of the paper space that stays empty. */
final class ObjectSection {

    private static final int MODEL_TAB = 1024;

    private ObjectSection() {
    }

    static void write(Tags tags, Skeleton skeleton, Sheet sheet) {
        tags.section("OBJECTS");
        dictionary(tags, skeleton.rootDictionary(), 0)
                .tag(3, "ACAD_GROUP").handle(350, skeleton.groupDictionary())
                .tag(3, "ACAD_LAYOUT").handle(350, skeleton.layoutDictionary());
        dictionary(tags, skeleton.groupDictionary(), skeleton.rootDictionary());
        dictionary(tags, skeleton.layoutDictionary(), skeleton.rootDictionary())
                .tag(3, "Layout1").handle(350, skeleton.paperLayout())
                .tag(3, "Model").handle(350, skeleton.modelLayout());
        plotSettings(tags, skeleton.modelLayout(), skeleton, sheet, MODEL_TAB);
        layout(tags, "Model", 0, sheet, skeleton.modelRecord());
        plotSettings(tags, skeleton.paperLayout(), skeleton, sheet, 0);
        layout(tags, "Layout1", 1, sheet, skeleton.paperRecord());
        tags.endSection();
    }

    private static Tags dictionary(Tags tags, int handle, int owner) {
        return tags.tag(0, "DICTIONARY").handle(5, handle).handle(330, owner)
                .tag(100, "AcDbDictionary").tag(281, 1);
    }

    private static void plotSettings(Tags tags, int handle, Skeleton skeleton, Sheet sheet, int flags) {
        tags.tag(0, "LAYOUT").handle(5, handle).handle(330, skeleton.layoutDictionary())
                .tag(100, "AcDbPlotSettings").tag(1, "").tag(2, "").tag(4, "").tag(6, "")
                .number(40, 0).number(41, 0).number(42, 0).number(43, 0)
                .number(44, sheet.width()).number(45, sheet.height())
                .number(46, 0).number(47, 0).number(48, 0).number(49, 0)
                .number(140, 0).number(141, 0)
                .number(142, 1).number(143, sheet.scale().denominator())
                .tag(70, flags).tag(72, 1).tag(73, 0).tag(74, 1).tag(7, "").tag(75, 0)
                .number(147, 1).number(148, 0).number(149, 0);
    }

    private static void layout(Tags tags, String name, int tab, Sheet sheet, int blockRecord) {
        double scale = tab == 0 ? sheet.scale().denominator() : 1;
        double width = sheet.width() * scale;
        double height = sheet.height() * scale;
        tags.tag(100, "AcDbLayout").tag(1, name).tag(70, 1).tag(71, tab)
                .flat(10, 0, 0).flat(11, width, height)
                .point(12, 0, 0).point(14, 0, 0).point(15, width, height)
                .number(146, 0).point(13, 0, 0).point(16, 1, 0).point(17, 0, 1)
                .tag(76, 0).handle(330, blockRecord);
    }
}
