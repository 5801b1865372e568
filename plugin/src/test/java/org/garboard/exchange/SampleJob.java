package org.garboard.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.garboard.job.Job;

/** The job in {@code exchange/job.xml}, made up for these tests, whole or spoilt. */
final class SampleJob {

    private SampleJob() {
    }

    static String text() {
        try (InputStream in = SampleJob.class.getResourceAsStream("/exchange/job.xml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Job job() {
        return ((JobReading.Read) read(text())).job();
    }

    /** The sample with a part of its text replaced; the part must be there. */
    static String with(String part, String replacement) {
        String text = text();
        if (!text.contains(part)) {
            throw new IllegalArgumentException("the sample does not hold " + part);
        }
        return text.replace(part, replacement);
    }

    static JobReading read(String text) {
        return JobFile.read("job.xml", text.getBytes(StandardCharsets.UTF_8), TablePlace.BELOW_JOB);
    }

    /** Messages of a spoilt sample. */
    static List<String> faults(String part, String replacement) {
        return messages(with(part, replacement));
    }

    static List<String> messages(String text) {
        return read(text) instanceof JobReading.Faulty faulty
            ? faulty.faults().stream().map(FileFault::message).toList()
            : List.of();
    }
}
