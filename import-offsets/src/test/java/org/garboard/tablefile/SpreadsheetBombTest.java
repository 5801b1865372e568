package org.garboard.tablefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;

/** Spreadsheets that no program saves end in one message. */
class SpreadsheetBombTest {
    private static final String TYPES = "<?xml version=\"1.0\" encoding=\"UTF-8\"?><Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
        + "<Override PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/>"
        + "<Override PartName=\"/xl/worksheets/sheet1.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml\"/>"
        + "<Override PartName=\"/xl/sharedStrings.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml\"/></Types>";
    private static final String BOOK = "<workbook xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\""
        + " xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\"><sheets><sheet name=\"A\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>";
    private static final String RELATIONS = "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
        + "<Relationship Id=\"rId1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet\" Target=\"worksheets/sheet1.xml\"/>"
        + "<Relationship Id=\"rId2\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/sharedStrings\" Target=\"sharedStrings.xml\"/></Relationships>";
    private static final String SHEET = "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>";

    /** Writes one part. */
    private interface Part {
        void to(OutputStream out) throws IOException;
    }

    private static byte[] book(Part sheet, Part strings) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            part(zip, "[Content_Types].xml", words(TYPES));
            part(zip, "xl/workbook.xml", words(BOOK));
            part(zip, "xl/_rels/workbook.xml.rels", words(RELATIONS));
            part(zip, "xl/sharedStrings.xml", strings);
            part(zip, "xl/worksheets/sheet1.xml", sheet);
        }
        return out.toByteArray();
    }

    private static void part(ZipOutputStream zip, String name, Part part) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        part.to(zip);
        zip.closeEntry();
    }

    private static Part words(String words) {
        return out -> out.write(words.getBytes(StandardCharsets.UTF_8));
    }

    private static Part repeated(String before, String each, int times, String after) {
        byte[] block = each.repeat(1000).getBytes(StandardCharsets.UTF_8);
        return out -> {
            out.write(before.getBytes(StandardCharsets.UTF_8));
            for (int i = 0; i < times / 1000; i++) {
                out.write(block);
            }
            out.write(after.getBytes(StandardCharsets.UTF_8));
        };
    }

    private static Part numberedRows(int count) {
        StringBuilder rows = new StringBuilder(SHEET);
        for (int row = 1; row <= count; row++) {
            rows.append("<row r=\"").append(row).append("\"><c r=\"A").append(row).append("\"><v>1</v></c></row>");
        }
        return words(rows + "</sheetData></worksheet>");
    }

    private static Part noStrings() {
        return words("<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"/>");
    }

    private static void assertFault(String message, byte[] file) {
        TableReading reading = TableFile.read("boat.xlsx", file);
        assertEquals(List.of("boat.xlsx" + message), ((TableReading.Faulty) reading).problems().stream().map(TableProblem::message).toList());
    }

    @Test
    void aPartThatUnpacksWithoutEnd() throws IOException {
        assertFault(": the file unpacks to more than 24 MB; a table needs far less. Copy the table alone into a new spreadsheet, or save it as CSV in UTF-8",
            book(repeated(SHEET, "                                                  ", 2_000_000, ""), noStrings()));
    }

    @Test
    void sharedStringsWithoutEnd() throws IOException {
        assertFault(": the file unpacks to more than 24 MB; a table needs far less. Copy the table alone into a new spreadsheet, or save it as CSV in UTF-8",
            book(words(SHEET + "</sheetData></worksheet>"), repeated("<sst>", "<si><t>aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa</t></si>", 1_000_000, "</sst>")));
    }

    @Test
    void cellsWithoutEnd() throws IOException {
        assertFault(": its part xl/worksheets/sheet1.xml has more cells than a table of 500 stations and 200 lines; copy the table alone into a new"
            + " spreadsheet, or save it as CSV in UTF-8", book(repeated(SHEET + "<row r=\"1\">", "<c/>", 4_000_000, "</row></sheetData></worksheet>"), noStrings()));
        assertFault(": sheet \"A\" has more than 4000 rows; a table has 500 stations and 200 lines at most",
            book(numberedRows(6000), noStrings()));
    }

    @Test
    void entitiesThatGrow() throws IOException {
        assertFault(": its part xl/worksheets/sheet1.xml declares entities, which no spreadsheet does; save the table as CSV in UTF-8",
            book(words("<!DOCTYPE a [<!ENTITY b \"bbbbbbbbbb\"><!ENTITY c \"&b;&b;&b;&b;&b;\">]>" + SHEET + "&c;</sheetData></worksheet>"), noStrings()));
    }

    @Test
    void aCellFarBeyondTheLastColumn() throws IOException {
        assertFault(": its part xl/worksheets/sheet1.xml names a cell beyond the last column, XFD; save it again as .xlsx, or as CSV in UTF-8",
            book(words(SHEET + "<row r=\"1\"><c r=\"ZZZZZZ1\"><v>1</v></c></row></sheetData></worksheet>"), noStrings()));
    }

    @Test
    void macrosOtherZipsAndOldSpreadsheets() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            part(zip, "xl/vbaProject.bin", words("x"));
        }
        assertFault(": this spreadsheet has macros; save it as .xlsx without macros, or as CSV in UTF-8", out.toByteArray());
        ByteArrayOutputStream other = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(other)) {
            part(zip, "mimetype", words("x"));
        }
        assertFault(": this zip file is no .xlsx spreadsheet; save the table as .xlsx, or as CSV in UTF-8", other.toByteArray());
        assertFault(": this is a spreadsheet of the older kind (.xls), or one behind a password; save it as .xlsx without a password, or as CSV in UTF-8",
            new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0});
    }

    /** Bytes changed by lot: a message each, never anything else. */
    @Test
    void law_damagedFilesEndInMessages() throws IOException {
        byte[] sound = book(words(SHEET + "<row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c><c r=\"B1\"><v>3</v></c></row></sheetData></worksheet>"),
            words("<sst><si><t>Station</t></si></sst>"));
        Random lot = new Random(7);
        for (int i = 0; i < 400; i++) {
            byte[] damaged = sound.clone();
            for (int k = 0; k <= lot.nextInt(6); k++) {
                damaged[4 + lot.nextInt(damaged.length - 4)] = (byte) lot.nextInt(256);
            }
            assertTrue(TableFile.read("boat.xlsx", damaged) instanceof TableReading.Faulty);
        }
    }
}
