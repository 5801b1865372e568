package org.garboard.cli.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import org.junit.jupiter.api.Test;

class WriteFaultTest {

    @Test
    void saysWhatABareNameLeavesOpen() {
        assertEquals("no permission for a/b", WriteFault.words(new AccessDeniedException("a/b")));
        assertEquals("a/b is there already", WriteFault.words(new FileAlreadyExistsException("a/b")));
        assertEquals("a/b cannot be made", WriteFault.words(new NoSuchFileException("a/b")));
        assertEquals("a/b: read-only file system", WriteFault.words(new IOException("a/b: read-only file system")));
    }
}
