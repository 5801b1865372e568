package org.garboard.slips.pen;

/**
 * A value that a slip may have spoilt into the one that is written.
 *
 * @param value [m]
 * @param text as the table would write it
 */
public record Undone(double value, String text, SlipKind kind) {
}
