package org.garboard.session;

import java.io.PrintWriter;

/** Writes replies, {@code id TAB kind TAB text}, a line at a time, whoever asks. A host that no longer reads ends the session. */
final class Replies {
    static final String OUT = "out";
    static final String ERR = "err";
    static final String PROGRESS = "progress";
    private static final String EXIT = "exit";

    private final PrintWriter out;

    Replies(PrintWriter out) {
        this.out = out;
    }

    /** @param text one line, without its end */
    synchronized void line(String id, String kind, String text) {
        out.write(id + "\t" + kind + "\t" + text + "\n");
    }

    /** The last reply to a request. */
    synchronized void exit(String id, int code) {
        line(id, EXIT, Integer.toString(code));
        flush();
    }

    synchronized void flush() {
        out.flush();
    }

    /** Whether replies can no longer be written. */
    synchronized boolean gone() {
        return out.checkError();
    }
}
