package org.garboard.cli.files;

/** What is done with a file that this program did not write, or that was changed since, where one of the same name is to stand. */
public enum InTheWay {
    /** Nothing is written at all. */
    STAYS,
    /** It is replaced: its owner asked for it. */
    GOES
}
