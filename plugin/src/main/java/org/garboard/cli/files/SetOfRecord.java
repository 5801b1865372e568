package org.garboard.cli.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.garboard.exchange.FileHash;
import org.garboard.exchange.RecordFile;

/** The files that the record in a folder lists, with the hashes that it gives: what a run may replace there. */
final class SetOfRecord {
    private final Path folder;
    private final Map<String, String> listed;

    private SetOfRecord(Path folder, Map<String, String> listed) {
        this.folder = folder;
        this.listed = listed;
    }

    /** Of a folder without a record, no file. */
    static SetOfRecord in(Path folder) throws IOException, FolderRefused {
        Path record = folder.resolve(RecordFile.NAME);
        Map<String, String> listed = new LinkedHashMap<>();
        if (!Files.exists(record)) {
            return new SetOfRecord(folder, listed);
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
        return new SetOfRecord(folder, listed);
    }

    /** By name. */
    Map<String, String> hashes() {
        return Map.copyOf(listed);
    }

    /**
     * Files that stand where the next set's are to stand, and are neither of this set nor of that.
     *
     * @param next hashes of the files that are to stand there, by name
     */
    List<Path> strangers(Map<String, String> next) throws IOException {
        List<Path> strangers = new ArrayList<>();
        for (Map.Entry<String, String> file : next.entrySet()) {
            Path stands = folder.resolve(file.getKey()).normalize();
            if (Files.isRegularFile(stands) && !isEither(stands, listed.get(file.getKey()), file.getValue())) {
                strangers.add(stands);
            }
        }
        return strangers;
    }

    /**
     * Refuses what would be overwritten or removed though nobody says that a run wrote it.
     *
     * @param given which of them were given up by their owner
     */
    void refuseStrangers(Map<String, String> next, List<Path> given) throws IOException, FolderRefused {
        Set<String> touched = new LinkedHashSet<>(next.keySet());
        touched.addAll(listed.keySet());
        List<String> messages = new ArrayList<>();
        for (String name : touched) {
            Path file = folder.resolve(name).normalize();
            if (!folder.normalize().equals(file.getParent() == null ? Path.of("") : file.getParent())) {
                messages.add(folder.resolve(RecordFile.NAME) + " lists " + name + ", which is not in its folder");
            } else if (Files.exists(file) && !given.contains(file) && !isEither(file, listed.get(name), next.get(name))) {
                messages.add(file + (listed.containsKey(name)
                    ? " was changed after the record beside it was written"
                    : " is there already, and no record beside it says that a run wrote it"));
            }
        }
        if (!messages.isEmpty()) {
            messages.add("Nothing was written; give --out a new folder, or move these files away; or give --replace, and those that the set has too are replaced.");
            throw new FolderRefused(messages);
        }
    }

    private static boolean isEither(Path file, String old, String next) throws IOException {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        String stands = FileHash.of("", Files.readAllBytes(file)).sha256();
        return stands.equals(old) || stands.equals(next);
    }

    /** Files that are of this set and not of the next. */
    void removeBut(Set<String> next) throws IOException {
        for (String name : listed.keySet()) {
            if (!next.contains(name)) {
                Files.deleteIfExists(folder.resolve(name));
            }
        }
    }
}
