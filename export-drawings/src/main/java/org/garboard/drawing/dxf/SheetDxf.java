package org.garboard.drawing.dxf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.garboard.drawing.Sheet;

/**
 * Writes a sheet as DXF AC1015 for people: all of it in model space, true size in millimetres,
 * frame and lettering multiplied by the scale's denominator; paper space stays empty, because
 * common readers draw it on top of the model.
 */
public final class SheetDxf {

    private SheetDxf() {
    }

    /** Writes the whole file; the same sheet gives the same bytes. */
    public static void write(Sheet sheet, OutputStream out) throws IOException {
        out.write(text(sheet).getBytes(StandardCharsets.US_ASCII));
    }

    private static String text(Sheet sheet) {
        Handles handles = new Handles();
        Skeleton skeleton = new Skeleton(handles);
        DimensionBlocks blocks = new DimensionBlocks();
        Tags entities = new Tags();
        sheet.drawOn(new EntityCanvas(entities, handles, skeleton.modelRecord(), sheet.scale(), blocks));

        Tags body = new Tags();
        body.section("CLASSES").endSection();
        TableSection.write(body, skeleton, handles, sheet, blocks);
        BlockSection.write(body, skeleton, handles, blocks);
        body.section("ENTITIES").append(entities).endSection();
        ObjectSection.write(body, skeleton, sheet);
        body.tag(0, "EOF");

        Tags file = new Tags();
        HeaderSection.write(file, sheet, handles.seed());
        return file.append(body).toString();
    }
}
