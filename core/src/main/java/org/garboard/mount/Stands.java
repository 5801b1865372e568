package org.garboard.mount;

/** Where a body is against the outside of the skin: what the water past it, and another transducer, see of it. */
public enum Stands {
    /** Inside the skin: nothing of it is in the water. */
    INSIDE,
    /** Level with the skin. */
    FLUSH,
    /** Out of the skin, or behind the transom. */
    OUT
}
