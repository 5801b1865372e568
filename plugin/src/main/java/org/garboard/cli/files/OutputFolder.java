package org.garboard.cli.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.garboard.exchange.FileHash;
import org.garboard.exchange.RecordFile;

/**
 * The folder that a run writes to. Only files that the folder's own record lists, and that are
 * still as it says, are replaced or removed; whatever else stands there belongs to somebody.
 *
 * <p>The old record goes first and the new one comes last, so that a folder with a record is whole.
 */
public final class OutputFolder {
    private final Path folder;
    private final Map<String, String> listed = new LinkedHashMap<>();

    private OutputFolder(Path folder) {
        this.folder = folder;
    }

    /** Writes the files and then the record, each whole or not at all. */
    public static void write(Path folder, List<OutputFile> files, OutputFile record) throws FolderRefused {
        try {
            if (Files.isRegularFile(folder)) {
                throw new FolderRefused(List.of("cannot write to " + folder + ": " + folder + " is a file; a folder is wanted"));
            }
            if (!Files.isDirectory(folder)) {
                Files.createDirectories(folder);
            }
            OutputFolder output = new OutputFolder(folder);
            output.readOldRecord();
            output.refuseStrangers(files);
            output.replaceBy(files, record);
        } catch (IOException e) {
            throw new FolderRefused(List.of("cannot write to " + folder + ": " + WriteFault.words(e)));
        }
    }

    /** A disk that is full shows before anything of the old set is gone. */
    private void replaceBy(List<OutputFile> files, OutputFile record) throws IOException {
        List<OutputFile> all = new ArrayList<>(files);
        all.add(record);
        try {
            for (OutputFile file : all) {
                Files.write(part(file), file.content(), StandardOpenOption.CREATE_NEW);
            }
            Files.deleteIfExists(folder.resolve(RecordFile.NAME));
            removeOutdated(files);
            for (OutputFile file : all) {
                Files.move(part(file), folder.resolve(file.name()), StandardCopyOption.ATOMIC_MOVE);
            }
        } finally {
            for (OutputFile file : all) {
                Files.deleteIfExists(part(file));
            }
        }
    }

    private Path part(OutputFile file) {
        return folder.resolve("." + file.name() + "." + ProcessHandle.current().pid() + ".part");
    }

    private void readOldRecord() throws IOException, FolderRefused {
        Path record = folder.resolve(RecordFile.NAME);
        if (!Files.exists(record)) {
            return;
        }
        byte[] bytes;
        try (var in = Files.newInputStream(record)) {
            bytes = in.readNBytes(RecordFile.MOST_BYTES + 1);
        }
        RecordFile.Outputs outputs = RecordFile.outputs(bytes);
        if (outputs instanceof RecordFile.Outputs.Unreadable unreadable) {
            throw new FolderRefused(List.of(record + " is there already and is no record of this program: "
                + unreadable.fault().words(), "Nothing was written; give --out a new folder, or remove that file."));
        }
        for (FileHash file : ((RecordFile.Outputs.Listed) outputs).files()) {
            listed.put(file.name(), file.sha256());
        }
    }

    private void refuseStrangers(List<OutputFile> files) throws IOException, FolderRefused {
        Map<String, byte[]> next = new LinkedHashMap<>();
        files.forEach(file -> next.put(file.name(), file.content()));
        Set<String> touched = new LinkedHashSet<>(next.keySet());
        touched.addAll(listed.keySet());
        List<String> messages = new ArrayList<>();
        for (String name : touched) {
            Path file = folder.resolve(name).normalize();
            if (!folder.normalize().equals(file.getParent() == null ? Path.of("") : file.getParent())) {
                messages.add(folder.resolve(RecordFile.NAME) + " lists " + name + ", which is not in its folder");
            } else if (Files.exists(file) && !isOurs(file, name) && !isSame(file, next.get(name))) {
                messages.add(file + (listed.containsKey(name)
                    ? " was changed after the record beside it was written"
                    : " is there already, and no record beside it says that a run wrote it"));
            }
        }
        if (!messages.isEmpty()) {
            messages.add("Nothing was written; give --out a new folder, or move these files away.");
            throw new FolderRefused(messages);
        }
    }

    private boolean isOurs(Path file, String name) throws IOException {
        return Files.isRegularFile(file) && listed.containsKey(name)
            && FileHash.of(name, Files.readAllBytes(file)).sha256().equals(listed.get(name));
    }

    /** What an interrupted run left: replacing it changes nothing. */
    private static boolean isSame(Path file, byte[] next) throws IOException {
        return next != null && Files.isRegularFile(file) && Files.size(file) == next.length
            && Arrays.equals(Files.readAllBytes(file), next);
    }

    private void removeOutdated(List<OutputFile> files) throws IOException {
        for (String name : listed.keySet()) {
            if (files.stream().noneMatch(file -> file.name().equals(name))) {
                Files.deleteIfExists(folder.resolve(name));
            }
        }
    }
}
