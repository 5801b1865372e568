/**
 * Slips in a table of offsets: values wrong by a foot, an inch, some eighths, swapped digits or a moved
 * point, found because the rest of the boat foretells another value.
 *
 * <p>All named lines and all panels are fitted at once by splines along the boat (packages {@code boat} and
 * {@code fit}), as fair as the readings themselves show them to be. Every cell is then compared with what all
 * others say of it, in its own reading and in units of how sure they are (a studentised residual; Belsley, Kuh and
 * Welsch, <i>Regression Diagnostics</i>, 1980, from memory). A cell that disagrees is a likely slip only if a slip
 * that the table's notation allows (package {@code pen}) would bring it from where it should be to where it stands.
 *
 * <p>Slips at an end station, and slips that another one explains about as well, are less sure: the height of the
 * keel at the stem, or a point alone in its panel, is foretold by little. A table that scatters more than its
 * rounding is searched with its own scatter.
 *
 * <p>Hull frame as in the table: x aft of station 0, y from the centreline, z up from base; metres. Nothing
 * here changes a table.
 */
package org.garboard.slips;
