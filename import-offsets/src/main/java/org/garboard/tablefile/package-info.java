/**
 * Reads a file with a table of offsets: out comes an {@link org.garboard.offsets.OffsetTable}, or a list
 * of everything that is wrong with the file and where.
 *
 * <p>The classical two-block table of printed plans is understood: heights above base of the named
 * lines and at the buttocks, half-breadths from the centreline of the named lines and at the waterlines,
 * stations in columns or in rows. Lengths are turned into metres here, in the hull frame of the table:
 * x aft of its station 0, y from the centreline, z up from base.
 */
package org.garboard.tablefile;
