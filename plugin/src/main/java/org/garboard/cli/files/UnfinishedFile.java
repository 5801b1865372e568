package org.garboard.cli.files;

import java.io.IOException;
import java.nio.file.CopyOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** What a file is to hold, beside the place that it is for until it is whole; a hidden file of this process, gone when it is closed. */
final class UnfinishedFile implements AutoCloseable {
    private final Path file;
    private final Path part;

    UnfinishedFile(Path file) {
        this.file = file;
        this.part = file.resolveSibling("." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
    }

    void write(byte[] content) throws IOException {
        Files.write(part, content, StandardOpenOption.CREATE_NEW);
    }

    /** Moves it to its place. */
    void finish(CopyOption... how) throws IOException {
        Files.move(part, file, how);
    }

    @Override
    public void close() throws IOException {
        Files.deleteIfExists(part);
    }
}
