package org.garboard.cli.files;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.garboard.exchange.RecordFile;

/**
 * A whole set that waits in a folder of its own inside the one that it is for. It gets the name {@link #NAME} when its last
 * file is written; from then on it is moved in, file by file and the record last, by whoever comes next if need be.
 */
final class WaitingSet {
    static final String NAME = ".next-set";

    private static final String UNFINISHED = NAME + ".";

    private WaitingSet() {
    }

    /** Writes the set; a disk that is full shows before anything of the old set is touched. */
    static void stage(Path folder, List<OutputFile> all) throws IOException {
        clearUnfinished(folder);
        Path part = folder.resolve(UNFINISHED + ProcessHandle.current().pid());
        try {
            Files.createDirectory(part);
            for (OutputFile file : all) {
                Files.write(part.resolve(file.name()), file.content(), StandardOpenOption.CREATE_NEW);
            }
            Files.move(part, folder.resolve(NAME), StandardCopyOption.ATOMIC_MOVE);
        } finally {
            remove(part);
        }
    }

    /** Moves the set in that waits in a folder, if there is one; what was moved before need not be moved again. */
    static void finish(Path folder) throws IOException, FolderRefused {
        Path waiting = folder.resolve(NAME);
        if (!Files.isDirectory(waiting)) {
            return;
        }
        if (Files.exists(waiting.resolve(RecordFile.NAME))) {
            SetOfRecord old = SetOfRecord.in(folder);
            Map<String, String> next = SetOfRecord.in(waiting).hashes();
            old.refuseStrangers(next, List.of());
            for (String name : names(waiting)) {
                if (!name.equals(RecordFile.NAME)) {
                    move(waiting, folder, name);
                }
            }
            old.removeBut(next.keySet());
            move(waiting, folder, RecordFile.NAME);
        }
        remove(waiting);
    }

    private static void move(Path from, Path to, String name) throws IOException {
        Files.move(from.resolve(name), to.resolve(name), StandardCopyOption.ATOMIC_MOVE);
    }

    /** What processes left that did not live to finish it. */
    private static void clearUnfinished(Path folder) throws IOException {
        try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, UNFINISHED + "*")) {
            for (Path part : parts) {
                String pid = part.getFileName().toString().substring(UNFINISHED.length());
                if (pid.matches("[0-9]{1,18}") && !isAtWork(Long.parseLong(pid))) {
                    remove(part);
                }
            }
        }
    }

    private static boolean isAtWork(long pid) {
        Optional<ProcessHandle> process = ProcessHandle.of(pid);
        return pid != ProcessHandle.current().pid() && process.isPresent() && process.get().isAlive();
    }

    private static void remove(Path part) throws IOException {
        if (!Files.isDirectory(part)) {
            return;
        }
        for (String name : names(part)) {
            Files.delete(part.resolve(name));
        }
        Files.delete(part);
    }

    private static List<String> names(Path part) throws IOException {
        try (Stream<Path> files = Files.list(part)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
