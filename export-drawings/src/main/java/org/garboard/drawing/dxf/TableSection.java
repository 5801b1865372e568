package org.garboard.drawing.dxf;

import org.garboard.drawing.Dimension;
import org.garboard.drawing.Layer;
import org.garboard.drawing.LineType;
import org.garboard.drawing.Sheet;

/** The nine tables of a sheet, in the order readers expect. */
final class TableSection {

    /** Text style of all lettering. */
    static final String LETTERING = "ISO";
    /** Dimension style of all dimensions. */
    static final String DIMENSIONS = "SHOP";
    /** Layer of the points that a dimension hangs on; not plotted, its name fixed by the format. */
    static final String DEFINITION_POINTS = "Defpoints";

    private static final String LETTERING_FONT = "isocp.shx";
    private static final int DECIMAL_POINT = '.';

    private final Tags tags;
    private final Handles handles;
    private int table;

    private TableSection(Tags tags, Handles handles) {
        this.tags = tags;
        this.handles = handles;
    }

    static void write(Tags tags, Skeleton skeleton, Handles handles, Sheet sheet, DimensionBlocks blocks) {
        TableSection section = new TableSection(tags, handles);
        tags.section("TABLES");
        section.viewport(sheet);
        section.lineTypes();
        section.layers();
        section.styles(skeleton);
        section.open("VIEW", 0).close();
        section.open("UCS", 0).close();
        section.open("APPID", 1);
        section.entry("APPID", 5, handles.next(), "AcDbRegAppTableRecord", "ACAD").tag(70, 0);
        section.close();
        section.dimensionStyles(sheet, skeleton);
        section.blockRecords(skeleton, blocks);
        tags.endSection();
    }

    private TableSection open(String name, int entries) {
        table = handles.next();
        tags.tag(0, "TABLE").tag(2, name).handle(5, table).handle(330, 0).tag(100, "AcDbSymbolTable").tag(70, entries);
        return this;
    }

    private void close() {
        tags.tag(0, "ENDTAB");
    }

    private Tags entry(String type, int handleCode, int handle, String subclass, String name) {
        return tags.tag(0, type).handle(handleCode, handle).handle(330, table)
                .tag(100, "AcDbSymbolTableRecord").tag(100, subclass).tag(2, name);
    }

    private void viewport(Sheet sheet) {
        double scale = sheet.scale().denominator();
        open("VPORT", 1);
        entry("VPORT", 5, handles.next(), "AcDbViewportTableRecord", "*ACTIVE").tag(70, 0)
                .flat(10, 0, 0).flat(11, 1, 1)
                .flat(12, sheet.width() * scale / 2, sheet.height() * scale / 2)
                .flat(13, 0, 0).flat(14, 10, 10).flat(15, 10, 10)
                .number(16, 0).number(26, 0).number(36, 1)
                .number(17, 0).number(27, 0).number(37, 0)
                .number(40, sheet.height() * scale).number(41, sheet.width() / sheet.height())
                .number(42, 50).number(43, 0).number(44, 0).number(50, 0).number(51, 0)
                .tag(71, 0).tag(72, 1000).tag(73, 1).tag(74, 3).tag(75, 0).tag(76, 0).tag(77, 0).tag(78, 0);
        close();
    }

    private void lineTypes() {
        open("LTYPE", LineType.values().length + 2);
        lineType("ByBlock", "");
        lineType("ByLayer", "");
        for (LineType type : LineType.values()) {
            entry("LTYPE", 5, handles.next(), "AcDbLinetypeTableRecord", type.dxfName())
                    .tag(70, 0).tag(3, type.description()).tag(72, 65)
                    .tag(73, type.pattern().size()).number(40, type.repeat());
            type.pattern().forEach(dash -> tags.number(49, dash).tag(74, 0));
        }
        close();
    }

    private void lineType(String name, String description) {
        entry("LTYPE", 5, handles.next(), "AcDbLinetypeTableRecord", name)
                .tag(70, 0).tag(3, description).tag(72, 65).tag(73, 0).number(40, 0);
    }

    private void layers() {
        open("LAYER", Layer.values().length + 2);
        layer("0", 7, LineType.CONTINUOUS.dxfName()).tag(370, -3);
        for (Layer layer : Layer.values()) {
            layer(layer.name(), layer.colour(), layer.lineType().dxfName())
                    .tag(370, (int) Math.round(layer.width() * 100));
        }
        layer(DEFINITION_POINTS, 7, LineType.CONTINUOUS.dxfName()).tag(290, 0).tag(370, -3);
        close();
    }

    private Tags layer(String name, int colour, String lineType) {
        return entry("LAYER", 5, handles.next(), "AcDbLayerTableRecord", name)
                .tag(70, 0).tag(62, colour).tag(6, lineType);
    }

    private void styles(Skeleton skeleton) {
        open("STYLE", 2);
        style(handles.next(), "Standard", "txt");
        style(skeleton.lettering(), LETTERING, LETTERING_FONT);
        close();
    }

    private void style(int handle, String name, String font) {
        entry("STYLE", 5, handle, "AcDbTextStyleTableRecord", name).tag(70, 0)
                .number(40, 0).number(41, 1).number(50, 0).tag(71, 0).number(42, 2.5).tag(3, font).tag(4, "");
    }

    private void dimensionStyles(Sheet sheet, Skeleton skeleton) {
        open("DIMSTYLE", 2);
        tags.tag(100, "AcDbDimStyleTable");
        dimensionStyle("Standard", sheet, skeleton);
        dimensionStyle(DIMENSIONS, sheet, skeleton);
        close();
    }

    private void dimensionStyle(String name, Sheet sheet, Skeleton skeleton) {
        entry("DIMSTYLE", 105, handles.next(), "AcDbDimStyleTableRecord", name).tag(70, 0)
                .number(40, sheet.scale().denominator())
                .number(41, Dimension.arrow(sheet.lettering()))
                .number(42, Dimension.GAP)
                .number(44, Dimension.OVERRUN)
                .number(140, sheet.lettering())
                .number(147, Dimension.ABOVE_LINE)
                .tag(73, 0).tag(74, 0).tag(77, 1).tag(78, 8)
                .tag(179, 1).tag(271, DimensionTags.DECIMALS).tag(272, DimensionTags.DECIMALS)
                .tag(278, DECIMAL_POINT).handle(340, skeleton.lettering());
    }

    private void blockRecords(Skeleton skeleton, DimensionBlocks blocks) {
        open("BLOCK_RECORD", blocks.all().size() + 2);
        blockRecord(skeleton.modelRecord(), "*Model_Space", skeleton.modelLayout());
        blockRecord(skeleton.paperRecord(), "*Paper_Space", skeleton.paperLayout());
        blocks.all().forEach(block -> blockRecord(block.record(), block.name(), 0));
        close();
    }

    private void blockRecord(int handle, String name, int layout) {
        entry("BLOCK_RECORD", 5, handle, "AcDbBlockTableRecord", name).handle(340, layout);
    }
}
