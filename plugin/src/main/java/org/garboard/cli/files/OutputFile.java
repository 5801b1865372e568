package org.garboard.cli.files;

import org.garboard.exchange.FileHash;

/** A file to be written: its name without folders, and its bytes, hashed once. */
public final class OutputFile {
    private final FileHash hash;
    private final byte[] content;

    public OutputFile(String name, byte[] content) {
        this(FileHash.of(name, content), content);
    }

    private OutputFile(FileHash hash, byte[] content) {
        this.hash = hash;
        this.content = content;
    }

    public String name() {
        return hash.name();
    }

    byte[] content() {
        return content;
    }

    public FileHash hash() {
        return hash;
    }

    /** The same under a name that begins so. */
    public OutputFile prefixed(String prefix) {
        return prefix.isEmpty() ? this : new OutputFile(new FileHash(prefix + hash.name(), hash.sha256()), content);
    }
}
