package org.garboard.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.garboard.drawing.Text;
import org.junit.jupiter.api.Test;

class NotesTest {

    private static final Lettering LETTERING = new Lettering(3.5, 3.5, 5);

    /** A file's name must be read whole: no column is so narrow that it is broken. */
    @Test
    void law_noWordIsBroken() {
        String name = "pocket-outside-up_mm_1to1.dxf";
        List<Cluster> shapes = Notes.numbered("NOTES", List.of("Cut file " + name + ": true millimetres.")).shapes(LETTERING);
        assertTrue(shapes.size() > 3);
        for (Cluster shape : shapes) {
            assertEquals(1, shape.loose().stream().map(Text.class::cast).filter(text -> text.words().contains(name)).count());
        }
    }

    /** A word wider than the widest column cannot but be broken, and is still there whole. */
    @Test
    void exact_aWordWiderThanTheSheet() {
        String word = "x".repeat(200);
        List<Cluster> shapes = Notes.numbered("NOTES", List.of(word)).shapes(LETTERING);
        assertEquals(1, shapes.size());
        assertEquals(word, shapes.get(0).loose().stream().map(Text.class::cast).map(Text::words)
                .filter(words -> words.startsWith("x")).reduce("", String::concat));
    }
}
