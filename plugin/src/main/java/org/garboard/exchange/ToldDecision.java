package org.garboard.exchange;

import org.garboard.job.SitingRecord;

/**
 * What was decided for one transducer, as it goes into a record.
 *
 * @param decided the decision
 * @param answer the same in words
 */
public record ToldDecision(SitingRecord decided, String answer) {
}
