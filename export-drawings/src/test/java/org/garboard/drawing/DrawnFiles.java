package org.garboard.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.garboard.drawing.dxf.EzdxfAudit;
import org.garboard.drawing.dxf.SheetDxfRules;
import org.garboard.reader.OutsideReader;

/** Holds the files of one sheet to the rules of their formats, and hands them to readers that are not ours. */
public final class DrawnFiles {
    private DrawnFiles() {
    }

    /** @param mark words that stand at the beginning of both files */
    public static void assertTaken(Path folder, String name, String mark, byte[] dxf, byte[] svg) throws IOException {
        assertEquals(List.of(), SheetDxfRules.broken(dxf));
        for (byte[] file : List.of(dxf, svg)) {
            String beginning = new String(file, StandardCharsets.UTF_8).substring(0, 1000);
            assertTrue(beginning.contains(mark), beginning);
        }
        OutsideReader.EZDXF.require();
        OutsideReader.XMLLINT.require();
        OutsideReader.RSVG.require();
        Path file = folder.resolve(name + ".dxf");
        Files.write(file, dxf);
        EzdxfAudit.assertClean(file);
        Path picture = folder.resolve(name + ".svg");
        Files.write(picture, svg);
        assertEquals(new OutsideReader.Answer(0, ""), OutsideReader.XMLLINT.run(List.of("--noout", "--nonet", picture.toString())));
        assertEquals(0, OutsideReader.RSVG.run(List.of("-o", picture + ".png", picture.toString())).exit());
    }
}
