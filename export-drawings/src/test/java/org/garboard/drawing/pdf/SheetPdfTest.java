package org.garboard.drawing.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.SampleSheet;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.StrokesInFile;
import org.garboard.drawing.dxf.SheetDxf;
import org.garboard.drawing.svg.SheetSvg;
import org.garboard.reader.OutsideReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetPdfTest {

    /** One of everything: the three writers put every stroke to the same place. */
    @Test
    void law_oneModelThreeWriters() throws IOException {
        Sheet sheet = SampleSheet.everything();
        ByteArrayOutputStream dxf = new ByteArrayOutputStream();
        ByteArrayOutputStream svg = new ByteArrayOutputStream();
        SheetDxf.write(sheet, dxf);
        SheetSvg.write(sheet, svg);
        StrokesInFile hatched = StrokesInFile.ofSvg(svg.toByteArray(), StrokesInFile.Hatches.SHOWN);
        StrokesInFile plain = StrokesInFile.ofSvg(svg.toByteArray(), StrokesInFile.Hatches.LEFT_OUT);
        StrokesInFile pdf = StrokesInFile.ofPdf(SheetPdf.write(List.of(sheet)), 0);
        StrokesInFile cad = StrokesInFile.ofDxf(dxf.toByteArray(), sheet.scale().denominator());
        assertTrue(plain.straight() > 20 && plain.round() > 100 && hatched.straight() > plain.straight(),
                plain.straight() + " " + plain.round() + " " + hatched.straight());
        assertEquals(List.of(), hatched.lackingIn(pdf, 0.002));
        assertEquals(List.of(), pdf.lackingIn(hatched, 0.002));
        assertEquals(List.of(), plain.lackingIn(cad, 0.002));
        assertEquals(List.of(), cad.lackingIn(plain, 0.002));
        assertEquals(cad.round(), pdf.round(), 5e-4 * cad.round());
        // a half turn, read back from a chord to the micrometre, may be out by hundredths
        assertEquals(plain.round(), cad.round(), 2e-3 * plain.round());
        assertEquals(plain.texts(), pdf.texts());
        assertEquals(plain.texts(), cad.texts());
    }

    @Test
    void exact_bookmarksNameTheSheets() throws IOException {
        Sheet sheet = SampleSheet.everything();
        Sheet other = new Sheet("Other", sheet.description(), 210, 297, new Scale(1), 3.5, List.of(), sheet.furniture());
        byte[] file = SheetPdf.write(List.of(sheet, other));
        List<String> names = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(file)) {
            for (PDOutlineItem item : document.getDocumentCatalog().getDocumentOutline().children()) {
                names.add(item.getTitle() + " " + document.getPages().indexOf(item.findDestinationPage(document)));
            }
            assertEquals("None", document.getDocumentCatalog().getViewerPreferences().getPrintScaling());
        }
        assertEquals(List.of("Sample 0", "Other 1"), names);
        assertArrayEquals(file, SheetPdf.write(List.of(sheet, other)));
    }

    /** Dates are the job's, at the beginning of the day; without one there are none. */
    @Test
    void exact_datesOfTheJob() throws IOException {
        List<Sheet> sheets = List.of(SampleSheet.everything());
        try (PDDocument document = Loader.loadPDF(SheetPdf.write(sheets, "2026-03-14"))) {
            assertEquals("2026-03-14T00:00:00Z", document.getDocumentInformation().getCreationDate().toInstant().toString());
            assertEquals("2026-03-14T00:00:00Z", document.getDocumentInformation().getModificationDate().toInstant().toString());
        }
        byte[] undated = SheetPdf.write(sheets);
        assertFalse(new String(undated, StandardCharsets.ISO_8859_1).contains("Date"));
        try (PDDocument document = Loader.loadPDF(SheetPdf.append(SheetPdf.write(sheets, "2026-03-14"), 1, sheets, "2026-05-02"))) {
            assertEquals("2026-03-14T00:00:00Z", document.getDocumentInformation().getCreationDate().toInstant().toString());
            assertEquals("2026-05-02T00:00:00Z", document.getDocumentInformation().getModificationDate().toInstant().toString());
        }
    }

    /** Letters beyond the face come out as boxes and are told; controls do nothing. */
    @Test
    void exact_anyLetterCanBeWritten() throws IOException {
        String name = "日\u0007本 Ærø \u202eolleh %%c <b>&";
        byte[] file = SheetPdf.write(List.of(SampleSheet.with(name)));
        try (PDDocument document = Loader.loadPDF(file)) {
            String words = new PDFTextStripper().getText(document);
            assertTrue(words.contains("Ærø"), words);
            assertTrue(words.contains("%%c <b>&"), words);
            assertFalse(words.contains("日"), words);
        }
        assertEquals(new TreeSet<>(List.of("U+65E5", "U+672C")), Face.lacking(List.of("日本 Ærø", "日")));
    }

    /** Poppler at 600 dpi: a bar of 100 mm within 0.1 mm, the page within a pixel. */
    @Test
    void exact_rulerInPoppler(@TempDir Path folder) throws IOException {
        OutsideReader.POPPLER.require();
        Sheet sheet = new Sheet("Ruler", "A ruler", 210, 297, new Scale(1), 3.5, List.of(),
                List.of(new Line(Layer.HULL, new Point(50, 50), new Point(50, 60)), new Line(Layer.HULL, new Point(150, 50), new Point(150, 60))));
        Path file = folder.resolve("ruler.pdf");
        Files.write(file, SheetPdf.write(List.of(sheet)));
        assertEquals(0, OutsideReader.POPPLER.run(List.of("-r", "600", "-png", "-singlefile", file.toString(), folder.resolve("ruler").toString())).exit());
        BufferedImage image = ImageIO.read(folder.resolve("ruler.png").toFile());
        assertEquals(210 / 25.4 * 600, image.getWidth(), 1);
        assertEquals(297 / 25.4 * 600, image.getHeight(), 1);
        int row = (int) ((297 - 55) / 25.4 * 600);
        double sum = 0;
        double count = 0;
        double left = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            if ((image.getRGB(x, row) & 0xff) < 128) {
                sum += x;
                count++;
            } else if (count > 0) {
                double middle = sum / count * 25.4 / 600;
                if (left == 0) {
                    left = middle;
                } else {
                    assertEquals(100, middle - left, 0.1);
                    return;
                }
                sum = 0;
                count = 0;
            }
        }
        throw new AssertionError("no two strokes found");
    }
}
