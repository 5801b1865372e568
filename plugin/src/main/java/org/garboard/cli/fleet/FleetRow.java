package org.garboard.cli.fleet;

import java.util.List;
import java.util.Optional;
import org.garboard.exchange.RecordReading;
import org.garboard.job.RecordedSiting;
import org.garboard.siting.Site;

/**
 * What came of a job for one transducer, or of a job that failed.
 *
 * @param job name of the job's folder among the results
 * @param boat name of the boat; empty where the job could not be read
 * @param transducer its name; empty where the job could not be read
 * @param code exit code of the job
 * @param advised the advised place
 * @param words the answer, or what is wrong
 */
public record FleetRow(String job, String boat, String transducer, int code, Optional<Site> advised, String words) {
    private static final int YES = 0;
    private static final int NO = 4;

    /** What a record tells. */
    public static List<FleetRow> of(String job, int code, RecordReading.Read record) {
        return record.set().sitings().stream().map(siting -> row(job, code, record, siting)).toList();
    }

    /** A job that left no record. */
    public static FleetRow failed(String job, int code, String words) {
        return new FleetRow(job, "", "", code, Optional.empty(), words.strip().replaceAll("\\R", "; "));
    }

    private static FleetRow row(String job, int code, RecordReading.Read record, RecordedSiting siting) {
        return new FleetRow(job, record.set().named(), siting.transducer(), code, siting.place(), siting.answer());
    }

    /** In a word: site, no site, fault. */
    public String outcome() {
        if (advised.isPresent()) {
            return code == YES ? "site" : "site, not all drawn";
        }
        return code == NO ? "no site" : "fault";
    }
}
