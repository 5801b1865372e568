package org.garboard.exchange;

import java.util.List;

/**
 * What a run wrote beside its record.
 *
 * @param files in the order of the set
 * @param refused what could not be drawn, each with its reason and what would work
 */
public record RecordOutputs(List<FileHash> files, List<String> refused) {
    /** Of a record that stands alone. */
    public static final RecordOutputs NONE = new RecordOutputs(List.of(), List.of());

    public RecordOutputs {
        files = List.copyOf(files);
        refused = List.copyOf(refused);
    }
}
