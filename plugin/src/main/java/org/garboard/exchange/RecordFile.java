package org.garboard.exchange;

import java.util.List;
import org.garboard.exchange.xml.record.Record;
import org.garboard.survey.LaidFinding;

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

    /** All of a record that its sheets show and that can be compared, or what is wrong with the file. */
    public static RecordReading read(String fileName, byte[] bytes) {
        try {
            XmlReading reading = XmlReading.of(XmlKind.RECORD, fileName, bytes);
            if (!reading.faults().isEmpty()) {
                return new RecordReading.Faulty(reading.faults());
            }
            Record bean = reading.bean(Record.class).orElseThrow();
            return new RecordReading.Read(RecordedMapping.toSet(bean, RecordedFigures.of(bytes)), FitWords.fit(bean.getInputs().getFit()),
                listed(bean), bean.getOutputs().getRefused(), bean.getSurvey() == null ? 0 : bean.getSurvey().getSheets(), new RecordedSurface(bean.getSurface()));
        } catch (FaultyFile e) {
            return new RecordReading.Faulty(e.faults());
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            return new RecordReading.Faulty(List.of(new FileFault(fileName, 1, 1,
                "a word or a point of this record is not one that the program writes; " + XmlKind.RECORD.remedy())));
        }
    }

    /**
     * A sound record with findings drawn on its set, in place of earlier ones.
     *
     * @param bytes the record
     * @param findings the file that they came from
     * @param sheets how many sheets they fill
     * @param outputs the files beside the record, as they are now
     */
    public static byte[] surveyed(byte[] bytes, FileHash findings, List<LaidFinding> laid, int sheets, String programVersion, List<FileHash> outputs) {
        try {
            Record bean = XmlReading.of(XmlKind.RECORD, NAME, bytes).bean(Record.class).orElseThrow();
            bean.setSurvey(SurveyMapping.toBean(findings, laid, sheets, programVersion));
            bean.getOutputs().getFile().clear();
            outputs.forEach(file -> bean.getOutputs().getFile().add(RecordMapping.file(file)));
            return XmlWriting.bytes(bean, XmlKind.RECORD.namespace());
        } catch (FaultyFile e) {
            throw new IllegalArgumentException("not a sound record", e);
        }
    }

    private static List<FileHash> listed(Record bean) {
        return bean.getOutputs().getFile().stream().map(file -> new FileHash(file.getName(), file.getSha256())).toList();
    }

    /** The files that a record says were written beside it. */
    public static Outputs outputs(byte[] bytes) {
        try {
            XmlReading reading = XmlReading.of(XmlKind.RECORD, NAME, bytes);
            if (!reading.faults().isEmpty()) {
                return new Outputs.Unreadable(reading.faults().get(0));
            }
            return new Outputs.Listed(listed(reading.bean(Record.class).orElseThrow()));
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
