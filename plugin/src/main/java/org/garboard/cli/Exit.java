package org.garboard.cli;

import org.garboard.session.Session;

/** How a command ended. */
enum Exit {
    /** Done. */
    DONE(0),
    /** The program itself is at fault. */
    PROGRAM(1),
    /** Wrong usage. */
    USAGE(2),
    /** An input file is at fault. */
    INPUT(3),
    /** The input is sound and the answer is no. */
    NO(4),
    /** Given up because a session was told so. */
    CANCELLED(Session.CANCELLED);

    private final int code;

    Exit(int code) {
        this.code = code;
    }

    /** As the shell sees it. */
    int code() {
        return code;
    }
}
