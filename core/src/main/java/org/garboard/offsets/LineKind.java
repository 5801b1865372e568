package org.garboard.offsets;

/** What a row of the table describes. */
public enum LineKind {
    /** Where the bottom skin meets the centreline: the profile's lower edge. */
    KEEL,
    /** Half the breadth of a flat keel. */
    HALF_SIDING,
    /** A knuckle between keel and sheer. */
    CHINE,
    /** The upper edge of the side. */
    SHEER,
    /** A level plane at a height above base, cut at half-breadths. */
    WATERLINE,
    /** A vertical plane at a distance from the centreline, cut at heights. */
    BUTTOCK
}
