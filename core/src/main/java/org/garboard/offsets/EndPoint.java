package org.garboard.offsets;

/**
 * Where a line ends.
 *
 * @param line its name: a named line, a buttock, a waterline
 * @param kind what it is
 * @param level distance of a buttock from the centreline, height of a waterline [m]; 0 for named lines
 * @param x aft of the table's origin [m]
 */
public record EndPoint(String line, LineKind kind, double level, double x) {
}
