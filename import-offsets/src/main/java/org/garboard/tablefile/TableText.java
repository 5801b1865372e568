package org.garboard.tablefile;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** Turns the bytes of a file into text, or says why they are none. */
final class TableText {
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private TableText() {
    }

    /** The text, without byte order mark. */
    static Optional<String> of(byte[] content, Problems problems) {
        if (content.length > TableFile.MOST_BYTES) {
            problems.inFile(tooLarge(content.length));
        } else if (startsWith(content, 0xFF, 0xFE, 0, 0) || startsWith(content, 0, 0, 0xFE, 0xFF)) {
            problems.inFile("the text is UTF-32; save it as CSV in UTF-8");
        } else if (startsWith(content, 0xFE, 0xFF) || startsWith(content, 0xFF, 0xFE)) {
            problems.inFile("the text is UTF-16; save it as CSV in UTF-8");
        } else {
            return decode(content, problems);
        }
        return Optional.empty();
    }

    static String tooLarge(long bytes) {
        return "the file has " + bytes + " bytes; a table of offsets has " + TableFile.MOST_BYTES + " at most";
    }

    private static Optional<String> decode(byte[] content, Problems problems) {
        for (int i = 0; i < content.length; i++) {
            if (content[i] == 0) {
                problems.inRow(rowOf(content, i), "", "a zero byte stands here; the file is UTF-16 or no text;"
                    + " save it as CSV in UTF-8");
                return Optional.empty();
            }
        }
        ByteBuffer bytes = ByteBuffer.wrap(content);
        CharBuffer characters = CharBuffer.allocate(content.length);
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
        if (decoder.decode(bytes, characters, true).isError()) {
            int bad = bytes.position();
            problems.inRow(rowOf(content, bad), "", String.format(Locale.ROOT,
                "the byte 0x%02X is not UTF-8; save the file as CSV in UTF-8", content[bad] & 0xFF));
            return Optional.empty();
        }
        String text = characters.flip().toString();
        String table = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        if (table.isBlank()) {
            problems.inFile("the file is empty; a table of offsets was expected");
            return Optional.empty();
        }
        return Optional.of(table);
    }

    private static int rowOf(byte[] content, int index) {
        int row = 1;
        for (int i = 0; i < index; i++) {
            if (content[i] == '\n' || content[i] == '\r' && content[i + 1] != '\n') {
                row++;
            }
        }
        return row;
    }

    private static boolean startsWith(byte[] content, int... bytes) {
        if (content.length < bytes.length) {
            return false;
        }
        for (int i = 0; i < bytes.length; i++) {
            if ((content[i] & 0xFF) != bytes[i]) {
                return false;
            }
        }
        return true;
    }
}
