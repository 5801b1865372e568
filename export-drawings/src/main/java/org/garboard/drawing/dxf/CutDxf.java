package org.garboard.drawing.dxf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.garboard.drawing.Box;
import org.garboard.drawing.Point;

/**
 * Writes outlines to be cut as DXF AC1009, the version every machine reads, in true millimetres.
 *
 * <p>Closed POLYLINE, LINE and CIRCLE only. No handles, text, blocks or colours beyond the layers':
 * readers on machines skip or misplace what they do not know. The machine's kerf is not allowed for.
 */
public final class CutDxf {

    private static final int CLOSED = 1;
    private static final String[] EMPTY_TABLES = {"VIEW", "UCS"};

    private CutDxf() {
    }

    /** Writes the whole file; the same drawing gives the same bytes. */
    public static void write(CutDrawing drawing, OutputStream out) throws IOException {
        Tags tags = new Tags();
        Box box = drawing.extents();
        header(tags, box);
        tables(tags, box);
        tags.section("BLOCKS").endSection();
        tags.section("ENTITIES");
        drawing.contours().forEach(contour -> contour(tags, contour));
        drawing.holes().forEach(hole -> hole(tags, hole));
        drawing.strokes().forEach(stroke -> stroke(tags, stroke));
        tags.endSection().tag(0, "EOF");
        out.write(tags.toString().getBytes(StandardCharsets.US_ASCII));
    }

    /** Units and measurement are no variables of this version, but readers that know them obey them. */
    private static void header(Tags tags, Box box) {
        tags.section("HEADER");
        tags.tag(9, "$ACADVER").tag(1, "AC1009");
        tags.tag(9, "$DWGCODEPAGE").tag(3, "ANSI_1252");
        tags.tag(9, "$INSBASE").point(10, 0, 0);
        tags.tag(9, "$EXTMIN").point(10, box.left(), box.bottom());
        tags.tag(9, "$EXTMAX").point(10, box.right(), box.top());
        tags.tag(9, "$LIMMIN").flat(10, box.left(), box.bottom());
        tags.tag(9, "$LIMMAX").flat(10, box.right(), box.top());
        tags.tag(9, "$INSUNITS").tag(70, 4);
        tags.tag(9, "$MEASUREMENT").tag(70, 1);
        tags.endSection();
    }

    private static void tables(Tags tags, Box box) {
        tags.section("TABLES");
        table(tags, "VPORT", 1);
        viewport(tags, box);
        tags.tag(0, "ENDTAB");
        table(tags, "LTYPE", 1);
        tags.tag(0, "LTYPE").tag(2, "CONTINUOUS").tag(70, 64).tag(3, "Solid line").tag(72, 65).tag(73, 0).number(40, 0);
        tags.tag(0, "ENDTAB");
        table(tags, "LAYER", CutLayer.values().length);
        for (CutLayer layer : CutLayer.values()) {
            layer(tags, layer.name(), layer.colour());
        }
        tags.tag(0, "ENDTAB");
        table(tags, "STYLE", 1);
        tags.tag(0, "STYLE").tag(2, "STANDARD").tag(70, 0).number(40, 0).number(41, 1).number(50, 0)
                .tag(71, 0).number(42, 2.5).tag(3, "txt").tag(4, "");
        tags.tag(0, "ENDTAB");
        for (String name : EMPTY_TABLES) {
            table(tags, name, 0);
            tags.tag(0, "ENDTAB");
        }
        table(tags, "APPID", 1);
        tags.tag(0, "APPID").tag(2, "ACAD").tag(70, 0);
        tags.tag(0, "ENDTAB");
        table(tags, "DIMSTYLE", 1);
        tags.tag(0, "DIMSTYLE").tag(2, "STANDARD").tag(70, 0);
        tags.tag(0, "ENDTAB");
        tags.endSection();
    }

    private static void table(Tags tags, String name, int entries) {
        tags.tag(0, "TABLE").tag(2, name).tag(70, entries);
    }

    private static void layer(Tags tags, String name, int colour) {
        tags.tag(0, "LAYER").tag(2, name).tag(70, 0).tag(62, colour).tag(6, "CONTINUOUS");
    }

    private static void viewport(Tags tags, Box box) {
        tags.tag(0, "VPORT").tag(2, "*ACTIVE").tag(70, 0).flat(10, 0, 0).flat(11, 1, 1)
                .flat(12, box.centre().x(), box.centre().y()).flat(13, 0, 0).flat(14, 10, 10).flat(15, 10, 10)
                .number(16, 0).number(26, 0).number(36, 1).number(17, 0).number(27, 0).number(37, 0)
                .number(40, Math.max(box.height(), box.width())).number(41, 1).number(42, 50)
                .number(43, 0).number(44, 0).number(50, 0).number(51, 0)
                .tag(71, 0).tag(72, 1000).tag(73, 1).tag(74, 3).tag(75, 0).tag(76, 0).tag(77, 0).tag(78, 0);
    }

    private static void contour(Tags tags, CutDrawing.Contour contour) {
        String layer = contour.layer().name();
        tags.tag(0, "POLYLINE").tag(8, layer).tag(66, 1).point(10, 0, 0).tag(70, CLOSED);
        for (Point corner : contour.corners()) {
            tags.tag(0, "VERTEX").tag(8, layer).point(10, corner.x(), corner.y());
        }
        tags.tag(0, "SEQEND").tag(8, layer);
    }

    private static void hole(Tags tags, CutDrawing.Hole hole) {
        tags.tag(0, "CIRCLE").tag(8, hole.layer().name()).point(10, hole.centre().x(), hole.centre().y())
                .number(40, hole.diameter() / 2);
    }

    private static void stroke(Tags tags, CutDrawing.Stroke stroke) {
        tags.tag(0, "LINE").tag(8, stroke.layer().name()).point(10, stroke.from().x(), stroke.from().y())
                .point(11, stroke.to().x(), stroke.to().y());
    }
}
