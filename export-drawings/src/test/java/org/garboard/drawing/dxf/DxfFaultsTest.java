package org.garboard.drawing.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.garboard.drawing.SampleSheet;
import org.garboard.reader.OutsideReader;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Faults sown into a good file: a check that cannot fail is none. Codes and values stand a line each. */
class DxfFaultsTest {

    record Fault(String name, String pattern, String replacement, String complaint) {
        @Override
        public String toString() {
            return name;
        }
    }

    static List<Fault> sheetFaults() {
        return List.of(
                new Fault("no viewport table", "(?s)0\nTABLE\n2\nVPORT\n.*?0\nENDTAB\n", "", "tables are"),
                new Fault("no UCS table", "(?s)0\nTABLE\n2\nUCS\n.*?0\nENDTAB\n", "", "tables are"),
                new Fault("no objects", "(?s)0\nSECTION\n2\nOBJECTS\n.*?0\nENDSEC\n", "", "sections are"),
                new Fault("no end", "0\nEOF\n", "", "sections are"),
                new Fault("handle twice", "(0\nLINE\n5\n)[0-9A-F]+\n", "$11\n", "is used twice"),
                new Fault("no handle", "(0\nLINE\n)5\n[0-9A-F]+\n", "$1", "has the handle \"\""),
                new Fault("no owner", "(0\nCIRCLE\n5\n[0-9A-F]+\n)330\n[0-9A-F]+\n", "$1", "has no owner"),
                new Fault("strange owner", "(0\nCIRCLE\n5\n[0-9A-F]+\n330\n)[0-9A-F]+\n", "$1FFFF\n", "does not exist"),
                new Fault("low seed", "(\\$HANDSEED\n5\n)[0-9A-F]+\n", "$12\n", "$HANDSEED"),
                new Fault("bulge of nought", "(0\nLWPOLYLINE(?:\n.*){10}\n90\n.*\n70\n.*\n10\n.*\n20\n.*\n)", "$142\n0.0\n", "bulge of nought"),
                new Fault("vertex count", "(AcDbPolyline\n90\n)\\d+\n", "$199\n", "vertices and has"),
                new Fault("hatch without 97", "97\n0\n", "", "without code 97"),
                new Fault("hatch without seeds", "98\n1\n", "", "without seeds"),
                new Fault("undefined layer", "(AcDbEntity\n8\n)HULL\n", "$1KEEL\n", "undefined layer"),
                new Fault("undefined style", "(7\n)ISO\n72\n", "$1FANCY\n72\n", "text style FANCY"),
                new Fault("text that ends with 0", "(AcDbText\n)(0\n)", "$173\n0\n$2", "ends with a value that reads 0"),
                new Fault("undefined line type", "(62\n4\n6\n)CENTER2\n", "$1WAVY\n", "undefined line type"),
                new Fault("line type drawn solid", "(?s)CENTER2", "PHANTOM2", "unknown line types"),
                new Fault("not a number", "(AcDbCircle\n10\n)[0-9.]+\n", "$1NaN\n", "not a plain decimal"),
                new Fault("decimal comma", "(AcDbCircle\n10\n)[0-9.]+\n", "$112,5\n", "not a plain decimal"),
                new Fault("exponent", "(AcDbCircle\n10\n)[0-9.]+\n", "$11e2\n", "not a plain decimal"),
                new Fault("letters beyond ASCII", "One|wrapped", "\u00E9", "not plain ASCII"),
                new Fault("wrong measure", "(42\n)500\\.0\n", "$1501.0\n", "stores"),
                new Fault("wrong words in the block", "(1\n)R50\n(50\n)", "$1R60\n$2", "says"),
                new Fault("wrong words", "(1\n)%%c125\n42", "$1%%c130\n42", "says"),
                new Fault("no dimension block", "(AcDbDimension\n2\n)\\*D1\n", "$1*D99\n", "missing or empty"),
                new Fault("undefined dimension style", "(42\n500\\.0\n3\n)SHOP\n", "$1ROUGH\n", "dimension style ROUGH"),
                new Fault("three-point angle", "(70\n)162\n", "$1165\n", "of kind 5"),
                new Fault("paper space", "(0\nCIRCLE(?:\n.*){6}\n)8\n", "$167\n1\n8\n", "paper space"),
                new Fault("inches", "(\\$INSUNITS\n70\n)4\n", "$11\n", "$INSUNITS"),
                new Fault("wrong version", "AC1015", "AC1032", "$ACADVER"));
    }

    @ParameterizedTest
    @MethodSource("sheetFaults")
    void law_sheetFaultIsFound(Fault fault) {
        found(fault, SheetDxfTest.written(SampleSheet.everything()), SheetDxfRules::broken);
    }

    static List<Fault> cutFaults() {
        return List.of(
                new Fault("open outline", "(0\nPOLYLINE(?:\n.*){10}\n70\n)1\n", "$10\n", "outline is open"),
                new Fault("first point again", "(0\nVERTEX\n8\nCUT_OUTER\n10\n10\\.0\n20\n20\\.0\n30\n0\\.0\n)", "$1$1", "stands still"),
                new Fault("text", "(0\nLINE\n)", "0\nTEXT\n8\nMARK\n1\nhello\n$1", "TEXT is not for a cut file"),
                new Fault("another layer", "(0\nLINE\n8\n)MARK\n", "$1NOTES\n", "undefined layer"),
                new Fault("subclass", "(0\nLINE\n)", "$1100\nAcDbEntity\n", "not of this version"),
                new Fault("later version", "AC1009", "AC1015", "$ACADVER"),
                new Fault("inches", "(\\$INSUNITS\n70\n)4\n", "$11\n", "$INSUNITS"),
                new Fault("bulge of nought", "(0\nVERTEX\n8\nCUT_OUTER\n10\n10\\.0\n20\n20\\.0\n30\n0\\.0\n)", "$142\n0.0\n", "bulge of nought"),
                new Fault("one more layer", "(?s)(0\nLAYER\n2\nMARK\n.*?)0\nENDTAB\n", "$10\nLAYER\n2\nNOTES\n70\n0\n62\n7\n6\nCONTINUOUS\n0\nENDTAB\n", "layers are"));
    }

    @ParameterizedTest
    @MethodSource("cutFaults")
    void law_cutFaultIsFound(Fault fault) {
        found(fault, CutDxfTest.written(), CutDxfRules::broken);
    }

    private static void found(Fault fault, byte[] good, Function<byte[], List<String>> rules) {
        assertEquals(List.of(), rules.apply(good));
        String text = new String(good, StandardCharsets.ISO_8859_1);
        String bad = text.replaceFirst(fault.pattern(), fault.replacement());
        assertNotEquals(text, bad, "the fault was not sown");
        List<String> broken = rules.apply(bad.getBytes(StandardCharsets.ISO_8859_1));
        assertTrue(broken.stream().anyMatch(sentence -> sentence.contains(fault.complaint())),
                fault + " was answered by " + broken);
    }

    /** A reader that cannot fail proves nothing either. */
    @ParameterizedTest
    @CsvSource({"SHOP,ROUGH", "ISO,FANCY"})
    void law_outsideReaderFindsSownFaults(String good, String bad, @TempDir Path folder)
            throws IOException {
        OutsideReader.EZDXF.require();
        String text = new String(SheetDxfTest.written(SampleSheet.everything()), StandardCharsets.US_ASCII);
        int last = text.lastIndexOf("\n" + good + "\n");
        Path file = folder.resolve("bad.dxf");
        Files.writeString(file, text.substring(0, last) + text.substring(last).replaceFirst(good, bad));
        assertThrows(AssertionError.class, () -> EzdxfAudit.assertClean(file));
    }
}
