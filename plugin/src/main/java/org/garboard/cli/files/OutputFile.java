package org.garboard.cli.files;

import org.garboard.exchange.FileHash;

/** A file to be written: its name without folders, and its bytes. */
public final class OutputFile {
    private final String name;
    private final byte[] content;

    public OutputFile(String name, byte[] content) {
        this.name = name;
        this.content = content;
    }

    public String name() {
        return name;
    }

    byte[] content() {
        return content;
    }

    public FileHash hash() {
        return FileHash.of(name, content);
    }

    /** The same under a name that begins so. */
    public OutputFile prefixed(String prefix) {
        return prefix.isEmpty() ? this : new OutputFile(prefix + name, content);
    }
}
