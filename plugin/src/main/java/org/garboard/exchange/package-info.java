/**
 * Job and record as XML files: their schemas, and the way from and to the plain records of
 * {@link org.garboard.job}.
 *
 * <p>{@code garboard-job.xsd} and {@code garboard-record.xsd} come first; the classes under
 * {@code org.garboard.exchange.xml} are made from them by the build, and nothing outside this
 * package sees them. Lengths in a file carry their unit; the records are in metres and radians.
 */
package org.garboard.exchange;
