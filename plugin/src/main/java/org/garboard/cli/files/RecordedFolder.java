package org.garboard.cli.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.garboard.exchange.FileFault;
import org.garboard.exchange.FileHash;
import org.garboard.exchange.RecordFile;
import org.garboard.exchange.RecordReading;
import org.garboard.hull.Hull;

/** A record that a user names, and the files beside it: none of them counts unless it is as the record says. */
public final class RecordedFolder {
    private final Path path;
    private final byte[] bytes;
    private final RecordReading.Read record;

    private RecordedFolder(Path path, byte[] bytes, RecordReading.Read record) {
        this.path = path;
        this.bytes = bytes;
        this.record = record;
    }

    /** Reads a record; of a folder, the one in it. */
    public static RecordedFolder read(Path named) throws InputFault {
        Path path = Files.isDirectory(named) ? named.resolve(RecordFile.NAME) : named;
        try {
            OutputFolder.finish(path.resolveSibling(""));
        } catch (FolderRefused refused) {
            throw new InputFault(refused.messages());
        }
        byte[] bytes = InputFile.read(path, RecordFile.MOST_BYTES);
        RecordReading reading = RecordFile.read(path.toString(), bytes);
        if (reading instanceof RecordReading.Faulty faulty) {
            throw new InputFault(faulty.faults().stream().map(FileFault::message).toList());
        }
        return new RecordedFolder(path, bytes, (RecordReading.Read) reading);
    }

    public Path path() {
        return path;
    }

    public RecordReading.Read record() {
        return record;
    }

    /** The record as it stands. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** Every file of the set, in the order of the record; one that is missing or was changed is a fault. */
    public Map<FileHash, byte[]> files() throws InputFault {
        Map<FileHash, byte[]> files = new LinkedHashMap<>();
        List<String> faults = new ArrayList<>();
        for (FileHash listed : record.outputs()) {
            try {
                files.put(listed, content(listed));
            } catch (InputFault fault) {
                faults.addAll(fault.messages());
            }
        }
        if (!faults.isEmpty()) {
            faults.add("The folder disagrees with its record: put the files back as they were, or make the set anew with garboard run.");
            throw new InputFault(faults);
        }
        return files;
    }

    private byte[] content(FileHash listed) throws InputFault {
        Path file = path.resolveSibling(listed.name());
        if (!listed.name().equals(String.valueOf(Path.of(listed.name()).getFileName()))) {
            throw new InputFault(path + " lists " + listed.name() + ", which is not in its folder");
        }
        byte[] content = InputFile.read(file, Integer.MAX_VALUE - 1);
        if (!FileHash.of(listed.name(), content).equals(listed)) {
            throw new InputFault(file + ": this is not the file that " + path + " lists; it was changed after the record was written");
        }
        return content;
    }

    /**
     * The table from which the set was drawn.
     *
     * @param named where the user says it lies; none to take the copy beside the record
     * @param option by which the user may say so
     */
    public TableSource table(Optional<Path> named, String option) throws InputFault {
        String wanted = record.set().tableHash();
        Path file;
        if (named.isPresent()) {
            file = named.get();
        } else {
            FileHash copy = record.outputs().stream().filter(output -> output.sha256().equals(wanted)).findFirst().orElseThrow(() -> new InputFault(
                path + ": no copy of the table " + record.set().tableFile() + " lies beside this record; name the table's file with " + option));
            content(copy);
            file = path.resolveSibling(copy.name());
        }
        TableSource table = TableSource.read(file, record.set().tableFile());
        if (!table.file().sha256().equals(wanted)) {
            throw new InputFault(file + ": this is not the table that " + path + " was made from; its SHA-256 is " + table.file().sha256()
                + ", the record's " + wanted);
        }
        return table;
    }

    /** The hull drawn from its table again; one that is no longer the record's is a fault. */
    public Hull hull(TableSource table) throws InputFault {
        Hull hull = table.hull(record.fit());
        if (!record.surface().isOf(hull)) {
            throw new InputFault(path + ": this version of the program draws another surface from that table than version "
                + record.set().programVersion() + " did; make the set anew with garboard run");
        }
        return hull;
    }
}
