/**
 * Answers to the questions that a place is asked, before anyone ranks places by them: a figure held to a bound,
 * a yes or no, or that it is not known. {@link org.garboard.mount.Check} makes a row of a report of each.
 */
package org.garboard.finding;
