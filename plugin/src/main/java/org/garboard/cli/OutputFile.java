package org.garboard.cli;

import org.garboard.exchange.FileHash;

/** A file to be written: its name without folders, and its bytes. */
final class OutputFile {
    private final String name;
    private final byte[] content;

    OutputFile(String name, byte[] content) {
        this.name = name;
        this.content = content;
    }

    String name() {
        return name;
    }

    byte[] content() {
        return content;
    }

    FileHash hash() {
        return FileHash.of(name, content);
    }
}
