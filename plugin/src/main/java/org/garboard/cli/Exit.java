package org.garboard.cli;

/** How a command ended. */
enum Exit {
    /** Done. */
    DONE,
    /** The program itself is at fault. */
    PROGRAM,
    /** Wrong usage. */
    USAGE,
    /** An input file is at fault. */
    INPUT,
    /** The input is sound and the answer is no. */
    NO;

    /** As the shell sees it, 0 to 4. */
    int code() {
        return ordinal();
    }
}
