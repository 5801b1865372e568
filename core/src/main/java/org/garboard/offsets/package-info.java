/**
 * The table of offsets: its stations, its lines, the faults that can be seen in it.
 *
 * <p>A table is held as it was printed, in metres: heights above base of the named lines and
 * at the buttocks, half-breadths from the centreline of the named lines and at the waterlines.
 * How a file spells it is not known here.
 */
package org.garboard.offsets;
