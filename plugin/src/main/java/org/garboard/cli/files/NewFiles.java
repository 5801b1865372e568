package org.garboard.cli.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Files that are begun and then belong to the user: never written over what is there, by whomever. */
public final class NewFiles {

    private NewFiles() {
    }

    /** Writes all of them, or none. The folder is made if need be. */
    public static void write(Path folder, List<OutputFile> files) throws OutputRefused {
        List<UnfinishedFile> begun = new ArrayList<>();
        try {
            if (Files.exists(folder) && !Files.isDirectory(folder)) {
                throw new OutputRefused(folder + " is a file; name a folder");
            }
            Files.createDirectories(folder);
            for (OutputFile file : files) {
                if (Files.exists(folder.resolve(file.name()), LinkOption.NOFOLLOW_LINKS)) {
                    throw new OutputRefused(folder.resolve(file.name()) + " is there already; nothing was written. Name another folder");
                }
            }
            for (OutputFile file : files) {
                UnfinishedFile part = new UnfinishedFile(folder.resolve(file.name()));
                begun.add(part);
                part.write(file.content());
            }
            for (UnfinishedFile part : begun) {
                part.finish();
            }
        } catch (IOException e) {
            throw new OutputRefused("cannot write to " + folder + ": " + WriteFault.words(e));
        } finally {
            for (UnfinishedFile part : begun) {
                close(part);
            }
        }
    }

    private static void close(UnfinishedFile part) throws OutputRefused {
        try {
            part.close();
        } catch (IOException e) {
            throw new OutputRefused("what was begun cannot be taken away again: " + WriteFault.words(e));
        }
    }
}
