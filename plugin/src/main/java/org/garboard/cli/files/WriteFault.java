package org.garboard.cli.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;

/** Why the file system took no file, in words: its own messages may be a bare name. */
public final class WriteFault {

    private WriteFault() {
    }

    public static String words(IOException fault) {
        if (fault instanceof AccessDeniedException denied) {
            return "no permission for " + denied.getFile();
        }
        if (fault instanceof FileAlreadyExistsException exists) {
            return exists.getFile() + " is there already";
        }
        if (fault instanceof NoSuchFileException missing) {
            return missing.getFile() + " cannot be made";
        }
        return fault.getMessage();
    }
}
