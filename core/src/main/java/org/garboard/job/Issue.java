package org.garboard.job;

/**
 * One issue of a set of drawings, a row of its table of revisions.
 *
 * @param mark letter or number of the revision
 * @param date ISO 8601
 * @param by who drew it
 * @param changed what changed
 */
public record Issue(String mark, String date, String by, String changed) {
}
