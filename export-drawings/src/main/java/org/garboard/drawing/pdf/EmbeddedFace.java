package org.garboard.drawing.pdf;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** The face as one document holds it; what is asked of each letter is looked up once. */
final class EmbeddedFace {
    private final PDFont font;
    private final Map<Integer, String> written = new HashMap<>();
    private final Map<Integer, Float> widths = new HashMap<>();

    EmbeddedFace(PDDocument document) throws IOException {
        this.font = Face.embeddedIn(document);
    }

    PDFont font() {
        return font;
    }

    /** A letter that the face lacks is shown as a box, never left out. */
    String written(String words) throws IOException {
        StringBuilder all = new StringBuilder();
        for (int letter : words.codePoints().toArray()) {
            String known = written.get(letter);
            if (known == null) {
                known = Face.written(letter, font);
                written.put(letter, known);
            }
            all.append(known);
        }
        return all.toString();
    }

    /** Advance of words as they are written, in thousandths of the font's size. */
    double width(String words) throws IOException {
        double width = 0;
        for (int letter : words.codePoints().toArray()) {
            Float known = widths.get(letter);
            if (known == null) {
                known = font.getStringWidth(Character.toString(letter));
                widths.put(letter, known);
            }
            width += known;
        }
        return width;
    }
}
