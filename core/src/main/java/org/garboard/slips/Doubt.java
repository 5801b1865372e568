package org.garboard.slips;

/** Why a likely slip is less sure than others. */
public enum Doubt {
    /** It stands at the first or last station, which have neighbours on one side only. */
    END_STATION,
    /** Another value that a slip could have spoilt would be about as fair. */
    OTHER_VALUE,
    /** A slip in another cell would explain the table about as well. */
    OTHER_CELL
}
