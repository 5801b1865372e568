package org.garboard.drawing.dxf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.garboard.drawing.SampleSheet;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.dxf.DxfTags.Part;
import org.garboard.reader.OutsideReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetDxfTest {

    static byte[] written(Sheet sheet) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            SheetDxf.write(sheet, out);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return out.toByteArray();
    }

    @Test
    void exact_keepsEveryRule() {
        assertEquals(List.of(), SheetDxfRules.broken(written(SampleSheet.everything())));
    }

    /** The sample is at 1:5, so 100 mm on paper are 500 mm in the file. */
    @Test
    void exact_modelSpaceIsTrueSize() {
        DxfTags tags = DxfTags.of(written(SampleSheet.everything()));
        Part line = tags.entities("LINE").get(0);
        assertEquals(500, line.number(11) - line.number(10), 1e-9);
        assertEquals("5.0", tags.variable("$DIMSCALE").orElseThrow());
        assertEquals(List.of("1485.0", "1050.0"), List.of(extents(tags, 10), extents(tags, 20)));
    }

    private static String extents(DxfTags tags, int code) {
        List<DxfTags.Tag> header = tags.section("HEADER").get(0).tags();
        int at = header.indexOf(new DxfTags.Tag(9, "$EXTMAX"));
        return header.get(at + code / 10).value();
    }

    @Test
    void exact_eachDimensionCarriesItsMeasure() {
        List<Part> dimensions = DxfTags.of(written(SampleSheet.everything())).entities("DIMENSION");
        assertEquals(List.of("500.0", "125.0", "250.0", "0.463648", "50.0", "125.0"),
                dimensions.stream().map(dimension -> dimension.get(42)).toList());
        assertEquals(List.of("", "<> (0'-4 7/8\")", "250.0", "26.6%%d", "R50", "%%c125"),
                dimensions.stream().map(dimension -> dimension.get(1)).toList());
        assertEquals(List.of(0, 0, 1, 2, 4, 3),
                dimensions.stream().map(dimension -> (int) dimension.number(70) & 7).toList());
    }

    @Test
    void law_sameBytesOnAnyLocale() {
        byte[] first = written(SampleSheet.everything());
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertArrayEquals(first, written(SampleSheet.everything()));
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void exact_foreignLettersAreWrittenByNumber() {
        String text = new String(written(SampleSheet.with("Gr\u00F6\u00DFe \u2104 \uD83D\uDEA4 100%%d \u0001end")),
                StandardCharsets.US_ASCII);
        assertTrue(text.contains("\nGr\\U+00F6\\U+00DFe \\U+2104 \\U+D83D\\U+DEA4 100% %d  end\n"), text);
    }

    @Test
    void exact_outsideReaderFindsNothingToMend(@TempDir Path folder) throws IOException {
        OutsideReader.EZDXF.require();
        Path file = folder.resolve("sheet.dxf");
        Files.write(file, written(SampleSheet.everything()));
        EzdxfAudit.assertClean(file);
    }
}
