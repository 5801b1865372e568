package org.garboard.meshfile;

import org.garboard.reader.OutsideReader;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What admesh says of an STL. Its exit status says nothing, so its words are read; counts before it mends anything. */
public record Admesh(int facets, int disconnected, int parts, int degenerate, int reversed, double volume) {

    /** Reads a file with it; skips the calling test where it is missing. */
    public static Admesh read(byte[] stl) throws IOException {
        OutsideReader.ADMESH.require();
        Path file = Files.createTempFile("part", ".stl");
        try {
            Files.write(file, stl);
            String words = OutsideReader.ADMESH.run(List.of(file.toString())).output();
            int open = 0;
            for (int sides = 1; sides <= 3; sides++) {
                open += (int) number(words, "Facets with " + sides + " disconnected edges? +:");
            }
            assertEquals(open, (int) number(words, "Total disconnected facets +:"), words);
            return new Admesh((int) number(words, "Number of facets +:"), open, (int) number(words, "Number of parts +:"),
                (int) number(words, "Degenerate facets +:"), (int) number(words, "Facets reversed +:"), number(words, "Volume +:"));
        } finally {
            Files.delete(file);
        }
    }

    private static double number(String words, String label) {
        Matcher matcher = Pattern.compile(label + " *(-?[0-9.]+)").matcher(words);
        assertTrue(matcher.find(), label + " not found in\n" + words);
        return Double.parseDouble(matcher.group(1));
    }

    /** One closed body, right side out, of that volume [m3]. */
    public void isOneClosedBody(int triangles, double cubicMetres) {
        assertEquals(triangles, facets);
        assertEquals(0, disconnected, "disconnected facets");
        assertEquals(1, parts, "parts");
        assertEquals(0, degenerate, "degenerate facets");
        assertEquals(0, reversed, "reversed facets");
        assertEquals(1, volume / (cubicMetres * 1e9), 1e-4);
    }
}
