package org.garboard.cli.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads a whole file that a user named. */
final class InputFile {

    private InputFile() {
    }

    /**
     * The file's bytes; what has no size, a pipe, is read as far as the limit. A file that cannot be read, or is
     * larger than so many bytes, is at fault.
     */
    static byte[] read(Path file, int most) throws InputFault {
        if (!Files.exists(file)) {
            throw new InputFault(file + ": there is no such file");
        }
        if (Files.isDirectory(file)) {
            throw new InputFault(file + ": this is a folder; name a file in it");
        }
        try (InputStream in = Files.newInputStream(file)) {
            if (Files.size(file) > most) {
                throw new InputFault(file + ": the file has " + Files.size(file) + " bytes; " + most + " are the most that are read");
            }
            byte[] bytes = in.readNBytes(most + 1);
            if (bytes.length > most) {
                throw new InputFault(file + ": more than " + most + " bytes come from it, the most that are read");
            }
            return bytes;
        } catch (IOException e) {
            throw new InputFault(file + ": the file cannot be read: " + e.getMessage());
        }
    }
}
