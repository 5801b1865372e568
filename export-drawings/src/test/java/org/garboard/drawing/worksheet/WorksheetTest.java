package org.garboard.drawing.worksheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.garboard.drawing.Box;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.pdf.SheetPdf;
import org.junit.jupiter.api.Test;

class WorksheetTest {
    @Test
    void law_sameBytesInAnyZoneAndLocale() {
        byte[] here = SheetPdf.write(Worksheet.pages());
        TimeZone zone = TimeZone.getDefault();
        Locale locale = Locale.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertArrayEquals(here, SheetPdf.write(Worksheet.pages()));
        } finally {
            TimeZone.setDefault(zone);
            Locale.setDefault(locale);
        }
    }

    /** Letter is 215.9 by 279.4 mm, A4 210 by 297 (ISO 216). */
    @Test
    void exact_everyPagePrintsOnA4AndLetterAtFullSize() throws Exception {
        for (Sheet page : Worksheet.pages()) {
            Box ink = page.entities().map(entity -> entity.bounds()).reduce(Box::joinedWith).orElseThrow();
            assertTrue(ink.left() >= 5 && ink.right() <= 210 - 5 && ink.bottom() >= 5 && ink.top() <= 279.4 - 5, ink::toString);
        }
        try (PDDocument document = Loader.loadPDF(SheetPdf.write(Worksheet.pages()))) {
            for (PDPage page : document.getPages()) {
                assertEquals(210 / 25.4 * 72, page.getMediaBox().getWidth(), 0.01);
                assertEquals(279.4 / 25.4 * 72, page.getMediaBox().getHeight(), 0.01);
            }
        }
    }

    @Test
    void everyFontIsEmbeddedAndWordsCanBeRead() throws Exception {
        byte[] file = SheetPdf.write(Worksheet.pages());
        assertTrue(new String(file, 0, 4096, StandardCharsets.ISO_8859_1).contains(SheetPdf.MARK));
        try (PDDocument document = Loader.loadPDF(file)) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertTrue(page.getResources().getFont(name).isEmbedded());
                }
            }
            String words = new PDFTextStripper().getText(document);
            for (String column : new String[] {"Station", "Distance", "Side", "Mark", "Out", "Height", "TAKE-OFF", "Trim from", "Datum"}) {
                assertTrue(words.contains(column), column);
            }
        }
    }
}
