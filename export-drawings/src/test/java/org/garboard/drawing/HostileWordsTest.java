package org.garboard.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.dxf.EzdxfAudit;
import org.garboard.drawing.pdf.SheetPdf;
import org.garboard.drawing.sheets.SheetFormat;
import org.garboard.reader.OutsideReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Words that a format or a viewer could take for orders stand in all three as they were typed; what cannot be shown is a blank. */
class HostileWordsTest {
    /** What is typed, and what is to be read. */
    private static final String[][] WORDS = {
        {"wide %%c36 %%d %%p %%%% %%nnn %%u", "wide %%c36 %%d %%p %%%% %%nnn %%u"},
        {"5%\u00b0 and %\u00d836", "5%\u00b0 and %\u00d836"},
        {"line\\Pbreak ^J ^I {\\fArial;x} \\~ \\S1/2;", "line\\Pbreak ^J ^I {\\fArial;x} \\~ \\S1/2;"},
        {"number \\U+0041 \\M+1ABCD", "number \\U+0041 \\M+1ABCD"},
        {"end ]]> <b>&amp; & \"it's\" <!--", "end ]]> <b>&amp; & \"it's\" <!--"},
        {"bell\u0007 nul\u0000 esc\u001b[31m", "bell nul esc [31m"},
        {"turn \u202eevil\u202c \u200fmark", "turn evil mark"},
        {"lone \ud83d half \udc00", "lone half"},
        {"first\r\nsecond\u2028third", "first second third"},
        {"W".repeat(120), "W".repeat(120)}};

    private static final String READ_TEXTS = """
            import sys, ezdxf
            from ezdxf.lldxf.encoding import decode_dxf_unicode
            for text in ezdxf.readfile(sys.argv[1]).modelspace().query('TEXT'):
                sys.stdout.buffer.write((decode_dxf_unicode(text.plain_text()) + '\\n').encode('utf-8', 'backslashreplace'))
            """;

    private static Sheet sheet() {
        List<Entity> texts = new ArrayList<>();
        for (int i = 0; i < WORDS.length; i++) {
            texts.add(Text.level(Layer.TEXT, WORDS[i][0], new Point(10, 280 - 12 * i), 2.5, Anchor.LEFT));
        }
        return new Sheet("Words", "Words", 600, 297, new Scale(1), 2.5, List.of(), texts);
    }

    private static List<String> expected() {
        List<String> expected = new ArrayList<>();
        for (String[] words : WORDS) {
            expected.add(words[1]);
        }
        return expected;
    }

    private static List<String> lines(String output) {
        return output.replace("\f", "").lines().map(line -> line.strip().replaceAll("\\s+", " ")).filter(line -> !line.isEmpty()).toList();
    }

    private static void assertSame(List<String> expected, List<String> read) {
        for (int i = 0; i < expected.size(); i++) {
            assertEquals(expected.get(i), i < read.size() ? read.get(i) : "");
        }
        assertEquals(expected.size(), read.size());
    }

    private static String words(Path pdf) throws Exception {
        Path text = pdf.resolveSibling(pdf.getFileName() + ".txt");
        assertEquals(0, OutsideReader.POPPLER_WORDS.run(List.of("-layout", "-enc", "UTF-8", pdf.toString(), text.toString())).exit());
        return Files.readString(text, StandardCharsets.UTF_8);
    }

    @Test
    void exact_inACadProgram(@TempDir Path folder) throws Exception {
        OutsideReader.EZDXF.require();
        Path file = Files.write(folder.resolve("words.dxf"), SheetFormat.DXF.drawing("words", sheet()).content());
        EzdxfAudit.assertClean(file);
        // a blank keeps signs apart that together would be a code
        List<String> expected = expected().stream().map(words -> words.replaceAll("%(?=[%\u00b0\u00d8])", "% ")).toList();
        assertSame(expected, lines(OutsideReader.EZDXF.run(List.of("-c", READ_TEXTS, file.toString())).output()));
    }

    @Test
    void exact_inPdf(@TempDir Path folder) throws Exception {
        OutsideReader.POPPLER_WORDS.require();
        assertSame(expected(), lines(words(Files.write(folder.resolve("words.pdf"), SheetPdf.write(List.of(sheet()))))));
    }

    @Test
    void exact_inSvg(@TempDir Path folder) throws Exception {
        OutsideReader.RSVG.require();
        OutsideReader.POPPLER_WORDS.require();
        Path svg = Files.write(folder.resolve("words.svg"), SheetFormat.SVG.drawing("words", sheet()).content());
        Path pdf = folder.resolve("picture.pdf");
        assertEquals(0, OutsideReader.RSVG.run(List.of("-f", "pdf", "-o", pdf.toString(), svg.toString())).exit());
        assertSame(expected(), lines(words(pdf)));
    }

    /** A name of one absurd word keeps its place in title block and tables, whole or cut short with a mark. */
    @Test
    void law_longWordsStayOnTheirLines() {
        String word = "W".repeat(500);
        List<String> lines = Wrap.lines(word, 40, 2.5);
        assertEquals(word, String.join("", lines));
        assertTrue(lines.stream().allMatch(line -> LetterWidths.extent(line, 2.5) <= 40));
    }
}
