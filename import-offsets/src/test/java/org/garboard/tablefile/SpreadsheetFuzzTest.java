package org.garboard.tablefile;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.garboard.nonsense.OneInput;

/** The reader of spreadsheets under nonsense: as a whole file, and as the sheet of a workbook that is otherwise sound. */
public class SpreadsheetFuzzTest {
    private static final String SHEET = "xl/worksheets/sheet1.xml";
    private static final byte[] WORKBOOK = workbook();
    private static final Map<String, byte[]> PARTS = parts();

    @FuzzTest
    void reads(byte[] content) {
        holds(content);
    }

    /** The libraries are loaded before anything is timed. */
    public static void fuzzerInitialize() {
        AnyBytes.read("any.xlsx", WORKBOOK);
    }

    /** For a run without JUnit, of as many inputs as one likes. */
    public static void fuzzerTestOneInput(byte[] content) {
        OneInput.read(() -> holds(content));
    }

    private static void holds(byte[] content) {
        AnyBytes.read("any.xlsx", content);
        AnyBytes.read("any.xlsx", around(content));
    }

    /** Stored, not packed: packing tests nothing here and costs more than reading. */
    private static byte[] around(byte[] sheet) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream to = new ZipOutputStream(bytes)) {
            to.setMethod(ZipOutputStream.STORED);
            for (Map.Entry<String, byte[]> part : PARTS.entrySet()) {
                store(to, part.getKey(), part.getKey().equals(SHEET) ? sheet : part.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static void store(ZipOutputStream to, String name, byte[] part) throws IOException {
        CRC32 sum = new CRC32();
        sum.update(part);
        ZipEntry entry = new ZipEntry(name);
        entry.setSize(part.length);
        entry.setCrc(sum.getValue());
        to.putNextEntry(entry);
        to.write(part);
    }

    private static Map<String, byte[]> parts() {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(WORKBOOK))) {
            for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
                parts.put(entry.getName(), from.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return parts;
    }

    /** A sound workbook. */
    private static byte[] workbook() {
        try (InputStream in = SpreadsheetFuzzTest.class.getResourceAsStream("SpreadsheetFuzzTestInputs/reads/table.xlsx")) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
