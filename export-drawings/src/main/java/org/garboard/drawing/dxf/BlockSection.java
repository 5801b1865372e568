package org.garboard.drawing.dxf;

/** The blocks: empty model and paper space, and one per dimension. */
final class BlockSection {

    private static final int ANONYMOUS = 1;

    private BlockSection() {
    }

    static void write(Tags tags, Skeleton skeleton, Handles handles, DimensionBlocks blocks) {
        tags.section("BLOCKS");
        begin(tags, "*Model_Space", handles.next(), skeleton.modelRecord(), 0);
        end(tags, "*Model_Space", handles.next(), skeleton.modelRecord());
        begin(tags, "*Paper_Space", handles.next(), skeleton.paperRecord(), 0);
        end(tags, "*Paper_Space", handles.next(), skeleton.paperRecord());
        for (DimensionBlocks.Block block : blocks.all()) {
            begin(tags, block.name(), handles.next(), block.record(), ANONYMOUS);
            tags.append(block.strokes());
            end(tags, block.name(), handles.next(), block.record());
        }
        tags.endSection();
    }

    private static void begin(Tags tags, String name, int handle, int record, int flags) {
        tags.tag(0, "BLOCK").handle(5, handle).handle(330, record).tag(100, "AcDbEntity");
        space(tags, name);
        tags.tag(8, "0").tag(100, "AcDbBlockBegin").tag(2, name).tag(70, flags)
                .point(10, 0, 0).tag(3, name).tag(1, "");
    }

    private static void end(Tags tags, String name, int handle, int record) {
        tags.tag(0, "ENDBLK").handle(5, handle).handle(330, record).tag(100, "AcDbEntity");
        space(tags, name);
        tags.tag(8, "0").tag(100, "AcDbBlockEnd");
    }

    private static void space(Tags tags, String name) {
        if (name.equals("*Paper_Space")) {
            tags.tag(67, 1);
        }
    }
}
