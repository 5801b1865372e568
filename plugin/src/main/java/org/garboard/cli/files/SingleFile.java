package org.garboard.cli.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * One file that a user wants written, whole or not at all. A file that is there already is replaced only
 * if it is of the same kind, known by a word near its beginning; whatever else stands there belongs to somebody, who may ask to
 * have it replaced.
 */
public final class SingleFile {
    private static final int BEGINNING = 4096;

    private final Path file;
    private final String mark;
    private final InTheWay inTheWay;

    /**
     * @param mark what stands near the beginning of every file of this kind, in ASCII
     * @param inTheWay what is done with a file that is there already and of another kind
     */
    public SingleFile(Path file, String mark, InTheWay inTheWay) {
        this.file = file;
        this.mark = mark;
        this.inTheWay = inTheWay;
    }

    /** Why the file cannot be written is told in words that begin with its name. */
    public void write(byte[] content) throws OutputRefused {
        try {
            refuseStranger();
            try (UnfinishedFile part = new UnfinishedFile(file)) {
                part.write(content);
                part.finish(StandardCopyOption.ATOMIC_MOVE);
            }
        } catch (IOException e) {
            throw new OutputRefused(file + ": cannot be written: " + WriteFault.words(e));
        }
    }

    private void refuseStranger() throws IOException, OutputRefused {
        Path folder = file.getParent() == null ? Path.of(".") : file.getParent();
        if (!Files.isDirectory(folder)) {
            throw new OutputRefused(file + ": cannot be written: " + (Files.exists(folder)
                ? folder + " is no folder" : "there is no folder " + folder));
        }
        if (Files.isDirectory(file)) {
            throw new OutputRefused(file + ": this is a folder; name a file in it");
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw new OutputRefused(file + ": is there already and is no file that could be replaced; nothing was written. Give another name");
        }
        if (Files.exists(file) && inTheWay == InTheWay.STAYS && !isOfOurKind()) {
            throw new OutputRefused(file + ": is there already and was not written by this command; nothing was written."
                + " Give another name, or move it away, or give --replace");
        }
    }

    private boolean isOfOurKind() throws IOException {
        try (var in = Files.newInputStream(file)) {
            return new String(in.readNBytes(BEGINNING), StandardCharsets.US_ASCII).contains(mark);
        }
    }
}
