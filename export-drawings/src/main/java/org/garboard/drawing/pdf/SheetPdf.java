package org.garboard.drawing.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.garboard.drawing.Sheet;

/** Writes sheets as one PDF. */
public final class SheetPdf {
    /** Stands near the beginning of every file written here, by which it is known again. */
    public static final String MARK = "GarboardSheets";

    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

    private SheetPdf() {
    }

    /** The whole file without dates, for sheets that have none. */
    public static byte[] write(List<Sheet> sheets) {
        return write(sheets, "");
    }

    /**
     * The whole file, a bookmark for each sheet; the first sheet's title is the document's.
     *
     * @param issued date of issue, ISO 8601, as the title blocks tell it; the clock is never asked. Empty where there is none
     */
    public static byte[] write(List<Sheet> sheets, String issued) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            describe(document, sheets.get(0));
            midnight(issued).ifPresent(document.getDocumentInformation()::setCreationDate);
            midnight(issued).ifPresent(document.getDocumentInformation()::setModificationDate);
            draw(document, sheets, new PDDocumentOutline(), new CRC32());
            // unpacked: the mark stays legible near the beginning
            document.save(out, CompressParameters.NO_COMPRESSION);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    /** Puts sheets behind what the document holds, a bookmark for each; what is drawn makes its id. */
    private static void draw(PDDocument document, List<Sheet> sheets, PDDocumentOutline bookmarks, CRC32 drawn) throws IOException {
        EmbeddedFace face = new EmbeddedFace(document);
        for (Sheet sheet : sheets) {
            PDPage page = page(document, sheet, face);
            drawn.update(page.getContents().readAllBytes());
            bookmarks.addLast(bookmark(sheet.title(), page));
        }
        document.getDocumentCatalog().setDocumentOutline(bookmarks);
        document.setDocumentId(drawn.getValue());
    }

    /**
     * A file that was written here, with other sheets behind some of its own.
     *
     * @param kept how many of its pages stay, from the first; the others and their bookmarks are left out
     * @param issued date of the sheets put behind, by which the file is changed
     */
    public static byte[] append(byte[] earlier, int kept, List<Sheet> sheets, String issued) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = Loader.loadPDF(earlier)) {
            PDDocumentOutline bookmarks = new PDDocumentOutline();
            List<String> titles = new ArrayList<>();
            document.getDocumentCatalog().getDocumentOutline().children().forEach(bookmark -> titles.add(bookmark.getTitle()));
            while (document.getNumberOfPages() > kept) {
                document.removePage(document.getNumberOfPages() - 1);
            }
            for (int page = 0; page < kept; page++) {
                bookmarks.addLast(bookmark(titles.get(page), document.getPage(page)));
            }
            CRC32 drawn = new CRC32();
            drawn.update(earlier);
            draw(document, sheets, bookmarks, drawn);
            midnight(issued).ifPresent(document.getDocumentInformation()::setModificationDate);
            document.save(out, CompressParameters.NO_COMPRESSION);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return out.toByteArray();
    }

    /** How many pages a file has that was written here. */
    public static int pages(byte[] earlier) {
        try (PDDocument document = Loader.loadPDF(earlier)) {
            return document.getNumberOfPages();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static PDOutlineItem bookmark(String title, PDPage page) {
        PDOutlineItem bookmark = new PDOutlineItem();
        bookmark.setTitle(title);
        PDPageFitDestination whole = new PDPageFitDestination();
        whole.setPage(page);
        bookmark.setDestination(whole);
        return bookmark;
    }

    private static void describe(PDDocument document, Sheet first) {
        document.setVersion(1.7f);
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(first.title());
        information.setSubject(first.description());
        information.setProducer("Garboard");
        document.getDocumentCatalog().setLanguage("en");
        document.getDocumentCatalog().setViewerPreferences(atFullSize());
        document.getDocumentCatalog().getCOSObject().setName(COSName.getPDFName("Garboard_Kind"), MARK);
    }

    /** The first moment of a day, universal time; none of what is no such day. */
    private static Optional<Calendar> midnight(String day) {
        return DAY.matcher(day).matches() ? Optional.of(GregorianCalendar.from(LocalDate.parse(day).atStartOfDay(ZoneOffset.UTC))) : Optional.empty();
    }

    /** What viewers that obey do without being told: print at full size, on paper of the page's size. */
    private static PDViewerPreferences atFullSize() {
        PDViewerPreferences wish = new PDViewerPreferences(new COSDictionary());
        wish.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        wish.getCOSObject().setBoolean(COSName.getPDFName("PickTrayByPDFSize"), true);
        wish.setDisplayDocTitle(true);
        return wish;
    }

    private static PDPage page(PDDocument document, Sheet sheet, EmbeddedFace face) throws IOException {
        PDPage page = new PDPage(new PDRectangle(PdfCanvas.points(sheet.width()), PdfCanvas.points(sheet.height())));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            PdfCanvas canvas = new PdfCanvas(content, face);
            sheet.drawOn(canvas);
            canvas.rethrow();
        }
        return page;
    }
}
