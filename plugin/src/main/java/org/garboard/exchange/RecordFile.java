package org.garboard.exchange;

import java.util.List;
import org.garboard.exchange.xml.record.Record;

/** Writes {@code record.xml}, as {@code garboard-record.xsd} describes it, and reads its list of files. */
public final class RecordFile {
    /** Name of the file in its folder. */
    public static final String NAME = "record.xml";
    /** A larger one is not read. */
    public static final int MOST_BYTES = XmlKind.RECORD.mostBytes();

    private RecordFile() {
    }

    /**
     * The record as a file. The same decisions give the same bytes.
     *
     * @param decided the decisions, the first transducer's first
     * @param source what it was made from and with
     * @param outputs the files beside the record, and what is not among them
     */
    public static byte[] write(List<ToldDecision> decided, RecordSource source, RecordOutputs outputs) {
        return XmlWriting.bytes(RecordMapping.toBean(decided, source, outputs), XmlKind.RECORD.namespace());
    }

    /** The files that a record says were written beside it. */
    public static Outputs outputs(byte[] bytes) {
        try {
            XmlReading reading = XmlReading.of(XmlKind.RECORD, NAME, bytes);
            if (!reading.faults().isEmpty()) {
                return new Outputs.Unreadable(reading.faults().get(0));
            }
            return new Outputs.Listed(reading.bean(Record.class).orElseThrow().getOutputs().getFile().stream()
                .map(file -> new FileHash(file.getName(), file.getSha256()))
                .toList());
        } catch (FaultyFile e) {
            return new Outputs.Unreadable(e.faults().get(0));
        }
    }

    /** What came of reading a record's list of files. */
    public sealed interface Outputs {

        /** The files, in the order of the record. */
        record Listed(List<FileHash> files) implements Outputs {
            public Listed {
                files = List.copyOf(files);
            }
        }

        /** The record is broken or of another version. */
        record Unreadable(FileFault fault) implements Outputs {
        }
    }
}
