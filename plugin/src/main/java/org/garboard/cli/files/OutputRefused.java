package org.garboard.cli.files;

/** A file cannot be written where the user wants it; nothing was changed. */
public final class OutputRefused extends Exception {
    private static final long serialVersionUID = 1;

    public OutputRefused(String message) {
        super(message);
    }
}
