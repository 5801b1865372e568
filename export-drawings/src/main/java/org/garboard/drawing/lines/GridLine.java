package org.garboard.drawing.lines;

/**
 * A straight line of the grid.
 *
 * @param words what it is called on the sheet, its place included
 * @param at x of a section, half-breadth of a buttock, height of a waterline [m]
 */
record GridLine(String words, double at) {
}
