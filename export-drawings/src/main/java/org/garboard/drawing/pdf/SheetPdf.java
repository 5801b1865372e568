package org.garboard.drawing.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.garboard.drawing.Sheet;

/** Writes sheets as one PDF. */
public final class SheetPdf {
    /** Stands near the beginning of every file written here, by which it is known again. */
    public static final String MARK = "GarboardSheets";

    private static final String FACE = "LiberationSans-Regular.ttf";
    /** Any number; that it is set keeps the clock out of the file. */
    private static final long DOCUMENT = 1;

    private SheetPdf() {
    }

    /** The whole file; the first sheet's title is the document's. */
    public static byte[] write(List<Sheet> sheets) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument(); InputStream face = SheetPdf.class.getResourceAsStream(FACE)) {
            describe(document, sheets.get(0));
            PDFont font = PDType0Font.load(document, face);
            for (Sheet sheet : sheets) {
                page(document, sheet, font);
            }
            document.setDocumentId(DOCUMENT);
            // unpacked: the mark stays legible near the beginning
            document.save(out, CompressParameters.NO_COMPRESSION);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    private static void describe(PDDocument document, Sheet first) {
        Calendar none = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        none.setTimeInMillis(0);
        none.set(2026, Calendar.JANUARY, 1);
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(first.title());
        information.setSubject(first.description());
        information.setProducer("Garboard");
        information.setCreationDate(none);
        information.setModificationDate(none);
        document.getDocumentCatalog().setLanguage("en");
        COSDictionary ours = new COSDictionary();
        ours.setDirect(true);
        ours.setName(COSName.getPDFName("Kind"), MARK);
        COSDictionary data = new COSDictionary();
        data.setDirect(true);
        data.setString(COSName.LAST_MODIFIED, "D:20260101000000Z");
        data.setItem(COSName.getPDFName("Private"), ours);
        COSDictionary pieces = new COSDictionary();
        pieces.setDirect(true);
        pieces.setItem(COSName.getPDFName("Garboard"), data);
        document.getDocumentCatalog().getCOSObject().setItem(COSName.getPDFName("PieceInfo"), pieces);
    }

    private static void page(PDDocument document, Sheet sheet, PDFont font) throws IOException {
        PDPage page = new PDPage(new PDRectangle(PdfCanvas.points(sheet.width()), PdfCanvas.points(sheet.height())));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            PdfCanvas canvas = new PdfCanvas(content, font);
            sheet.drawOn(canvas);
            canvas.rethrow();
        }
    }
}
