package org.garboard.slips.pen;

/** What a slip of the pen does to a value. */
public enum SlipKind {
    FOOT,
    INCH,
    /** One to seven eighths of an inch. */
    EIGHTHS,
    /** Two neighbouring digits of the number as it is written. */
    SWAPPED_DIGITS,
    /** One or two places. */
    MOVED_POINT
}
