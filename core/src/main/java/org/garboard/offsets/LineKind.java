package org.garboard.offsets;

/** What a row of the table describes. */
public enum LineKind {
    /** Where the bottom skin meets the centreline: the profile's lower edge. */
    KEEL,
    /** Half the breadth of a flat keel, or of a box keel at its bottom. */
    HALF_SIDING,
    /** Where the side of a box keel meets the bottom: a knuckle on every station, the keel being part of the skin. */
    KEEL_TOP,
    /** Half the breadth of a keel below the skin, where the skin meets it: the bottom begins there. */
    RABBET,
    /** The bottom of a keel below the skin, which is an appendage: no line of the skin. */
    KEEL_BOTTOM,
    /** Where the face of a lifting strake leaves the skin, as far as the strake goes: no line of the skin. */
    STRAKE_INNER,
    /** The corner of a lifting strake that stands out of the skin. */
    STRAKE_OUTER,
    /** A knuckle between keel and sheer. */
    CHINE,
    /** The upper edge of the side. */
    SHEER,
    /** Where the measuring of a boat ended, marked at every station: the skin goes on, but nothing is known of it. */
    EDGE,
    /** A level plane at a height above base, cut at half-breadths. */
    WATERLINE,
    /** A vertical plane at a distance from the centreline, cut at heights. */
    BUTTOCK
}
