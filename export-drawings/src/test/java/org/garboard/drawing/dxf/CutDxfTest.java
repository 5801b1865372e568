package org.garboard.drawing.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.garboard.drawing.Point;
import org.garboard.drawing.dxf.CutDrawing.Contour;
import org.garboard.drawing.dxf.CutDrawing.Hole;
import org.garboard.drawing.dxf.CutDrawing.Stroke;
import org.garboard.reader.OutsideReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CutDxfTest {

    private static final CutDrawing PLATE = new CutDrawing(
            List.of(new Contour(CutLayer.CUT_OUTER, List.of(new Point(10, 20), new Point(110.5, 20),
                    new Point(110.5, 70.25), new Point(10, 70.25)))),
            List.of(new Hole(CutLayer.DRILL, new Point(60, 45), 12)),
            List.of(new Stroke(CutLayer.MARK, new Point(0, 45), new Point(120, 45))));

    static byte[] written() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            CutDxf.write(PLATE, out);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return out.toByteArray();
    }

    @Test
    void exact_keepsEveryRule() {
        assertEquals(List.of(), CutDxfRules.broken(written()));
    }

    @Test
    void exact_millimetresAreTrue() {
        DxfTags tags = DxfTags.of(written());
        assertEquals(List.of("10.0", "110.5", "110.5", "10.0"),
                tags.entities("VERTEX").stream().map(vertex -> vertex.get(10)).toList());
        assertEquals("6.0", tags.entities("CIRCLE").get(0).get(40));
    }

    @Test
    void exact_outlineThatStandsStillIsRefused() {
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class,
                () -> new Contour(CutLayer.CUT_OUTER, List.of(new Point(0, 0), new Point(9, 0), new Point(9, 9), new Point(0, 0))));
        assertEquals("the outline to cut stands still at corner 3, Point[x=0.0, y=0.0] mm", refusal.getMessage());
    }

    @Test
    void exact_outsideReaderFindsNothingToMend(@TempDir Path folder) throws IOException {
        OutsideReader.EZDXF.require();
        Path file = folder.resolve("plate_mm_1to1.dxf");
        Files.write(file, written());
        EzdxfAudit.assertClean(file);
    }
}
