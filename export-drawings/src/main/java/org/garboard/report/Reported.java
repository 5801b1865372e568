package org.garboard.report;

import java.util.List;
import org.garboard.job.SitingRecord;

/**
 * What was decided for one transducer, as a report tells it.
 *
 * @param decided the decision
 * @param toCut what the yard has to know beside the sheets, sentences
 */
public record Reported(SitingRecord decided, List<String> toCut) {
    public Reported {
        toCut = List.copyOf(toCut);
    }
}
