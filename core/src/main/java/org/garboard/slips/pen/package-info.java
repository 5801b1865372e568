/**
 * How a table is written, and what a slip of the pen does to a value: values are counted exactly, in sixteenths
 * of an inch or in the last decimal place, so that a slip undone gives the very value that was meant.
 *
 * <p>What is taken for a slip is our choice: a foot, an inch, one to seven eighths, two neighbouring digits
 * swapped, the point moved by one or two places.
 */
package org.garboard.slips.pen;
