package org.garboard.session;

import java.io.Writer;

/** What a command prints, as replies of one kind: a line is sent when it is whole. */
final class LinesOut extends Writer {
    private final Replies replies;
    private final String id;
    private final String kind;
    private final StringBuilder begun = new StringBuilder();

    LinesOut(Replies replies, String id, String kind) {
        this.replies = replies;
        this.id = id;
        this.kind = kind;
    }

    @Override
    public void write(char[] text, int from, int length) {
        for (int i = from; i < from + length; i++) {
            if (text[i] == '\n') {
                send();
            } else {
                begun.append(text[i]);
            }
        }
    }

    private void send() {
        int end = begun.length();
        if (end > 0 && begun.charAt(end - 1) == '\r') {
            end--;
        }
        replies.line(id, kind, begun.substring(0, end));
        begun.setLength(0);
    }

    @Override
    public void flush() {
        replies.flush();
    }

    /** Sends what has no end of line yet. */
    @Override
    public void close() {
        if (begun.length() > 0) {
            send();
        }
    }
}
