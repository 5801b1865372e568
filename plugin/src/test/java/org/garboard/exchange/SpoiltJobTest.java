package org.garboard.exchange;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** However a job is spoilt, there is a sound job or plain words with a place in the file. */
class SpoiltJobTest {
    private static final String[] SCRAPS = {"<", ">", "/", "\"", "&", "<x>", "</job>", "xmlns=\"u\"", "-", "9", ",", "\u0000", "\uD83D\uDEA4", "]]>", "<!--", " "};

    @Test
    void law_everySpoiltJobIsReadOrRefusedInPlainWords() {
        Random random = new Random(1880);
        int refused = 0;
        for (int i = 0; i < 250; i++) {
            StringBuilder text = new StringBuilder(SampleJob.text());
            for (int slip = random.nextInt(3); slip >= 0; slip--) {
                spoil(text, random);
            }
            List<String> messages = SampleJob.messages(text.toString());
            for (String message : messages) {
                assertTrue(message.matches("(?s)job\\.xml:[1-9][0-9]*:[1-9][0-9]*: .+"), message);
                assertFalse(message.contains("cvc-") || message.contains("null") || message.contains("AnonType")
                    || message.contains("urn:garboard:job\":"), message + "\n" + text);
            }
            refused += messages.isEmpty() ? 0 : 1;
        }
        assertTrue(refused > 100, refused + " of 250 were refused");
    }

    private static void spoil(StringBuilder text, Random random) {
        int at = random.nextInt(text.length());
        switch (random.nextInt(3)) {
            case 0 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(12)));
            case 1 -> text.insert(at, SCRAPS[random.nextInt(SCRAPS.length)]);
            default -> {
                int line = text.indexOf("\n", at) + 1;
                int end = text.indexOf("\n", line) + 1;
                if (line > 0 && end > line) {
                    text.insert(random.nextInt(2) == 0 ? end : text.indexOf("\n") + 1, text.substring(line, end));
                }
            }
        }
    }
}
