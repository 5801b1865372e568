package org.garboard.cli.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.garboard.exchange.FileHash;

/**
 * The folder that a run writes to. Only files that the folder's own record lists, and that are
 * still as it says, are replaced or removed; whatever else stands there belongs to somebody, who may ask to have it replaced.
 *
 * <p>A set is first written whole beside what is there ({@link WaitingSet}) and then moved in: a process
 * that is killed leaves the old set, or the new one, or one that the next command finishes.
 */
public final class OutputFolder {

    private OutputFolder() {
    }

    /** Writes the files and then the record, all of them or none. */
    public static void write(Path folder, List<OutputFile> files, OutputFile record, InTheWay inTheWay) throws FolderRefused {
        try {
            if (Files.isRegularFile(folder)) {
                throw new FolderRefused(List.of("cannot write to " + folder + ": " + folder + " is a file; a folder is wanted"));
            }
            if (!Files.isDirectory(folder)) {
                Files.createDirectories(folder);
            }
            WaitingSet.finish(folder);
            Map<String, String> hashes = new LinkedHashMap<>();
            files.forEach(file -> hashes.put(file.name(), file.hash().sha256()));
            SetOfRecord standing = SetOfRecord.in(folder);
            List<Path> given = inTheWay == InTheWay.GOES ? standing.strangers(hashes) : List.of();
            standing.refuseStrangers(hashes, given);
            List<OutputFile> all = new ArrayList<>(files);
            all.add(record);
            WaitingSet.stage(folder, all);
            for (Path stranger : given) {
                Files.delete(stranger);
            }
            WaitingSet.finish(folder);
        } catch (IOException e) {
            throw new FolderRefused(List.of("cannot write to " + folder + ": " + WriteFault.words(e)));
        }
    }

    /** Moves in what a run that was cut short had ready. */
    static void finish(Path folder) throws FolderRefused {
        try {
            WaitingSet.finish(folder);
        } catch (IOException e) {
            throw new FolderRefused(List.of(folder + " holds a set that a run which was cut short had ready, and it cannot be moved in: "
                + WriteFault.words(e)));
        }
    }
}
