package org.garboard.drawing.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The face that every PDF is lettered in. */
public final class Face {
    /** What stands for a letter that the face lacks. */
    static final String BOX = "\u25a1";
    private static final String FILE = "LiberationSans-Regular.ttf";
    /** All letters up to here but the controls are in the face. */
    private static final int LAST_OF_LATIN_1 = 0xff;

    private Face() {
    }

    /** Without its rules for joined letters: nothing here needs them, and asking them took half the time of a set. */
    static PDFont embeddedIn(PDDocument document) throws IOException {
        try (InputStream file = Face.class.getResourceAsStream(FILE)) {
            TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(file));
            face.setEnableGsub(false);
            document.registerTrueTypeFontForClosing(face);
            return PDType0Font.load(document, face, true);
        }
    }

    /** A letter as the face writes it: itself, or a box where the face lacks it. */
    static String written(int letter, PDFont font) throws IOException {
        String one = Character.toString(letter);
        try {
            font.encode(one);
            return one;
        } catch (IllegalArgumentException lacking) {
            return BOX;
        }
    }

    /** The letters of some words that the face lacks, each once as "U+65E5", by rising number. */
    public static SortedSet<String> lacking(Collection<String> words) {
        SortedSet<String> lacking = new TreeSet<>();
        int[] others = words.stream().flatMapToInt(String::codePoints).filter(letter -> letter > LAST_OF_LATIN_1)
                .distinct().toArray();
        if (others.length == 0) {
            return lacking;
        }
        try (PDDocument document = new PDDocument()) {
            PDFont font = embeddedIn(document);
            for (int letter : others) {
                if (written(letter, font).equals(BOX) && letter != BOX.codePointAt(0)) {
                    lacking.add(String.format(Locale.ROOT, "U+%04X", letter));
                }
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return lacking;
    }
}
