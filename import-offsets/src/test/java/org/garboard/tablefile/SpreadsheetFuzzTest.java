package org.garboard.tablefile;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** The reader of spreadsheets under nonsense: as a whole file, and as the sheet of a workbook that is otherwise sound. */
public class SpreadsheetFuzzTest {
    private static final String SHEET = "xl/worksheets/sheet1.xml";

    @FuzzTest
    void reads(byte[] content) throws IOException {
        fuzzerTestOneInput(content);
    }

    /** The libraries are loaded before anything is timed. */
    public static void fuzzerInitialize() {
        AnyBytes.read("any.xlsx", Workbook.BYTES);
    }

    /** For a run without JUnit, of as many inputs as one likes. */
    public static void fuzzerTestOneInput(byte[] content) throws IOException {
        AnyBytes.read("any.xlsx", content);
        AnyBytes.read("any.xlsx", aroundSheet(content));
    }

    private static byte[] aroundSheet(byte[] sheet) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(Workbook.BYTES)); ZipOutputStream to = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
                to.putNextEntry(new ZipEntry(entry.getName()));
                to.write(entry.getName().equals(SHEET) ? sheet : from.readAllBytes());
            }
        }
        return bytes.toByteArray();
    }

    /** A sound workbook, read once. */
    private static final class Workbook {
        private static final byte[] BYTES = read();

        private static byte[] read() {
            try (InputStream in = SpreadsheetFuzzTest.class.getResourceAsStream("SpreadsheetFuzzTestInputs/reads/table.xlsx")) {
                return in.readAllBytes();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
