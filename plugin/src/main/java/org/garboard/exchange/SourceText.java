package org.garboard.exchange;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The text of an XML file, and where in it things stand. */
final class SourceText {
    private static final Pattern ENCODING = Pattern.compile("\\A<\\?xml[^>]*?encoding\\s*=\\s*[\"']([^\"'\\r\\n]*)[\"']");
    private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");

    private final String text;

    private SourceText(String text) {
        this.text = text;
    }

    /** Decodes UTF-8, with or without byte order mark; anything else is a fault. */
    static SourceText decode(String file, byte[] bytes) throws FaultyFile {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer chars = CharBuffer.allocate(bytes.length + 1);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CoderResult result = decoder.decode(in, chars, true);
        String text = chars.flip().toString();
        if (result.isError()) {
            Position where = new SourceText(text).position(text.length());
            String found = String.format(Locale.ROOT, "%02X", bytes[in.position()]);
            throw new FaultyFile(where.fault(file, "byte " + found + " is no UTF-8 text; save the file as UTF-8"));
        }
        text = text.startsWith("\uFEFF") ? text.substring(1) : text;
        Matcher declared = ENCODING.matcher(text);
        if (declared.find() && !declared.group(1).equalsIgnoreCase("UTF-8")) {
            throw new FaultyFile(new Position(1, declared.start(1) + 1).fault(file, "encoding \"" + declared.group(1)
                + "\" is not read; save the file as UTF-8 and write encoding=\"UTF-8\""));
        }
        return new SourceText(text);
    }

    String text() {
        return text;
    }

    /** Where the tag begins that ends just before a place which the parser told. */
    Position startOfTag(int line, int column) {
        int end = Math.min(offset(line) + Math.max(column - 1, 0), text.length());
        int start = text.lastIndexOf('<', Math.max(end - 1, 0));
        return position(Math.max(start, 0));
    }

    private int offset(int line) {
        Matcher ends = LINE_END.matcher(text);
        int offset = 0;
        for (int i = 1; i < line && ends.find(); i++) {
            offset = ends.end();
        }
        return offset;
    }

    private Position position(int offset) {
        Matcher ends = LINE_END.matcher(text);
        int line = 1;
        int start = 0;
        while (ends.find() && ends.end() <= offset) {
            line++;
            start = ends.end();
        }
        return new Position(line, offset - start + 1);
    }

    /** A place in the text, both counted from 1. */
    record Position(int line, int column) {

        FileFault fault(String file, String words) {
            return new FileFault(file, line, column, words);
        }
    }
}
